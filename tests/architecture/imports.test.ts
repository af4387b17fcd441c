import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CORE_STOREYS, ROOMS, SIDEWAYS } from './rooms.ts';
import { impuritiesIn, type Tree, violationsIn } from './rules.ts';

const root = join(import.meta.dirname, '..', '..');

function sourceTree(): Tree {
  const src = join(root, 'src');
  if (!existsSync(src)) return new Map();
  const files = readdirSync(src, { withFileTypes: true, recursive: true }).filter((entry) => entry.isFile());
  return new Map(
    files.map((entry) => {
      const path = join(entry.parentPath, entry.name);
      return [relative(root, path).split(sep).join('/'), readFileSync(path, 'utf8')];
    }),
  );
}

const treeOf = (files: Readonly<Record<string, string>>): Tree => new Map(Object.entries(files));
const rulesBrokenBy = (files: Readonly<Record<string, string>>) =>
  violationsIn(treeOf(files)).map(({ rule }) => rule);

describe('the source tree', () => {
  test('keeps to the table of rooms and storeys', () => {
    expect(violationsIn(sourceTree())).toEqual([]);
  });
  test('has a core that knows no time, chance, browser or machine', () => {
    expect(impuritiesIn(sourceTree())).toEqual([]);
  });
});

describe('the table', () => {
  test('names each core folder once', () => {
    const folders = CORE_STOREYS.flat();
    expect(folders).toEqual([...new Set(folders)]);
  });
  test('names rooms that exist in it', () => {
    for (const room of Object.values(ROOMS)) {
      expect(Object.keys(ROOMS)).toEqual(expect.arrayContaining(Object.keys(room.rooms)));
    }
  });
  test('keeps sideways imports within one storey and in one direction', () => {
    for (const [from, allowed] of Object.entries(SIDEWAYS)) {
      const storey = CORE_STOREYS.find((folders) => folders.includes(from)) ?? [];
      expect(storey).toEqual(expect.arrayContaining([...allowed]));
      for (const to of allowed) expect(SIDEWAYS[to] ?? []).not.toContain(from);
    }
  });
});

describe('the check of imports', () => {
  test.each<[string, Record<string, string>]>([
    ['a storey below', { 'src/core/joint/a.ts': "import { b } from '../torque/b.ts';" }],
    ['its own folder', { 'src/core/torque/a.ts': "import { b } from './b.ts';" }],
    ['a pair the table names', { 'src/core/inserts/a.ts': "import { b } from '../screws/b.ts';" }],
    ['types of the core in a table', { 'src/data/a.ts': "import type { B } from '../core/screws/b.ts';" }],
    ['the core in storage', { 'src/storage/a.ts': "import { b } from '../core/screws/b.ts';" }],
    ['a part of an allowed package', { 'src/storage/a.ts': "import * as z from 'zod/mini';" }],
    [
      'modules of Node in the headless program',
      { 'src/headless/a.ts': "import { readFileSync } from 'node:fs';" },
    ],
    ['a style sheet beside a component', { 'src/app/shell/a.tsx': "import css from './a.module.css';" }],
    ['a question in the shell', { 'src/app/shell/a.tsx': "import { B } from '../questions/hole/b.tsx';" }],
    [
      'words in a comment or a text',
      { 'src/core/units/a.ts': "// import 'x';\nexport const a = \"import('y')\";" },
    ],
  ])('admits %s', (_what, files) => {
    expect(violationsIn(treeOf(files))).toEqual([]);
  });

  test.each<[string, Record<string, string>, string]>([
    ['a file in no room', { 'src/a.ts': 'export const a = 1;' }, 'unknown-room'],
    ['a folder that is not in the table', { 'src/helpers/a.ts': 'export const a = 1;' }, 'unknown-room'],
    ['a folder without code that is not in the table', { 'src/fonts/a.woff2': '' }, 'unknown-room'],
    [
      'a core folder that is not in the table',
      { 'src/core/misc/a.ts': 'export const a = 1;' },
      'unknown-storey',
    ],
    ['a file in no core folder', { 'src/core/a.ts': 'export const a = 1;' }, 'unknown-storey'],
    ['a way out of src', { 'src/app/a.ts': "import { b } from '../../tests/b.ts';" }, 'outside-src'],
    ['data in the core', { 'src/core/host/a.ts': "import { b } from '../../data/b.ts';" }, 'room'],
    ['data in storage', { 'src/storage/a.ts': "import { b } from '../data/b.ts';" }, 'room'],
    ['storage in a worker', { 'src/workers/a.ts': "import { b } from '../storage/b.ts';" }, 'room'],
    ['the app in the headless program', { 'src/headless/a.ts': "import { b } from '../app/b.ts';" }, 'room'],
    [
      'a type of data in the core',
      { 'src/core/host/a.ts': "import type { B } from '../../data/b.ts';" },
      'room',
    ],
    [
      'an inline type of data in the core',
      { 'src/core/host/a.ts': "export type A = import('../../data/b.ts').B;" },
      'room',
    ],
    [
      'a dynamic import of data in the core',
      { 'src/core/host/a.ts': "export const a = () => import('../../data/b.ts');" },
      'room',
    ],
    [
      'a re-export of data in the core',
      { 'src/core/host/a.ts': "export const a = 1; export { b } from '../../data/b.ts';" },
      'room',
    ],
    [
      'a re-export of all data in the core',
      { 'src/core/host/a.ts': "export const a = 1; export * from '../../data/b.ts';" },
      'room',
    ],
    [
      'an old-style import of data in the core',
      { 'src/core/host/a.ts': "import b = require('../../data/b.ts'); export const a = b;" },
      'room',
    ],
    [
      'a worker made in storage',
      { 'src/storage/a.ts': "new Worker(new URL('../workers/b.ts', import.meta.url));" },
      'room',
    ],
    [
      'a value of the core in a table',
      { 'src/data/a.ts': "import { b } from '../core/screws/b.ts';" },
      'types-only',
    ],
    [
      'a value import of a type in a table',
      { 'src/data/a.ts': "import { type B } from '../core/screws/b.ts';" },
      'types-only',
    ],
    ['a package in the core', { 'src/core/numerics/a.ts': "import { add } from 'mathjs';" }, 'package'],
    [
      'a type of a package in the core',
      { 'src/core/numerics/a.ts': "import type { Unit } from 'mathjs';" },
      'package',
    ],
    ['a package in a table', { 'src/data/a.ts': "import * as z from 'zod/mini';" }, 'package'],
    ['a scoped package', { 'src/app/a.ts': "import { b } from '@scope/b';" }, 'package'],
    ['a module of Node in the core', { 'src/core/numerics/a.ts': "import { b } from 'node:fs';" }, 'package'],
    ['a module of Node in the app', { 'src/app/a.ts': "import { b } from 'node:fs';" }, 'package'],
    ['an absolute path', { 'src/app/a.ts': "import { b } from '/src/core/units/b.ts';" }, 'package'],
    ['a storey above', { 'src/core/torque/a.ts': "import { b } from '../joint/b.ts';" }, 'storey'],
    [
      'the ground floor looking up',
      { 'src/core/units/a.ts': "import type { B } from '../screws/b.ts';" },
      'storey',
    ],
    [
      'a neighbour the table does not name',
      { 'src/core/holes/a.ts': "import { b } from '../torque/b.ts';" },
      'storey',
    ],
    [
      'a named pair the other way round',
      { 'src/core/screws/a.ts': "import { b } from '../inserts/b.ts';" },
      'storey',
    ],
    [
      'a question in another question',
      { 'src/app/questions/hole/a.tsx': "import { B } from '../tight/b.tsx';" },
      'separate',
    ],
    [
      'a path computed at run time',
      { 'src/app/a.ts': 'export const a = (b: string) => import(b);' },
      'computed-import',
    ],
    [
      'files by a pattern',
      { 'src/app/a.ts': "export const a = import.meta.glob('./*.ts');" },
      'computed-import',
    ],
    [
      'a file of re-exports',
      { 'src/core/units/index.ts': "export { a } from './a.ts';\nexport * from './b.ts';" },
      'barrel',
    ],
    [
      're-exports in two steps',
      { 'src/core/units/all.ts': "import { a } from './a.ts';\nexport { a };" },
      'barrel',
    ],
    [
      'two files in a circle',
      {
        'src/core/units/a.ts': "import { b } from './b.ts'; export const a = b;",
        'src/core/units/b.ts': "import { a } from './a.ts'; export const b = a;",
      },
      'cycle',
    ],
    [
      'three files in a circle, one link dynamic',
      {
        'src/app/a.ts': "import { b } from './b'; export const a = b;",
        'src/app/b.ts': "import { c } from './c.ts'; export const b = c;",
        'src/app/c.ts': "export const c = () => import('./a.ts');",
      },
      'cycle',
    ],
  ])('refuses %s', (_what, files, rule) => {
    expect(rulesBrokenBy(files)).toEqual([rule]);
  });

  test('does not mind types that know each other', () => {
    const files = {
      'src/core/units/a.ts': "import type { B } from './b.ts'; export type A = B | 1;",
      'src/core/units/b.ts': "import { type A } from './a.ts'; export type B = { readonly a: A };",
    };
    expect(rulesBrokenBy(files)).toEqual([]);
  });
  test('tells file and import', () => {
    expect(violationsIn(treeOf({ 'src/core/torque/a.ts': "import { b } from '../joint/b.ts';" }))).toEqual([
      { rule: 'storey', file: 'src/core/torque/a.ts', what: '../joint/b.ts' },
    ]);
  });
  test('stops at a file that it cannot read', () => {
    expect(() => violationsIn(treeOf({ 'src/app/a.ts': 'import {' }))).toThrow('src/app/a.ts');
  });
});

describe('the check of the core for purity', () => {
  const namesFoundIn = (source: string) =>
    impuritiesIn(treeOf({ 'src/core/units/a.ts': source })).map(({ what }) => what);

  test.each([
    ['Date', 'export const a = new Date();'],
    ['Date', 'export const a = () => Date.now();'],
    ['Math.random', 'export const a = Math.random();'],
    ['Math.random', "export const a = Math['random']();"],
    ['Math.random', 'const { random } = Math; export const a = random();'],
    ['window', 'export const a = window.innerWidth;'],
    ['window', "export const a = typeof window === 'object';"],
    ['window', 'const b = { window }; export const a = b;'],
    ['document', "export const a = document.querySelector('p');"],
    ['globalThis', "export const a = Reflect.get(globalThis, 'Date');"],
    ['process', "export const a = process.env['HOME'];"],
    ['localStorage', "export const a = localStorage.getItem('b');"],
    ['fetch', "export const a = () => fetch('b');"],
    ['crypto', 'export const a = crypto.randomUUID();'],
    ['performance', 'export const a = performance.now();'],
  ])('finds %s in: %s', (name, source) => {
    expect(namesFoundIn(source)).toEqual([name]);
  });
  test.each([
    ['a property', 'export const a = (b: { window: number }) => b.window;'],
    ['a key', "export const a = { window: 1, document: 2, 'fetch': 3 };"],
    ['a text', "export const a = 'Date window process';"],
    ['a comment', '// no Date, no Math.random, no fetch\nexport const a = 1;'],
    ['other parts of Math', 'export const a = Math.sqrt(Math.PI);'],
  ])('does not mind the word as %s', (_where, source) => {
    expect(namesFoundIn(source)).toEqual([]);
  });
  test('looks at the core only', () => {
    expect(impuritiesIn(treeOf({ 'src/app/a.ts': 'export const a = window;' }))).toEqual([]);
  });
});
