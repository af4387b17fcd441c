import { parseSync } from 'vite';

/** One import of a file: static, dynamic, of a type, by re-export, or by the address of a worker. */
export interface Import {
  /** What is imported; undefined when it is only computed at run time. */
  readonly target: string | undefined;
  /** Erased by the compiler, so that nothing is loaded. */
  readonly typeOnly: boolean;
}

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
const isNode = (value: unknown): value is Node => isObject(value) && typeof value['type'] === 'string';

function childrenOf(node: Node): Node[] {
  return Object.values(node).flat().filter(isNode);
}

function everyNode(root: Node): Node[] {
  const found: Node[] = [];
  const open = [root];
  for (let node = open.pop(); node; node = open.pop()) {
    found.push(node);
    open.push(...childrenOf(node));
  }
  return found;
}

/** The tree of a source text. Throws when the text is not TypeScript, as nothing could be said about it then. */
function treeOf(path: string, source: string): Node {
  const { program, errors } = parseSync(path, source);
  const tree: unknown = program;
  if (errors.length > 0 || !isNode(tree))
    throw new Error(`${path}: ${errors[0]?.message ?? 'no syntax tree'}`);
  return tree;
}

const textOf = (node: unknown): string | undefined =>
  isNode(node) && typeof node['value'] === 'string' ? node['value'] : undefined;

const nameOf = (node: unknown): string | undefined =>
  isNode(node) && node.type === 'Identifier' && typeof node['name'] === 'string' ? node['name'] : undefined;

const isImportMeta = (node: unknown, property: string): boolean =>
  isNode(node) &&
  node.type === 'MemberExpression' &&
  isNode(node['object']) &&
  node['object'].type === 'MetaProperty' &&
  nameOf(node['property']) === property;

function importOf(node: Node): Import | undefined {
  switch (node.type) {
    case 'ImportDeclaration':
      return { target: textOf(node['source']), typeOnly: node['importKind'] === 'type' };
    case 'ExportNamedDeclaration':
    case 'ExportAllDeclaration':
      if (!isNode(node['source'])) return undefined;
      return { target: textOf(node['source']), typeOnly: node['exportKind'] === 'type' };
    case 'TSImportType':
      return { target: textOf(node['source']), typeOnly: true };
    case 'ImportExpression':
      return { target: textOf(node['source']), typeOnly: false };
    case 'TSExternalModuleReference':
      return { target: textOf(node['expression']), typeOnly: false };
    case 'CallExpression':
      // Many files by a pattern: which ones, only the bundler knows.
      return isImportMeta(node['callee'], 'glob') ? { target: undefined, typeOnly: false } : undefined;
    case 'NewExpression': {
      // new Worker(new URL('./worker.ts', import.meta.url))
      const words = Array.isArray(node['arguments']) ? node['arguments'] : [];
      if (nameOf(node['callee']) !== 'URL' || !isImportMeta(words[1], 'url')) return undefined;
      return { target: textOf(words[0]), typeOnly: false };
    }
    default:
      return undefined;
  }
}

export function importsOf(path: string, source: string): Import[] {
  return everyNode(treeOf(path, source)).flatMap((node) => importOf(node) ?? []);
}

/** Whether a file has exports, and nothing in it but imports and exports of what other files made. */
export function isBarrel(path: string, source: string): boolean {
  const tree = treeOf(path, source);
  const statements = Array.isArray(tree['body']) ? tree['body'].filter(isNode) : [];
  const imported = new Set(
    statements
      .filter(({ type }) => type === 'ImportDeclaration')
      .flatMap((statement) => childrenOf(statement).map((specifier) => nameOf(specifier['local']))),
  );
  const isReExport = (statement: Node): boolean => {
    if (statement.type === 'ExportAllDeclaration') return true;
    if (statement.type !== 'ExportNamedDeclaration' || isNode(statement['declaration'])) return false;
    if (isNode(statement['source'])) return true;
    return childrenOf(statement).every((specifier) => imported.has(nameOf(specifier['local'])));
  };
  const others = statements.filter(({ type }) => type !== 'ImportDeclaration');
  return others.length > 0 && others.every(isReExport);
}

/** Names of properties are not looked at: `torque.window` is no use of the browser's window. */
function isPropertyName(parent: Node, node: Node): boolean {
  if (parent['computed'] === true || parent['shorthand'] === true) return false;
  return parent['property'] === node || parent['key'] === node;
}

/**
 * The names used in a file, apart from names of properties; and a use like `Math.random`, in either notation, as
 * "Math.random".
 */
export function namesIn(path: string, source: string): Set<string> {
  const names = new Set<string>();
  for (const parent of everyNode(treeOf(path, source))) {
    for (const node of childrenOf(parent)) {
      const name = nameOf(node);
      if (name !== undefined && !isPropertyName(parent, node)) names.add(name);
    }
    const object = nameOf(parent['object']) ?? nameOf(parent['init']);
    if (object === undefined) continue;
    const properties = [parent['property'], ...(isNode(parent['id']) ? childrenOf(parent['id']) : [])];
    for (const property of properties) {
      const key = isNode(property) && isNode(property['key']) ? property['key'] : property;
      const member = nameOf(key) ?? textOf(key);
      if (member !== undefined) names.add(`${object}.${member}`);
    }
  }
  return names;
}
