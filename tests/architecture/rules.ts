import { posix } from 'node:path';
import { CORE_STOREYS, ROOMS, SEPARATE_WITHIN, SIDEWAYS } from './rooms.ts';
import { type Import, importsOf, isBarrel, namesIn } from './syntax.ts';

/** Files below src with their texts, by path from the project's folder: "src/core/units/length.ts". */
export type Tree = ReadonlyMap<string, string>;

export type Rule =
  | 'unknown-room'
  | 'unknown-storey'
  | 'outside-src'
  | 'room'
  | 'types-only'
  | 'package'
  | 'storey'
  | 'separate'
  | 'computed-import'
  | 'cycle'
  | 'barrel'
  | 'impure';

export interface Violation {
  readonly rule: Rule;
  readonly file: string;
  /** What it imports or uses against the rule. */
  readonly what: string;
}

const CODE = /\.[cm]?[jt]sx?$/;

/** What a pure calculation cannot know: time, chance, the browser, the machine. */
const IMPURE = [
  'Date',
  'Math.random',
  'crypto',
  'performance',
  'window',
  'document',
  'navigator',
  'globalThis',
  'process',
  'localStorage',
  'sessionStorage',
  'indexedDB',
  'fetch',
  'setTimeout',
  'setInterval',
  'console',
];

const folderOf = (path: string, depth: number): string | undefined => {
  const parts = path.split('/');
  // The last part is the file itself.
  return depth < parts.length - 1 ? parts[depth] : undefined;
};
const roomOf = (path: string) => folderOf(path, 1);
const storeyFolderOf = (path: string) => (roomOf(path) === 'core' ? folderOf(path, 2) : undefined);
const storeyOf = (folder: string) => CORE_STOREYS.findIndex((storey) => storey.includes(folder));

/** The place that a relative import names, without the bundler's "?url" and the like. */
function placeOf(from: string, target: string): string {
  return posix.join(posix.dirname(from), target.replace(/\?.*$/, ''));
}

function fileOf(tree: Tree, place: string): string | undefined {
  return [place, `${place}.ts`, `${place}.tsx`, `${place}/index.ts`, `${place}/index.tsx`].find((path) =>
    tree.has(path),
  );
}

function packageOf(target: string): string {
  if (target.startsWith('node:')) return 'node:';
  const [first = '', second = ''] = target.split('/');
  return first.startsWith('@') ? `${first}/${second}` : first;
}

function placeRules(path: string): Rule[] {
  const room = roomOf(path);
  if (room === undefined || !(room in ROOMS)) return ['unknown-room'];
  if (room !== 'core') return [];
  const folder = storeyFolderOf(path);
  return folder === undefined || storeyOf(folder) < 0 ? ['unknown-storey'] : [];
}

function roomRules(from: string, to: string, typeOnly: boolean): Rule[] {
  const [fromRoom = '', toRoom = ''] = [roomOf(from), roomOf(to)];
  if (!to.startsWith('src/')) return ['outside-src'];
  if (fromRoom === toRoom) return [];
  const allowed = ROOMS[fromRoom]?.rooms[toRoom];
  if (allowed === undefined) return ['room'];
  return allowed === 'types' && !typeOnly ? ['types-only'] : [];
}

function storeyRules(from: string, to: string): Rule[] {
  const [fromFolder, toFolder] = [storeyFolderOf(from), storeyFolderOf(to)];
  if (fromFolder === undefined || toFolder === undefined || fromFolder === toFolder) return [];
  const isBelow = storeyOf(toFolder) < storeyOf(fromFolder);
  const isNamed =
    storeyOf(toFolder) === storeyOf(fromFolder) && (SIDEWAYS[fromFolder] ?? []).includes(toFolder);
  return isBelow || isNamed ? [] : ['storey'];
}

function separateRules(from: string, to: string): Rule[] {
  const meet = SEPARATE_WITHIN.some((parent) => {
    const within = (path: string) =>
      path.startsWith(`${parent}/`) ? folderOf(path, parent.split('/').length) : undefined;
    const [one, other] = [within(from), within(to)];
    return one !== undefined && other !== undefined && one !== other;
  });
  return meet ? ['separate'] : [];
}

function importRules(from: string, { target, typeOnly }: Import): Rule[] {
  if (target === undefined) return ['computed-import'];
  if (!target.startsWith('.')) {
    return ROOMS[roomOf(from) ?? '']?.packages.includes(packageOf(target)) ? [] : ['package'];
  }
  const to = placeOf(from, target);
  return [...roomRules(from, to, typeOnly), ...storeyRules(from, to), ...separateRules(from, to)];
}

/** Circles of files that load each other: at least one of every knot. */
function circles(tree: Tree, imports: ReadonlyMap<string, readonly Import[]>): string[][] {
  const found: string[][] = [];
  const done = new Set<string>();
  const visit = (file: string, trail: readonly string[]): void => {
    const begin = trail.indexOf(file);
    if (begin >= 0) {
      found.push([...trail.slice(begin), file]);
      return;
    }
    if (done.has(file)) return;
    for (const { target, typeOnly } of imports.get(file) ?? []) {
      const next = target?.startsWith('.') && !typeOnly ? fileOf(tree, placeOf(file, target)) : undefined;
      if (next !== undefined) visit(next, [...trail, file]);
    }
    done.add(file);
  };
  for (const file of imports.keys()) visit(file, []);
  return found;
}

/** Everything in the tree that is against the table of rooms. */
export function violationsIn(tree: Tree): Violation[] {
  const code = [...tree].filter(([path]) => CODE.test(path));
  const imports = new Map(code.map(([path, source]) => [path, importsOf(path, source)]));
  const places = [...tree.keys()].flatMap((file) =>
    placeRules(file).map((rule): Violation => ({ rule, file, what: posix.dirname(file) })),
  );
  const edges = [...imports].flatMap(([file, list]) =>
    list.flatMap((one) =>
      importRules(file, one).map(
        (rule): Violation => ({ rule, file, what: one.target ?? 'a computed path' }),
      ),
    ),
  );
  const cycles = circles(tree, imports).map(
    (circle): Violation => ({ rule: 'cycle', file: circle[0] ?? '', what: circle.slice(1).join(' → ') }),
  );
  const barrels = code
    .filter(([path, source]) => isBarrel(path, source))
    .map(([file]): Violation => ({ rule: 'barrel', file, what: 'only re-exports' }));
  return [...places, ...edges, ...cycles, ...barrels];
}

/** Uses of time, chance, browser and machine in the core. */
export function impuritiesIn(tree: Tree): Violation[] {
  return [...tree]
    .filter(([path]) => CODE.test(path) && roomOf(path) === 'core')
    .flatMap(([file, source]) => {
      const names = namesIn(file, source);
      return IMPURE.filter((name) => names.has(name)).map(
        (what): Violation => ({ rule: 'impure', file, what }),
      );
    });
}
