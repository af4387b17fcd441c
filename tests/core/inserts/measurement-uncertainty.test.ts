import { describe, expect, test } from 'vitest';
import { measuredLength } from '../../../src/core/inserts/measured-length.ts';
import {
  combinedUncertainty,
  rectangular,
  scatterOnMean,
} from '../../../src/core/inserts/measurement-uncertainty.ts';
import { entry } from '../../../src/core/sources/derived.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays, wayTo } from '../../support/ways.ts';

const READ = [4.98, 5.04, 4.99, 5.05, 5.01];
const mean = measuredLength('D_k', { values: READ, permissibleError: 0.03 }).estimate;

describe('scatterOnMean', () => {
  test('of five readings leads from s 0.0305 to uA 0.0136 mm (jcgm-100 4.2.2, 4.2.3; hand calculation)', () => {
    // Deviations −0.034, 0.026, −0.024, 0.036, −0.004: Σ² = 0.00372, s = √(0.00372/4).
    const [scatter] = scatterOnMean(mean, READ);
    expectPublished(scatter?.value ?? 0, '0.0136');
    const way = wayTo(scatter);
    expect(way?.formula).toBe('s_x/√n');
    const deviation = way?.entries[0];
    expectPublished(deviation?.value ?? 0, '0.0305');
    expect(deviation?.from?.formula).toBe('√(Σ(x − D_k)²/(n − 1))');
  });
  test('of one reading is not put in', () => {
    expect(scatterOnMean(mean, [5.01])).toEqual([]);
  });
  test('is in words where not every reading is listed', () => {
    const many = Array.from({ length: 13 }, (_, index) => 5 + index / 100);
    const [scatter] = scatterOnMean(
      measuredLength('L', { values: many, permissibleError: 0 }).estimate,
      many,
    );
    expect(wayTo(scatter)?.entries[0]?.from?.formula).toBe('standard deviation of the readings');
  });
});

describe('rectangular', () => {
  test('of ±0.03 mm is 0.0173 mm (jcgm-100 4.3.7)', () => {
    const jaws = rectangular('u_B', entry('a_c', 0.03, 'mm'));
    expectPublished(jaws.value, '0.0173');
    expect(wayTo(jaws)).toMatchObject({ formula: 'a_c/√3', entries: [{ symbol: 'a_c', value: 0.03 }] });
  });
});

describe('combinedUncertainty', () => {
  test('of 0.03 and 0.04 mm is 0.05 mm, and of one alone that one (jcgm-100 5.1.2)', () => {
    const parts = [entry('u_r', 0.03, 'mm'), entry('u_t', 0.04, 'mm')];
    expectRelative(combinedUncertainty(mean, parts).value, 0.05);
    expect(combinedUncertainty(mean, parts).formula).toBe('√(u_r² + u_t²)');
    expect(combinedUncertainty(mean, parts.slice(1))).toMatchObject({ value: 0.04, formula: 'u_t' });
  });
  test.each([[READ], [[4.31]], [[7.2, 7.2, 7.2]]])('leads to the readings: %j', (values) => {
    expectWays([measuredLength('L_k', { values, permissibleError: 0.027 }).standardUncertainty]);
  });
});
