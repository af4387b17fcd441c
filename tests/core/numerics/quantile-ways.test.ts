import { describe, expect, test } from 'vitest';
import {
  chiSquaredQuantileWay,
  normalQuantileWay,
  shareBelowLowerEnd,
  shareBelowUpperEnd,
  studentQuantileWay,
} from '../../../src/core/numerics/quantile-ways.ts';
import { entry, entryFrom } from '../../../src/core/sources/derived.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { expectPublished } from '../../support/published.ts';

describe('studentQuantileWay', () => {
  test.each([
    [0.95, 5, '2.015'],
    [0.975, 4, '2.776'],
    [0.99, 17, '2.567'],
  ])('at %f with %f degrees of freedom is %s (printed tables)', (share, freedom, printed) => {
    const way = studentQuantileWay('t_c', { share, freedom: entry('ν_e', freedom, '-') });
    expectPublished(way.value, printed);
    expect(way).toMatchObject({ symbol: 't_c', formula: 't(p, ν_e)' });
    expect(evaluated(way)).toBe(way.value);
  });
});

describe('normalQuantileWay', () => {
  test.each([
    [0.95, '1.645'],
    [0.975, '1.960'],
    [0.05, '-1.645'],
  ])('at %f is %s (printed tables)', (share, printed) => {
    const way = normalQuantileWay('z_p', share);
    expectPublished(way.value, printed);
    expect(evaluated(way)).toBe(way.value);
  });
});

describe('chiSquaredQuantileWay', () => {
  test.each([
    [0.95, 5, '11.070'],
    [0.975, 9, '19.023'],
    [0.05, 7, '2.167'],
  ])('at %f with %f degrees of freedom is %s (printed tables, from memory)', (share, freedom, printed) => {
    const way = chiSquaredQuantileWay('u_χ', { share, freedom: entry('ν_e', freedom, '-') });
    expectPublished(way.value, printed);
    expect(way.formula).toBe('χ(p, ν_e)');
    expect(evaluated(way)).toBe(way.value);
  });
});

describe('shares below the ends of an interval', () => {
  test('leave as much outside on either side, and lead to the confidence', () => {
    const [below, above] = [shareBelowLowerEnd(0.9), shareBelowUpperEnd(0.9)];
    expectPublished(below.value, '0.0500');
    expectPublished(above.value, '0.9500');
    for (const share of [below, above]) expect(evaluated(share)).toBe(share.value);
    const way = normalQuantileWay('z_p', entryFrom(above));
    expectPublished(way.value, '1.645');
    expect(way).toMatchObject({ formula: 'z(p_γ)', entries: [{ from: { formula: '(1 + γ)/2' } }] });
  });
});
