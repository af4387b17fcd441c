import { describe, expect, test } from 'vitest';
import { normalQuantileWay, studentQuantileWay } from '../../../src/core/numerics/quantile-ways.ts';
import { entry } from '../../../src/core/sources/derived.ts';
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
