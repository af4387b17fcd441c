import { describe, expect, test } from 'vitest';
import { abscissaOf, lineOf } from '../../../src/core/holes/hole-line.ts';
import { outliersOf } from '../../../src/core/holes/hole-outliers.ts';
import { UNCALIBRATED_HOLES } from '../../../src/data/uncalibrated-holes.ts';
import fc from '../../support/fast-check.ts';

const pointAt = (drawn: number, y: number) => ({ x: abscissaOf(drawn), y, standardUncertainty: 0.03 });
const named = (points: readonly ReturnType<typeof pointAt>[]) =>
  outliersOf(lineOf(UNCALIBRATED_HOLES), UNCALIBRATED_HOLES.repeatability, points);
/** Nine holes that agree to a few hundredths. */
const NINE = [-0.27, -0.31, -0.24, -0.26, -0.22, -0.25, -0.19, -0.21, -0.17].map((y, index) =>
  pointAt(3 + 0.7 * index, y),
);

describe('outliersOf', () => {
  test('names the hole of 3.5 mm that came out at 2.33 mm among usual ones (a reading met in print)', () => {
    expect(named([...NINE, pointAt(3.5, -1.17)])).toEqual([...NINE.map(() => false), true]);
  });
  test('names two on the same end, which bend least squares their way', () => {
    const points = [...NINE, pointAt(9.5, 0.35), pointAt(9.2, 0.41)];
    expect(named(points).flatMap((is, index) => (is ? [index] : []))).toEqual([9, 10]);
  });
  test('names nobody among holes that agree, nor where all are far from what was assumed', () => {
    expect(named(NINE)).not.toContain(true);
    expect(named(NINE.map(({ x, y }) => ({ x, y: y + 0.6, standardUncertainty: 0.03 })))).not.toContain(true);
  });
  test('names nobody of one or two, however far apart, and nobody of none', () => {
    expect(named([pointAt(5, 1.4)])).toEqual([false]);
    expect(named([pointAt(5, 1.4), pointAt(5, -1.4)])).toEqual([false, false]);
    expect(named([])).toEqual([]);
  });
  test('names one of three from some 0.15 mm on, whose two others agree', () => {
    const with_ = (away: number) => named([pointAt(4, -0.28), pointAt(4, -0.28), pointAt(4, -0.28 + away)]);
    expect(with_(0.1)).not.toContain(true);
    expect(with_(0.3)).toEqual([false, false, true]);
  });
  test('with zero spread names nobody for a hundredth', () => {
    const same = Array.from({ length: 12 }, () => pointAt(4.5, -0.25));
    expect(named([...same, pointAt(4.5, -0.24)])).not.toContain(true);
  });
  test('does not see in which order the readings came', () => {
    const error = fc.double({ min: -1.2, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: 2, max: 12, noNaN: true }), error), { maxLength: 15 }),
        (list) => {
          const points = list.map(([drawn, y]) => pointAt(drawn, y));
          expect(named(points.toReversed()).toReversed()).toEqual(named(points));
        },
      ),
    );
  });
});
