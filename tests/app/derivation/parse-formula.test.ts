import { describe, expect, test } from 'vitest';
import { type FormulaNode, nodesWithin } from '../../../src/app/derivation/formula-node.ts';
import { parseFormula } from '../../../src/app/derivation/parse-formula.ts';
import type { Derived } from '../../../src/core/sources/derived.ts';
import { expectRelative } from '../../support/published.ts';
import { evaluated } from './evaluate-formula.ts';

function parsed(formula: string): FormulaNode {
  const node = parseFormula(formula);
  if (node === undefined) throw new Error(`not a formula: ${formula}`);
  return node;
}
const kindsIn = (formula: string) => [...nodesWithin(parsed(formula))].map(({ kind }) => kind);

/** What a formula comes to with numbers put in. */
function worth(formula: string, values: Readonly<Record<string, number>> = {}): number {
  const derived: Derived = {
    symbol: 'Y',
    value: 0,
    unit: '-',
    formula,
    entries: Object.entries(values).map(([symbol, value]) => ({ symbol, value, unit: '-' })),
    source: 'own-model',
    standing: 'estimate',
  };
  return evaluated(derived) ?? Number.NaN;
}

describe('parseFormula', () => {
  test.each([
    // Worked by hand.
    ['2 + 3 · 4', 14],
    ['20 − 3 − 4', 13],
    ['84/7/3', 4],
    ['5 · 12/4 · 2', 30],
    ['(2 + 3) · 4', 20],
    ['−3 + 5', 2],
    ['2 · 3²', 18],
    ['2^3', 8],
    ['√9 · 5', 15],
    ['√(16 + 9)', 5],
    ['½ · 7', 3.5],
    ['⌈2.1⌉ + 1', 4],
    ['|3 − 8|', 5],
    ['min(4, max(1, 3), 9)', 3],
    ['max |2 − 9|', 7],
    ['10/(2 · cos 60°)', 10],
    ['6/sin 30°', 12],
    ['0, melted in', 0],
  ])('works %s out to %f', (formula, result) => {
    expectRelative(worth(formula), result, 1e-12);
  });
  test('takes a figure before π as its multiple', () => {
    expectRelative(worth('P/(2π)', { P: 0.7 }), 0.7 / (2 * Math.PI));
  });
  test('takes a whole expression as one symbol where it has a value', () => {
    expectRelative(worth('(1 + C_p/C_b · c)/3', { 'C_p/C_b': 0.31, c: 1.7 }), (1 + 0.31 * 1.7) / 3);
    expectRelative(worth('√(u(L)² + 1)', { 'u(L)': 0.75 }), 1.25);
  });
  test('ends a subscript at the next sign and keeps figures in it', () => {
    const names = [...nodesWithin(parsed('π/16 · d_3min³ − A_Ss/L_E'))].filter(({ kind }) => kind === 'name');
    expect(names).toMatchObject([
      { base: 'π', subscript: '' },
      { base: 'd', subscript: '3min' },
      { base: 'A', subscript: 'Ss' },
      { base: 'L', subscript: 'E' },
    ]);
  });
  test('keeps a figure and its unit together', () => {
    expect(parsed('23 °C')).toMatchObject({ kind: 'measure', number: '23', unit: '°C' });
    expect(kindsIn('ln(D_CAD/4 mm)')).toEqual(['call', 'binary', 'name', 'measure']);
  });
  test('takes a sentence as words, with its symbols', () => {
    expect(parsed('largest setting between T_least and T_most')).toMatchObject({
      kind: 'words',
      parts: [
        { kind: 'text', text: 'largest setting between ' },
        { kind: 'name', base: 'T', subscript: 'least' },
        { kind: 'text', text: ' and ' },
        { kind: 'name', base: 'T', subscript: 'most' },
      ],
    });
  });
  test('keeps what is said after a comma apart', () => {
    expect(parsed('1, nothing is clamped under the part')).toMatchObject({
      kind: 'remark',
      of: { kind: 'number', text: '1' },
      words: 'nothing is clamped under the part',
    });
  });
  test.each(['2 +', '(a + b', 'a · · b', 'min(1, 2', '√', 'a b', 'Σ'])(
    'takes no half formula: %s',
    (formula) => {
      expect(parseFormula(formula)).toBeUndefined();
    },
  );
});
