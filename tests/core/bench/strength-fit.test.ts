import { describe, expect, test } from 'vitest';
import { evidenceOf } from '../../../src/core/bench/evidence.ts';
import {
  modelPowerOf,
  type StrengthFit,
  strengthBand,
  strengthFit,
} from '../../../src/core/bench/strength-fit.ts';
import { type StrengthPoint, strengthGroups } from '../../../src/core/bench/strength-points.ts';
import type { TestRecord } from '../../../src/storage/document.ts';
import r from '../../fixtures/r-statistics/samples.json';
import { documentWithTests, resolvedWithTests, testRecord } from '../../support/bench-tests.ts';
import { answerableJoint, insertRecord } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const TEST = resolvedWithTests(documentWithTests([testRecord()])).bench[0];
if (TEST === undefined) throw new Error('the test was not resolved');
const point = (length: number, diameter: number, load: number): StrengthPoint => ({
  test: TEST,
  length,
  diameter,
  load,
});
const LENGTH = { over: ['length'], kind: 'pull-out' } as const;
const BOTH = { over: ['length', 'diameter'], kind: 'pull-out' } as const;
const fitted = (found: StrengthFit) => {
  if (found.kind === 'refused') throw new Error(found.code);
  return found;
};
/** A scatter that is no law: some per cent to and fro. */
const SHAKEN = [1.04, 0.97, 1.01, 0.95, 1.03, 0.99];

describe('strengthFit', () => {
  test('of the line of the fixture is R’s lm, and its band R’s predict', () => {
    const points = r.line.y.map((load, place) => point(r.line.x[place] ?? 0, 5, load));
    const found = fitted(strengthFit(points, LENGTH));
    expectRelative(found.growth[0]?.slope.value.value ?? 0, r.line.coefficients[1] ?? 0, 1e-12);
    expectRelative(found.determination?.value ?? 0, r.line.determination, 1e-12);
    expectRelative(found.residual.value, r.line.residual, 1e-12);
    // The fixture’s own level of confidence is not 95 %: only the middle of the band is compared.
    const { expected } = strengthBand(found, { length: r.line.at, diameter: 5 });
    expectRelative(expected.value, r.line.mean[0] ?? 0, 1e-12);
  });
  test('agrees with the model where strength is in proportion to the length', () => {
    const points = [2.6, 2.6, 3.9, 3.9, 6.1, 6.1].map((length, place) =>
      point(length, 5, 270 * length * (SHAKEN[place] ?? 1)),
    );
    const [growth] = fitted(strengthFit(points, LENGTH)).growth;
    expect(growth).toMatchObject({ of: 'length', modelPower: { value: 1 }, verdict: 'agrees' });
    expect(growth?.power?.low.value).toBeLessThan(1);
    expect(growth?.power?.high.value).toBeGreaterThan(1);
    expect(growth?.slope.value.unit).toBe('N/mm');
  });
  test('differs from the model where strength stays behind the length, however straight the line is', () => {
    const points = [2.6, 2.6, 3.9, 3.9, 6.1, 6.1].map((length, place) =>
      point(length, 5, (900 + 60 * length) * (SHAKEN[place] ?? 1)),
    );
    const found = fitted(strengthFit(points, LENGTH));
    expect(found.growth[0]?.verdict).toBe('differs');
  });
  test('leaves it open where three coupons tell nothing', () => {
    const points = [point(3.1, 5, 700), point(3.1, 5, 900), point(4.2, 5, 980)];
    expect(fitted(strengthFit(points, LENGTH)).growth[0]?.verdict).toBe('open');
  });
  test('finds the powers of length and diameter of a turned insert: 1 and 2', () => {
    const points = [
      [3.1, 4.6],
      [5.2, 4.6],
      [3.3, 5.0],
      [6.1, 5.0],
      [4.4, 5.6],
    ].map(([length = 0, diameter = 0]) => point(length, diameter, 41 * length * diameter ** 2));
    const { growth } = fitted(strengthFit(points, { ...BOTH, kind: 'torque-out' }));
    expect(growth.map(({ modelPower }) => modelPower.value)).toEqual([1, 2]);
    expectRelative(growth[0]?.power?.value.value ?? 0, 1, 1e-9);
    expectRelative(growth[1]?.power?.value.value ?? 0, 2, 1e-9);
    expect(growth[0]?.slope.value.unit).toBe('N');
  });
  test('names the power of a dimension in the model’s own formula: 2 only of a diameter that is turned at', () => {
    const powers = (['length', 'diameter'] as const).flatMap((of) =>
      (['pull-out', 'torque-out'] as const).map((kind) => modelPowerOf(of, kind)),
    );
    expect(powers.map(({ value }) => value)).toEqual([1, 1, 1, 2]);
    for (const { formula, value } of powers) {
      const [symbol = '', model = ''] = formula.replace('power of ', '').split(' in ');
      // Doubled, the dimension makes the model’s product 2 to that power times as large.
      const product = (size: number): number =>
        model.split(/ · |\//u).reduce((so, factor) => so * (factor === symbol ? size : 1), 1);
      expectRelative(product(2), 2 ** value);
    }
  });
  test('counts the sizes that are told apart', () => {
    const points = [3.1, 3.15, 4.2, 4.25, 6.3].map((length) => point(length, 5, 200 * length));
    expect(fitted(strengthFit(points, LENGTH)).sizes).toEqual([3]);
  });
  test('refuses two coupons', () => {
    expect(strengthFit([point(3, 5, 700), point(4, 5, 900)], LENGTH)).toEqual({
      kind: 'refused',
      code: 'too-few-points',
      points: 2,
      least: 3,
    });
  });
  test('refuses coupons of one length, and of lengths that only differ by their readings', () => {
    const points = [3.1, 3.13, 3.2, 3.24].map((length) => point(length, 5, 230 * length));
    expect(strengthFit(points, LENGTH)).toEqual({ kind: 'refused', code: 'one-size', of: 'length' });
  });
  test('refuses lengths and diameters that go together', () => {
    const points = [3, 3, 4, 4, 6].map((length) => point(length, 2 + length / 2, 230 * length));
    expect(strengthFit(points, BOTH)).toEqual({ kind: 'refused', code: 'goes-with-the-other' });
  });
});

describe('strengthGroups', () => {
  const DRAWER = [
    insertRecord({ id: 'short', length_mm: [4.1] }),
    insertRecord({ id: 'usual' }),
    insertRecord({ id: 'slim', knurlDiameter_mm: [4.4], pilotDiameter_mm: [3.8] }),
  ];
  const groupsOf = (tests: readonly Partial<TestRecord>[], over: 'length' | 'diameter' | 'both') => {
    const records = tests.map((one, place) => testRecord({ id: `test-${place + 1}`, ...one }));
    const { bench } = resolvedWithTests(documentWithTests(records, { drawer: DRAWER }));
    const [setup] = evidenceOf(bench, answerableJoint(), undefined).setups;
    return setup === undefined ? [] : strengthGroups(setup, over);
  };
  const TESTS: readonly Partial<TestRecord>[] = [
    { insert: 'short', value: 71 },
    { insert: 'usual', value: 101 },
    { insert: 'slim', value: 94 },
    { insert: 'usual', value: 90, result: 'held' },
    { insert: 'usual', value: 2.1, unit: 'N·m', kind: 'torque-out', result: 'insert-turned' },
  ];
  const told = (over: 'length' | 'diameter' | 'both') =>
    groupsOf(TESTS, over).map(({ kind, points, kept, held }) => [
      kind,
      kept?.of,
      points.map(({ test }) => test.insertId),
      held,
    ]);
  test('keep the diameter over length, and one kind of test each', () => {
    expect(told('length')).toEqual([
      ['pull-out', 'diameter', ['slim'], 1],
      ['pull-out', 'diameter', ['short', 'usual'], 1],
      ['torque-out', 'diameter', ['usual'], 0],
    ]);
  });
  test('keep the length over the diameter: knurled 5.3 − 0.28 · 4.93 beside 5.3 − 0.28 · 4.4', () => {
    expect(told('diameter')).toEqual([
      ['pull-out', 'length', ['short'], 1],
      ['pull-out', 'length', ['usual', 'slim'], 1],
      ['torque-out', 'length', ['usual'], 0],
    ]);
  });
  test('lead from slope, power and band back to the readings of the coupons', () => {
    const tests = [...TESTS, { insert: 'short', value: 77 }, { insert: 'usual', value: 96, leverRatio: 1.1 }];
    const group = groupsOf(tests, 'length').find(({ points }) => points.length === 4);
    const found = fitted(strengthFit(group?.points ?? [], LENGTH));
    const size = group?.points[0];
    if (size === undefined) throw new Error('no coupon');
    const { expected, next } = strengthBand(found, size);
    const { slope, power } = found.growth[0] ?? {};
    const shown = [expected, next.low, next.high, found.residual, slope?.low, power?.low, power?.high];
    expectWays(shown.filter((one) => one !== undefined));
    const [correlation, spread] = power?.value.entries ?? [];
    expect(correlation?.from?.entries.map(({ symbol }) => symbol)).toEqual(['m_v1', 'm_Y']);
    const reading = spread?.from?.entries[3]?.from;
    expect(reading).toMatchObject({ formula: 'ln(R_w)', entries: [{ from: { formula: 'W_r · i_L' } }] });
    expectRelative(reading?.entries[0]?.value ?? 0, 96 * 9.80665 * 1.1);
    expect(expected.entries.find(({ symbol }) => symbol === 'v_1')?.from?.symbol).toBe('L_k');
  });
  test('keep nothing over both', () => {
    expect(told('both')).toEqual([
      ['pull-out', undefined, ['short', 'usual', 'slim'], 1],
      ['torque-out', undefined, ['usual'], 0],
    ]);
  });
});
