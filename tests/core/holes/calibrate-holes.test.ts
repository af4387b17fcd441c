import { describe, expect, test } from 'vitest';
import { calibrateHoles } from '../../../src/core/holes/calibrate-holes.ts';
import { drawnDiameterOf } from '../../../src/core/holes/hole-to-draw.ts';
import { boreDeviationOf, type HoleBehaviour, printErrorOf } from '../../../src/core/holes/print-error.ts';
import { BELIEVED_ERRORS } from '../../../src/core/holes/reading-faults.ts';
import { UNCALIBRATED_HOLES } from '../../../src/data/uncalibrated-holes.ts';
import reference from '../../fixtures/r-holes/holes.json' with { type: 'json' };
import fc from '../../support/fast-check.ts';
import { holeReading, readingOf } from '../../support/hole-readings.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

/** Integration over the scatter in the reference is exact to about 1e-10. */
const INTEGRATED = 1e-8;

const pointsOf = (of: {
  drawn: readonly number[] | number;
  error: readonly number[] | number;
  u: readonly number[] | number;
}) => {
  const [drawn, error, u] = [of.drawn, of.error, of.u].map((one) => [one].flat());
  return (drawn ?? []).map((at, index) => ({
    drawn: at,
    error: error?.[index] ?? 0,
    standardUncertainty: u?.[index] ?? 0,
  }));
};
const calibrated = (points: Parameters<typeof readingOf>[0][], prior: HoleBehaviour = UNCALIBRATED_HOLES) =>
  calibrateHoles(prior, points.map(readingOf));

/** Before anything is known. */
const VAGUE: HoleBehaviour = {
  offset: { value: 3, standardUncertainty: 1e4 },
  slope: { value: -2, standardUncertainty: 1e4 },
  repeatability: 0.05,
  standing: 'estimate',
};
/** The published fit at its own printed values. */
const PUBLISHED = [
  [3, -0.369],
  [4, -0.302],
  [5, -0.251],
  [6, -0.209],
  [8, -0.143],
] as const;

const point = fc.record({
  drawn: fc.double({ min: 1.5, max: 20, noNaN: true }),
  error: fc.double({ min: -1.2, max: 0.6, noNaN: true }),
  standardUncertainty: fc.double({ min: 0.001, max: 0.1, noNaN: true }),
});
const several = fc.array(point, { minLength: 1, maxLength: 12 });

describe('calibrateHoles against an independent computation', () => {
  test.each(Object.entries(reference.posterior))(
    'of %s reading(s) (R: matrices, integrated over the scatter)',
    (_, { found, ...readings }) => {
      const { behaviour } = calibrated(pointsOf(readings));
      expectRelative(behaviour.offset.value, found.offset, INTEGRATED);
      expectRelative(behaviour.slope.value, found.slope, INTEGRATED);
      expectRelative(behaviour.offset.standardUncertainty ** 2, found.offsetVariance, INTEGRATED);
      expectRelative(behaviour.slope.standardUncertainty ** 2, found.slopeVariance, INTEGRATED);
      expectRelative(behaviour.covariance ?? 0, found.covariance, INTEGRATED);
      expectRelative(behaviour.repeatability, found.repeatability, INTEGRATED);
    },
  );
  test('of 20 readings that know nothing before is least squares (R: lm)', () => {
    const { drawn, error, line } = reference.lm;
    const { behaviour } = calibrated(pointsOf({ drawn, error, u: drawn.map(() => 1e-6) }), VAGUE);
    expectRelative(behaviour.offset.value, line.offset, 1e-7);
    expectRelative(behaviour.slope.value, line.slope, 1e-7);
    // Least squares divides the uncertainties' squares into one another alike, whatever the scatter is.
    const ratio = behaviour.slope.standardUncertainty / behaviour.offset.standardUncertainty;
    expectRelative(ratio, line.slopeError / line.offsetError, 1e-7);
    expectRelative(
      (behaviour.covariance ?? 0) / behaviour.offset.standardUncertainty ** 2,
      line.covariance / line.offsetError ** 2,
      1e-7,
    );
    // 4 degrees of freedom about 0.05 and 18 about 0.0367: √((4 · 0.05² + 18 · 0.0367²)/22)
    expectRelative(behaviour.repeatability, Math.sqrt((4 * 0.05 ** 2 + 18 * line.residual ** 2) / 22), 1e-7);
  });
  test('of the same 20 comes nearer to least squares the more often they are read: 500 leave a tenth (R: lm)', () => {
    const { drawn, error, line } = reference.lm;
    const apart = (times: number) => {
      const points = pointsOf({ drawn, error, u: drawn.map(() => 0.01) });
      const { behaviour } = calibrated(Array.from({ length: times }, () => points).flat());
      return {
        offset: Math.abs(behaviour.offset.value - line.offset),
        slope: Math.abs(behaviour.slope.value - line.slope),
      };
    };
    expect(apart(1).offset).toBeLessThan(0.5 * line.offsetError);
    expect(apart(1).slope).toBeLessThan(0.5 * line.slopeError);
    expect(apart(25).offset).toBeLessThan(0.1 * apart(1).offset);
    expect(apart(25).slope).toBeLessThan(0.1 * apart(1).slope);
  });
});

describe('calibrateHoles', () => {
  test('gives back what is assumed when nothing was read', () => {
    const none = calibrateHoles(UNCALIBRATED_HOLES, []);
    expect(none.behaviour).toBe(UNCALIBRATED_HOLES);
    expect(none).toMatchObject({ count: 0, points: [], freedom: 4, spreads: 'none' });
    expect(none.range).toBeUndefined();
    expect(none.figures.offset).toMatchObject({ symbol: 'a', value: -0.28, standing: 'estimate' });
  });
  test('comes to the published fit from its own values, read four times each (hole-metrology-note)', () => {
    const readings = [1, 2, 3, 4].flatMap(() =>
      PUBLISHED.map(([drawn, error]) => ({ drawn, error, standardUncertainty: 0.001 })),
    );
    const { behaviour } = calibrated(readings);
    for (const [drawn, error] of PUBLISHED) {
      expect(Math.abs(printErrorOf(behaviour, drawn) - error)).toBeLessThan(0.004);
    }
    // Printed beside the fit: a bore of 5.0 mm is drawn 5.24 mm.
    expectPublished(drawnDiameterOf(behaviour, 5), '5.24');
    expectPublished(behaviour.slope.value, '0.23');
  });
  test('goes a part of the way with one reading, and further with two', () => {
    const reading = { drawn: 4.3, error: -0.11, standardUncertainty: 0.03 };
    const before = printErrorOf(UNCALIBRATED_HOLES, 4.3);
    const one = printErrorOf(calibrated([reading]).behaviour, 4.3);
    const two = printErrorOf(calibrated([reading, reading]).behaviour, 4.3);
    expect(one).toBeGreaterThan(before);
    expect(two).toBeGreaterThan(one);
    expect(two).toBeLessThan(-0.11);
  });
  test('believes a reading that knows nothing nothing', () => {
    const { behaviour, freedom } = calibrated([{ drawn: 4.7, error: 0.4, standardUncertainty: 1e5 }]);
    expectRelative(behaviour.offset.value, -0.28, 1e-9);
    expectRelative(behaviour.repeatability, 0.05, 1e-7);
    expectRelative(freedom, 4, 1e-9);
  });
  test('leaves the slope where all was read at 4 mm, and moves it along elsewhere', () => {
    const at = (drawn: number) =>
      calibrated([-0.4, -0.43, -0.41].map((error) => ({ drawn, error, standardUncertainty: 0.02 })));
    expectRelative(at(4).behaviour.slope.value, 0.23, 1e-9);
    expectRelative(at(4).behaviour.slope.standardUncertainty, 0.1, 1e-9);
    expect(at(4).spreads).toBe('one-diameter');
    expect(at(8).behaviour.slope.value).toBeLessThan(0.2);
    expect(at(8).spreads).toBe('one-diameter');
  });
  test('is surer wherever readings agree with what was assumed, at no diameter less sure', () => {
    const readings = [3.2, 5.4, 7.7].map((drawn) => ({
      drawn,
      error: printErrorOf(
        { ...UNCALIBRATED_HOLES, offset: { value: -0.3, standardUncertainty: 0.1 } },
        drawn,
      ),
      standardUncertainty: 0.03,
    }));
    const { behaviour } = calibrated(readings);
    for (const drawn of [2, 3, 4, 5.4, 8, 14]) {
      expect(boreDeviationOf(behaviour, drawn, 0)).toBeLessThan(
        boreDeviationOf(UNCALIBRATED_HOLES, drawn, 0),
      );
    }
  });
  test('with zero spread keeps a scatter: what 4 degrees of freedom about 0.05 mm leave', () => {
    const same = Array.from({ length: 20 }, (_, index) => ({
      drawn: 3 + index / 4,
      error: -0.2,
      standardUncertainty: 1e-7,
    }));
    const { repeatability } = calibrated(same, VAGUE).behaviour;
    expectRelative(repeatability, Math.sqrt((4 * 0.05 ** 2) / 22), 1e-6);
  });
  test('does not see in which order the readings came', () => {
    fc.assert(
      fc.property(several, (points) => {
        const one = calibrated(points).behaviour;
        const other = calibrated(points.toReversed()).behaviour;
        expectRelative(one.offset.value, other.offset.value, 1e-9);
        expectRelative(one.repeatability, other.repeatability, 1e-9);
      }),
    );
  });
  test('is finite and usable for whatever is read: deviations above 0, covariance within its bounds', () => {
    fc.assert(
      fc.property(several, fc.double({ min: 3, max: 12, noNaN: true }), (points, bore) => {
        const { behaviour, freedom } = calibrated(points);
        expect(boreDeviationOf(behaviour, bore, 0)).toBeGreaterThan(behaviour.repeatability);
        expect(behaviour.repeatability).toBeGreaterThan(0);
        expect(freedom).toBeGreaterThanOrEqual(4);
        expect(freedom).toBeLessThanOrEqual(4 + points.length);
        const { offset, slope, covariance = 0 } = behaviour;
        expect(Math.abs(covariance)).toBeLessThanOrEqual(
          offset.standardUncertainty * slope.standardUncertainty,
        );
      }),
    );
  });
  test('finds the diameter to draw for every bore, whatever is read of believable errors and however often', () => {
    const believable = fc.record({
      drawn: fc.double({ min: 1, max: 20, noNaN: true }),
      error: fc.double({ min: BELIEVED_ERRORS.least, max: BELIEVED_ERRORS.greatest, noNaN: true }),
      standardUncertainty: fc.double({ min: 0.001, max: 0.1, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(believable, { minLength: 1, maxLength: 4 }),
        fc.double({ min: 1.2, max: 15, noNaN: true }),
        (points, bore) => {
          const { behaviour } = calibrated(Array.from({ length: 20 }, () => points).flat());
          const drawn = drawnDiameterOf(behaviour, bore);
          expectRelative(drawn + printErrorOf(behaviour, drawn), bore, 1e-9);
        },
      ),
    );
  });
  test('reads 500 holes at once', () => {
    const readings = Array.from({ length: 500 }, (_, index) => ({
      drawn: 3 + (7 * index) / 499,
      error: -0.15 + 0.04 * Math.sin(7.3 * index),
      standardUncertainty: 0.02 + 0.0001 * (index % 90),
    }));
    const { count, points, behaviour, spreads, range } = calibrated(readings);
    expect(count).toBe(500);
    expect(points).toHaveLength(500);
    expect(spreads).toBe('spread');
    expectRelative(range?.greatest ?? 0, 10);
    expect(Math.abs(behaviour.slope.value)).toBeLessThan(0.01);
    expect(Math.abs(printErrorOf(behaviour, 5.5) + 0.15)).toBeLessThan(0.005);
  });
});

describe('the ceiling of calibrateHoles', () => {
  test('stays where no hole came above it, and rises to the one that did', () => {
    const at = (error: number) =>
      calibrated([{ drawn: 9, error, standardUncertainty: 0.03 }]).behaviour.ceiling;
    expect(at(-0.14)).toBe(-0.1);
    expectRelative(at(0.07) ?? 0, 0.07, 1e-9);
  });
  test('moves without a jump as a reading passes it', () => {
    const at = (error: number) =>
      calibrated([{ drawn: 9, error, standardUncertainty: 0.03 }]).behaviour.ceiling ?? 0;
    expect(at(-0.1 + 1e-9) - at(-0.1 - 1e-9)).toBeLessThan(3e-9);
  });
  test('is not made where there was none', () => {
    expect(
      calibrated([{ drawn: 9, error: -0.14, standardUncertainty: 0.03 }], VAGUE).behaviour.ceiling,
    ).toBeUndefined();
  });
});

describe('the points of calibrateHoles', () => {
  test('are the readings in their order, with bore, error and residual', () => {
    const { points, behaviour } = calibrateHoles(UNCALIBRATED_HOLES, [
      holeReading(6.1, 5.8),
      holeReading(4.5, 4.2, { instrument: 'pin-gauge', gaugeStep: 0.06 }),
    ]);
    expect(points.map(({ drawn }) => drawn)).toEqual([6.1, 4.5]);
    expectRelative(points[1]?.error ?? 0, 4.23 - 4.5, 1e-12);
    expectRelative(points[0]?.error ?? 0, Math.hypot(5.8, 0.3) - 6.1, 1e-12);
    for (const { drawn, error, residual } of points) {
      expectRelative(printErrorOf(behaviour, drawn) + residual, error, 1e-12);
    }
  });
  test('of polygons count from flat to flat: 12 corners on 4.50 mm are 4.347 mm, and nothing is counted twice', () => {
    const [seen] = calibrateHoles(UNCALIBRATED_HOLES, [holeReading(4.5, 4.1, { facets: 12 })]).points;
    expectPublished(seen?.drawn ?? 0, '4.347');
    expectRelative((seen?.error ?? 0) + (seen?.drawn ?? 0), Math.hypot(4.1, 0.3));
  });
  test('lead offset, slope and scatter to the readings', () => {
    const { figures, behaviour } = calibrateHoles(UNCALIBRATED_HOLES, [holeReading(4.5, 4.0)]);
    expect(figures.offset).toMatchObject({
      value: behaviour.offset.value,
      standing: 'measured',
      source: 'your-measurement',
    });
    expect(figures.offset.entries.at(-1)).toEqual({ symbol: 'n', value: 1, unit: '-' });
    expect(behaviour.figures).toBe(figures);
    expect(figures.slope.value).toBe(behaviour.slope.value);
  });
});
