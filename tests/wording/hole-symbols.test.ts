import { describe, expect, test } from 'vitest';
import { calibrateHoles } from '../../src/core/holes/calibrate-holes.ts';
import { nextHoleEnds } from '../../src/core/holes/error-band.ts';
import { drawnForFacets } from '../../src/core/holes/facets.ts';
import { bedMouthChamfer, mouthLoss } from '../../src/core/holes/first-layer-flare.ts';
import { errorOfPoint } from '../../src/core/holes/hole-point.ts';
import { nextCouponHole } from '../../src/core/holes/next-coupon-hole.ts';
import { slicerExpansion } from '../../src/core/holes/slicer-compensation.ts';
import { type Derived, entry } from '../../src/core/sources/derived.ts';
import { UNCALIBRATED_HOLES } from '../../src/data/uncalibrated-holes.ts';
import { derivationsWithin, meaningOfSymbol } from '../../src/wording/symbols.ts';
import { evaluated } from '../app/derivation/evaluate-formula.ts';
import { holeReading } from '../support/hole-readings.ts';
import { given } from '../support/joints.ts';
import { expectRelative } from '../support/published.ts';

const calibration = calibrateHoles(UNCALIBRATED_HOLES, [
  holeReading(4.5, [4.2, 4.24]),
  holeReading(5.5, [5.2, 5.3], { instrument: 'pin-gauge' }),
]);
const next = nextCouponHole(
  calibration.behaviour,
  {
    drawn: entry('D_CAD', 4.6, 'mm'),
    pilotUncertainty: entry('u(D_p)', 0.02, 'mm'),
    window: {
      smallest: given('D_min', 4.15, 'mm'),
      largest: given('D_max', 4.5, 'mm'),
      expected: entry('D', 4.3, 'mm'),
    },
  },
  { candidates: [4, 6], standardUncertainty: entry('u(D_m)', 0.03, 'mm') },
);
const expansion = slicerExpansion(calibration.behaviour, given('D_t', 4.3, 'mm'));
const flare = { perSide: 0.3, layers: 3, layerHeight: 0.2 };

const SHOWN: readonly Derived[] = [
  ...calibration.points.flatMap((point) => [
    point.bore.estimate,
    point.bore.standardUncertainty,
    errorOfPoint(point),
  ]),
  ...Object.values(calibration.figures),
  ...Object.values(calibration.assumed),
  next.drawn,
  next.deviationBefore,
  next.deviationAfter,
  ...Object.values(next.chance ?? {}),
  ...Object.values<Derived>({ ...nextHoleEnds(calibration, 4.6, 0.9) }),
  expansion.onDiameter,
  expansion.perSide,
  drawnForFacets(given('D_CAD', 4.5, 'mm'), 12),
  mouthLoss(flare),
  bedMouthChamfer(flare),
];
const all = SHOWN.flatMap((one) => [...derivationsWithin(one)]);

describe('the numbers of a printer’s holes', () => {
  test('have a meaning for every symbol they show', () => {
    const unknown = all.flatMap((derived) => [
      ...(meaningOfSymbol(derived.symbol, derived) === undefined ? [derived.symbol] : []),
      ...derived.entries
        .filter(
          ({ symbol, unit, from }) =>
            meaningOfSymbol(symbol, {
              unit,
              within: derived.symbol,
              ...(from === undefined ? {} : { source: from.source }),
            }) === undefined,
        )
        .map(({ symbol }) => `${symbol} in ${derived.symbol}`),
    ]);
    expect(unknown).toEqual([]);
  });
  test('come to what their formulae come to with the values put in', () => {
    const checked = all.filter((derived) => derived.formula !== derived.symbol);
    expect(checked.length).toBeGreaterThan(20);
    for (const derived of checked) {
      const value = evaluated(derived);
      if (value !== undefined) expectRelative(value, derived.value, 1e-9);
    }
  });
});
