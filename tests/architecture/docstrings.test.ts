import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { describe, expect, test } from 'vitest';
import { docstringFaults } from './docstring-rules.ts';
import { exportedFunctions } from './exported-functions.ts';

const root = join(import.meta.dirname, '..', '..');

const files = readdirSync(join(root, 'src', 'core'), { withFileTypes: true, recursive: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
  .map((entry) => join(entry.parentPath, entry.name))
  .map((path) => [relative(root, path).split(sep).join('/'), readFileSync(path, 'utf8')] as const);

const rulesBrokenBy = (docstring: string, code: string) =>
  docstringFaults('specimen.ts', `/**\n${docstring}\n */\nexport ${code}`).map(({ rule }) => rule);

describe('the docstrings of the core', () => {
  test('are found: most exported functions have one', () => {
    const functions = files.flatMap(([path, source]) => exportedFunctions(path, source));
    const documented = functions.filter(({ docstring }) => docstring.includes('@returns'));
    expect(documented.length).toBeGreaterThan(100);
  });
  test.each(files)('of %s name sources, parameters and units that are so', (path, source) => {
    expect(docstringFaults(path, source)).toEqual([]);
  });
});

describe('the check of docstrings', () => {
  const area = 'const area = (d: number): number => d * d;';
  test('admits a function without tags, and one that says everything', () => {
    expect(rulesBrokenBy(' * Area.', area)).toEqual([]);
    expect(
      rulesBrokenBy(
        ' * Area.\n * @param d - width [mm]\n * @returns A [mm²]\n * @source iso-724 table 1',
        area,
      ),
    ).toEqual([]);
  });
  test('admits one name for a parameter that is taken apart', () => {
    expect(
      rulesBrokenBy(
        ' * @param box - sides [mm]\n * @returns A [mm²]',
        'function area({ a, b }: { a: number; b: number }): number { return a * b; }',
      ),
    ).toEqual([]);
  });
  test('asks no unit of a sentence, a choice or a structure', () => {
    expect(rulesBrokenBy(' * @returns the kind', "const kind = (): 'a' | 'b' => 'a';")).toEqual([]);
  });
  test.each([
    ['a source that is not in the list', ' * @source iso-9999 table', 'unknown-source'],
    [
      'a parameter that is not there',
      ' * @param e - width [mm]\n * @param d - x\n * @returns A [mm²]',
      'unknown-parameter',
    ],
    ['a parameter that is left out', ' * @param e - width [mm]\n * @returns A [mm²]', 'parameter-missing'],
    ['a number without its unit', ' * @returns the area', 'returns-without-unit'],
    ['parameters without what comes out', ' * @param d - width [mm]', 'returns-missing'],
  ])('finds %s', (_what, docstring, rule) => {
    expect(rulesBrokenBy(docstring, area)).toContain(rule);
  });
  test('reads a tag that goes over two lines', () => {
    expect(rulesBrokenBy(' * @returns the area of a\n *   square [mm²]', area)).toEqual([]);
  });
});
