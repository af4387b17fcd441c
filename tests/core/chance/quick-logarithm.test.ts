import { describe, expect, test } from 'vitest';
import { quickLogarithm } from '../../../src/core/chance/quick-logarithm.ts';
import { expectPublished } from '../../support/published.ts';

/** r⁴/4 at r = 1/256 is 5.8 · 10⁻¹¹. */
const ERROR = 1e-10;

const expectNear = (x: number) =>
  expect(Math.abs(quickLogarithm(x) - Math.log(x)), String(x)).toBeLessThan(ERROR);

describe('quickLogarithm', () => {
  test.each([
    [0.5, '-0.693147181'],
    [0.1, '-2.302585093'],
    [0.001, '-6.907755279'],
  ])('of %f is %s (printed tables, from memory)', (x, printed) => {
    expectPublished(quickLogarithm(x), printed);
  });
  test('stays within its error of the exact logarithm, below its table too', () => {
    for (let x = 0.999_999; x > 1e-12; x *= 0.999_17) expectNear(x);
  });
  test('stays within its error on both sides of every power of two', () => {
    for (let power = 1; power <= 40; power += 1) {
      for (const beside of [1 - 2 ** -50, 1, 1 + 2 ** -50]) expectNear(beside * 2 ** -power);
    }
  });
  test('stays within its error at the ends of its steps', () => {
    for (let step = 0; step < 128; step += 1) expectNear((128 + step) / 256);
  });
  test('of 0 is infinite, of 1 nothing', () => {
    expect(quickLogarithm(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(quickLogarithm(1)).toBe(0);
  });
});
