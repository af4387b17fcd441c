import { describe, expect, test } from 'vitest';
import { characteristicValue } from '../../src/core/evidence/characteristic-value.ts';
import { compareGroups } from '../../src/core/evidence/compare-groups.ts';
import { leverReading } from '../../src/core/evidence/lever-reading.ts';
import { linearRegression } from '../../src/core/evidence/linear-regression.ts';
import { extremeValue } from '../../src/core/evidence/outlier.ts';
import { plottedAt, probabilityPlot } from '../../src/core/evidence/probability-plot.ts';
import { proofPlan } from '../../src/core/evidence/proof-plan.ts';
import { regressionBand } from '../../src/core/evidence/regression-band.ts';
import { testsNeeded } from '../../src/core/evidence/sample-size.ts';
import { logSummary, sampleSummary } from '../../src/core/evidence/sample-summary.ts';
import { determinationOf, slopeOf } from '../../src/core/evidence/slope.ts';
import { withinScatter } from '../../src/core/evidence/within-scatter.ts';
import { creepFactor } from '../../src/core/relaxation/findley.ts';
import type { Derived } from '../../src/core/sources/derived.ts';
import { wayOf } from '../../src/core/steps/steps.ts';
import { derivationsWithin, meaningOfSymbol } from '../../src/wording/symbols.ts';
import { evaluated } from '../app/derivation/evaluate-formula.ts';
import { expectRelative } from '../support/published.ts';

const sample = { values: [412, 455, 438, 470, 421, 402], unit: 'N' } as const;
const second = { values: [365, 398, 340, 381], unit: 'N' } as const;
const promise = { share: 0.95, confidence: 0.9 };
const nextValue = { kind: 'next-value', share: 0.95 } as const;
const UNITS = { response: 'N', predictor: 'mm', slope: 'N/mm' } as const;
const FITS = [
  [
    linearRegression(
      sample.values.map((response, place) => ({ predictors: [200 + 11 * place + (place % 3)], response })),
    ),
    [221],
  ],
  [
    linearRegression(
      sample.values.map((response, place) => ({ predictors: [4 + 0.7 * place, 5 + (place % 3)], response })),
    ),
    [5.1, 6.3],
  ],
] as const;
const within = withinScatter([
  { values: [0.1, 0.32, 0.27], unit: '-' },
  { values: [-0.2, -0.14], unit: '-' },
]);
const plan = proofPlan({
  load: 500,
  count: 3,
  scatter: within.scatter,
  share: 0.95,
  confidence: 0.9,
  lasting: { hours: 730, creep: creepFactor({ m: 0.0909, n: 0.291 }, 730) },
});

/** Every derived number in a result, however deep it lies. */
function derivedIn(value: unknown): readonly Derived[] {
  if (typeof value !== 'object' || value === null) return [];
  if (isDerived(value)) return [value];
  return Object.values(value).flatMap(derivedIn);
}
const isDerived = (value: object): value is Derived =>
  'symbol' in value && 'formula' in value && 'entries' in value;

const RESULTS = [
  sampleSummary(sample, 0.95),
  logSummary(sample),
  ...(['normal', 'lognormal'] as const).flatMap((distribution) => [
    characteristicValue(sample, { distribution, promise }),
    characteristicValue(sample, { distribution, promise: nextValue }),
    characteristicValue(sample, { distribution, promise, knownDeviation: 0.11 }),
    characteristicValue(sample, { distribution, promise: nextValue, knownDeviation: 0.13 }),
  ]),
  compareGroups({ first: sample, second, confidence: 0.95 }),
  testsNeeded({ ratio: 1.3, deviation: 0.15, falseAlarm: 0.05 }, 0.8),
  ...FITS.flatMap(([fit, at]) =>
    fit.kind === 'fitted'
      ? [
          regressionBand(fit, { predictors: at, confidence: 0.9, units: UNITS }),
          ...at.map((_, place) => slopeOf(fit, { place, confidence: 0.9, units: UNITS })),
          determinationOf(fit, UNITS),
        ]
      : [],
  ),
  extremeValue(sample, 0.05),
  probabilityPlot(sample),
  plottedAt(2, 6),
  plan,
  within,
  leverReading(plan.proofLoad, { leverRatio: 5, scaleLimit: 400 }),
  leverReading(plan.proofLoad, { leverRatio: 2, scaleLimit: 90 }),
];
const all = RESULTS.flatMap(derivedIn).flatMap((one) => [...derivationsWithin(one)]);

/** Read, counted, asked for, or assumed by the method: nothing that a formula gives. */
const GIVEN = [
  'x_i',
  'x_o',
  'n_t',
  'n_t1',
  'n_t2',
  'n_i',
  'k_p',
  'i_r',
  'γ',
  'p_s',
  'p',
  'α_f',
  'P_w',
  'r_g',
  's_y',
  's_x',
  'v_1',
  'v_2',
  's_0',
  'ν_0',
  'F_r',
  't',
  'i_L',
  'W_max',
  'm',
  'n',
];

describe('what tests say', () => {
  test('has a meaning for every symbol it shows', () => {
    const unknown = all.flatMap((derived) => [
      ...(meaningOfSymbol(derived.symbol, derived) === undefined ? [derived.symbol] : []),
      ...derived.entries
        .filter(({ symbol, unit }) => meaningOfSymbol(symbol, { unit, within: derived.symbol }) === undefined)
        .map(({ symbol }) => `${symbol} in ${derived.symbol}`),
    ]);
    expect(unknown).toEqual([]);
  });
  test('leads from every number that was worked out to what was read, asked for or assumed', () => {
    const given = all.flatMap(({ entries }) => entries.filter((one) => wayOf(one) === undefined));
    const symbols = new Set(given.map(({ symbol }) => symbol.replace(/^(?<of>[xn])_\d+$/u, '$<of>_i')));
    expect([...symbols].toSorted()).toEqual([...GIVEN].toSorted());
  });
  test('comes to what its formulae come to with the values put in', () => {
    const values = all.flatMap((derived) => {
      const value = evaluated(derived);
      return value === undefined ? [] : [[derived.value, value] as const];
    });
    expect(values.length).toBeGreaterThan(30);
    for (const [ours, again] of values) expectRelative(ours, again, 1e-12);
  });
});
