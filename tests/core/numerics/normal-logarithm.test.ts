import { describe, expect, test } from 'vitest';
import { normalDensity, normalProbability } from '../../../src/core/numerics/normal-distribution.ts';
import { logNormalProbability, logNormalSlope } from '../../../src/core/numerics/normal-logarithm.ts';
import rows from '../../fixtures/r-bond/normal-logarithm.json';
import { expectRelative } from '../../support/published.ts';

describe('logNormalProbability', () => {
  test.each(rows)('at $x is $expected (R, pnorm on the logarithm)', ({ x, expected }) => {
    expectRelative(logNormalProbability(x), expected, 2e-13);
  });
  test('is continuous where the series takes over, to its next term', () => {
    const slope = (logNormalProbability(-24.9999) - logNormalProbability(-25.0001)) / 2e-4;
    expectRelative(slope, logNormalSlope(-25), 1e-8);
  });
});

describe('logNormalSlope', () => {
  test('is density over probability', () => {
    for (const x of [-9.1, -2.2, 0.4, 5.7]) {
      expectRelative(logNormalSlope(x), normalDensity(x) / normalProbability(x), 1e-12);
    }
  });
  test('is −x + 1/(−x) far below and nothing far above', () => {
    expectRelative(logNormalSlope(-800), 800 + 1 / 800, 1e-8);
    expect(logNormalSlope(50)).toBe(0);
  });
});
