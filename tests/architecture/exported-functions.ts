import { parseSync } from 'vite';

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

/** A function that a file exports, with the docstring that stands right above it. */
export interface ExportedFunction {
  readonly name: string;
  /** One entry a parameter: its name, or undefined where it is taken apart at once. */
  readonly parameters: readonly (string | undefined)[];
  /** Text of the return type; undefined where it is inferred. */
  readonly returns: string | undefined;
  readonly docstring: string;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && 'start' in value && 'end' in value;

const nodesIn = (value: unknown): readonly Node[] => (Array.isArray(value) ? value.filter(isNode) : []);

const nameOf = (node: unknown): string | undefined =>
  isNode(node) && node.type === 'Identifier' && typeof node['name'] === 'string' ? node['name'] : undefined;

/** The functions of an export: a declared one, or arrows given to constants. */
function functionsOf(declaration: Node): readonly { readonly name: string; readonly body: Node }[] {
  if (declaration.type === 'FunctionDeclaration') {
    return [{ name: nameOf(declaration['id']) ?? '', body: declaration }];
  }
  if (declaration.type !== 'VariableDeclaration') return [];
  return nodesIn(declaration['declarations']).flatMap(({ id, init }) =>
    isNode(init) && init.type === 'ArrowFunctionExpression' ? [{ name: nameOf(id) ?? '', body: init }] : [],
  );
}

/** Every exported function of a source text. Throws when the text is not TypeScript. */
export function exportedFunctions(path: string, source: string): readonly ExportedFunction[] {
  const { program, errors, comments } = parseSync(path, source);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]?.message ?? 'not TypeScript'}`);
  const tree: unknown = program;
  const body = isNode(tree) ? nodesIn(tree['body']) : [];
  return body.flatMap((statement) => {
    const { declaration } = statement;
    if (statement.type !== 'ExportNamedDeclaration' || !isNode(declaration)) return [];
    const above = comments.findLast(
      (comment) => comment.end <= statement.start && source.slice(comment.end, statement.start).trim() === '',
    );
    const docstring = above?.type === 'Block' && above.value.startsWith('*') ? above.value : '';
    return functionsOf(declaration).map(({ name, body: made }): ExportedFunction => {
      const { returnType } = made;
      return {
        name,
        parameters: nodesIn(made['params']).map((parameter) =>
          nameOf(parameter.type === 'AssignmentPattern' ? parameter['left'] : parameter),
        ),
        returns: isNode(returnType) ? source.slice(returnType.start, returnType.end) : undefined,
        docstring,
      };
    });
  });
}
