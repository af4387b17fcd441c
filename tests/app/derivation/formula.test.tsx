// @vitest-environment jsdom
import { render } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { Formula } from '../../../src/app/derivation/formula.tsx';
import { CALCULATED, stepsOf } from '../calculation-sheet/calculations.ts';

const MATHML = 'http://www.w3.org/1998/Math/MathML';
const drawn = (text: string, values?: ReadonlyMap<string, string>) =>
  render(values === undefined ? <Formula text={text} /> : <Formula text={text} values={values} />).container;
const namesIn = (container: HTMLElement) =>
  [...container.querySelectorAll('math, math *')].map(({ localName }) => localName);

describe('Formula', () => {
  test('sets fractions, roots, powers and subscripts as elements of mathematics', () => {
    const shown = drawn('A_s · R_p/√(1 + 3 · x²)');
    expect(shown.querySelectorAll('msub')).toHaveLength(2);
    expect(shown.querySelector('mfrac > msub')).toHaveTextContent('Rp');
    expect(shown.querySelector('mfrac > msqrt > mrow > mrow > msup')).toHaveTextContent('x2');
    for (const element of shown.querySelectorAll('math *')) expect(element.namespaceURI).toBe(MATHML);
  });
  test('leaves out brackets that a fraction line makes needless, and keeps those under a power', () => {
    expect(drawn('(a + b)/(c − d)').querySelectorAll('mo[fence]')).toHaveLength(0);
    expect(drawn('(a + b)²').querySelectorAll('mo[fence]')).toHaveLength(2);
  });
  test('slants one Latin letter only; words and Greek letters stand upright', () => {
    const shown = drawn('η · D_k · sunk');
    expect([...shown.querySelectorAll('.slanted')].map(({ textContent }) => textContent)).toEqual(['D']);
    expect(shown.querySelectorAll('mi[mathvariant="normal"]')).toHaveLength(3);
  });
  test('may break before each factor, and is read as its plain text', () => {
    const shown = drawn('η · τ · π · D_k');
    expect(shown.querySelectorAll('math')).toHaveLength(4);
    expect(shown.firstElementChild).toHaveAttribute('aria-label', 'η · τ · π · D_k');
    expect(shown.firstElementChild).toHaveAttribute('role', 'math');
  });
  test('puts values in with their units, in brackets where they are raised or negative', () => {
    const values = new Map([
      ['D_t', '4.30\u00a0mm'],
      ['e', '−0.25\u00a0mm'],
    ]);
    const plain = (text: string) => drawn(text, values).textContent.replaceAll('\u200b', '');
    expect(plain('D_t − e')).toBe('4.30\u00a0mm−(−0.25\u00a0mm)');
    expect(plain('e + D_t²')).toBe('−0.25\u00a0mm+(4.30\u00a0mm)2');
  });
  test('sets a sentence as text with its symbols', () => {
    const shown = drawn('largest setting between T_least and T_most');
    expect(shown).toHaveTextContent('largest setting between Tleast and Tmost');
    expect(new Set(namesIn(shown))).toEqual(new Set(['math', 'mtext', 'msub', 'mi']));
  });
  test('sets every formula of many joints from the known elements', () => {
    const formulas = new Set(CALCULATED.flatMap(stepsOf).map(({ derived }) => derived.formula));
    const known = ['math', 'mrow', 'mi', 'mn', 'mo', 'mtext', 'msub', 'msup', 'mfrac', 'msqrt'];
    const used = new Set([...formulas].flatMap((formula) => namesIn(drawn(formula))));
    expect([...used].filter((name) => !known.includes(name))).toEqual([]);
    expect(used.size).toBe(known.length);
  });
});
