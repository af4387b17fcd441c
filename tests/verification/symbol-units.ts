import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** A symbol as the core writes it, with its units and the files that speak of it. */
export interface SymbolUse {
  readonly units: ReadonlySet<string>;
  readonly files: ReadonlySet<string>;
}

const ENTRY =
  /\b(?:carefulE|e)ntry\(\s*'([^']+)',(?:[^'()]|\([^()]*\)|\((?:[^()]|\([^()]*\))*\))*?'([^']+)',?\s*\)/g;
/** An entry whose way is made later. */
const WITH_WAY = /\bentry(?:Later|By)\(\s*'([^']+)',[^']*'([^']+)',/g;
const DERIVED = /symbol: '([^']+)'(?:(?!symbol:)[\s\S]){0,400}?unit: '([^']+)'/g;
/** A whole text in quotes that may be a symbol. */
const QUOTED = /'([^'\n]{1,12})'/g;

function coreFiles(root: string): readonly (readonly [path: string, source: string])[] {
  const core = join(root, 'src', 'core');
  return readdirSync(core, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => [relative(core, path).split(sep).join('/'), readFileSync(path, 'utf8')] as const)
    .toSorted(([one], [other]) => (one < other ? -1 : 1));
}

/** What the core's own texts say about each symbol. */
export function symbolUses(root: string): ReadonlyMap<string, SymbolUse> {
  const uses = new Map<string, { units: Set<string>; files: Set<string> }>();
  const recordOf = (symbol: string) => {
    const use = uses.get(symbol) ?? { units: new Set(), files: new Set() };
    uses.set(symbol, use);
    return use;
  };
  const files = coreFiles(root);
  for (const [path, source] of files) {
    const found = [ENTRY, WITH_WAY, DERIVED].flatMap((pattern) => [...source.matchAll(pattern)]);
    for (const [, symbol = '', unit = ''] of found) {
      recordOf(symbol).units.add(unit);
      recordOf(symbol).files.add(path);
    }
  }
  // A symbol that is handed to another function stands there without its unit.
  const known = new Set(uses.keys());
  for (const [path, source] of files) {
    for (const [, quoted = ''] of source.matchAll(QUOTED)) {
      if (!known.has(quoted)) recordOf(quoted).files.add(path);
    }
  }
  return uses;
}
