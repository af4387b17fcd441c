import { describe, expect, test } from 'vitest';
import { formulaParts, withValues } from '../../../src/app/derivation/formula-parts.ts';

const names = (formula: string) =>
  formulaParts(formula).flatMap((part) =>
    part.kind === 'name'
      ? [`${part.italic ? 'i' : 'u'}:${part.text}${part.subscript && `_${part.subscript}`}`]
      : [],
  );

describe('formulaParts', () => {
  test('sets one Latin letter in italics with its subscript, words and Greek letters upright', () => {
    expect(names('η · τ · π · D_k · ln(D_CAD/4 mm)')).toEqual([
      'u:η',
      'u:τ',
      'u:π',
      'i:D_k',
      'u:ln',
      'i:D_CAD',
      'u:mm',
    ]);
  });
  test('ends a subscript at the next sign, keeps figures in it', () => {
    expect(names('π/16 · d_3min³ − A_Ss/L_E')).toEqual(['u:π', 'i:d_3min', 'i:A_Ss', 'i:L_E']);
  });
  test('raises what follows a caret', () => {
    expect(formulaParts('ρ^1.5 + t^n').filter(({ kind }) => kind === 'exponent')).toEqual([
      { kind: 'exponent', text: '1.5' },
      { kind: 'exponent', text: 'n' },
    ]);
  });
  test.each([
    'min(1, max(0, (D_k − D)/(D_k − D_t)))',
    '√(u(L)² + (0.28 · u(D_k))²)',
    '⌈(D_b − D_t)/2⌉ + 1',
    '0',
  ])('loses nothing of %s', (formula) => {
    const again = formulaParts(formula)
      .map((part) =>
        part.kind === 'exponent'
          ? `^${part.text}`
          : `${part.text}${part.kind === 'name' && part.subscript ? `_${part.subscript}` : ''}`,
      )
      .join('');
    expect(again).toBe(formula);
  });
});

describe('withValues', () => {
  const put = (formula: string, values: Record<string, string>) =>
    withValues(formula, new Map(Object.entries(values)));
  test('puts values in for whole symbols only', () => {
    expect(put('D_p + f · fit', { D_p: '4.25 mm', f: '0.05 mm', D: '9' })).toBe('4.25 mm + 0.05 mm · fit');
  });
  test('takes the longest symbol', () => {
    expect(put('(1 + C_p/C_b)/C_p', { 'C_p/C_b': '0.31', C_p: '7' })).toBe('(1 + 0.31)/7');
  });
  test('leaves units and functions alone', () => {
    expect(put('min(m, 1 mm)', { m: '0.6 mm', i: '3', n: '4' })).toBe('min(0.6 mm, 1 mm)');
  });
  test('brackets a negative value after a sign and under an exponent', () => {
    expect(put('D_t − e', { D_t: '4.30', e: '−0.25' })).toBe('4.30 − (−0.25)');
    expect(put('e² + a', { e: '−0.25', a: '1' })).toBe('(−0.25)² + 1');
    expect(put('e + a', { e: '−0.25', a: '1' })).toBe('−0.25 + 1');
  });
  test('follows a figure directly, as in 2π', () => {
    expect(put('P/(2π)', { P: '0.5 mm' })).toBe('0.5 mm/(2π)');
  });
});
