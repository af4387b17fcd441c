import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parseFormula } from '../../../src/app/derivation/parse-formula.ts';
import { CALCULATED, stepsOf } from '../calculation-sheet/calculations.ts';

const CORE = join(import.meta.dirname, '../../../src/core');
const TEXT_AFTER_FORMULA = /formula:\s*(?<text>[^;]*?)(?:,\s*\n\s*entries|,\s*\n\s*\/\/|\}\s*[,;)\n])/g;
const QUOTED = /'(?<formula>[^'\n]+)'/g;

/** Every text that stands as a formula in the sources of the core. */
const written = readdirSync(CORE, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts'))
  .flatMap((path) => [...readFileSync(join(CORE, path), 'utf8').matchAll(TEXT_AFTER_FORMULA)])
  .flatMap((match) => [...(match.groups?.['text'] ?? '').matchAll(QUOTED)])
  .flatMap((match) => match.groups?.['formula'] ?? [])
  .filter((text) => !['pull', 'clamp', 'countersunk', 'metric', 'assembly'].includes(text));

const met = CALCULATED.flatMap((one) => stepsOf(one)).map(({ derived }) => derived);

describe('the formulas of the core', () => {
  test('are found in its sources', () => {
    expect(written).toContain('π/4 · ((d_2 + d_3)/2)²');
    expect(written).toContain('min(l − g − 0.8 · P, L)');
    expect(written.length).toBeGreaterThan(90);
  });
  test.each([...new Set(written)])('parse as they are written: %s', (formula) => {
    expect(parseFormula(formula)).toBeDefined();
  });
  test('parse as they are met in many joints, with the symbols before them', () => {
    const texts = new Set(
      met.flatMap(({ symbol, formula, entries }) => [
        symbol,
        formula,
        ...entries.map((entry) => entry.symbol),
      ]),
    );
    expect([...texts].filter((text) => parseFormula(text) === undefined)).toEqual([]);
    expect(texts.size).toBeGreaterThan(140);
  });
});
