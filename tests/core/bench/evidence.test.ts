import { describe, expect, test } from 'vitest';
import { evidenceOf, findingOf } from '../../../src/core/bench/evidence.ts';
import { testModel } from '../../../src/core/bench/test-model.ts';
import { medianBond } from '../../../src/core/evidence/bond-prediction.ts';
import { assess } from '../../../src/core/joint/assess.ts';
import { torqueToForce } from '../../../src/core/joint/demand.ts';
import { surroundingsOf } from '../../../src/core/joint/situation-of.ts';
import { characteristicOf, testedBond } from '../../../src/core/pull-out/bond.ts';
import type { TestRecord } from '../../../src/storage/document.ts';
import { benchTest } from '../../support/bench-tests.ts';
import { answerableJoint, theInsert } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays, wayTo } from '../../support/ways.ts';

const JOINT = answerableJoint();
const finding = (changes: Partial<TestRecord> = {}) => findingOf(benchTest(changes), [], JOINT);
const INSERT = theInsert();
const PETG = JOINT.host.material;
const modelOf = (changes: Partial<TestRecord> = {}) =>
  testModel(benchTest(changes), { insert: INSERT, material: PETG }, JOINT);

describe('testModel', () => {
  test('of a pull is the shear cylinder with all of it holding (hand calculation)', () => {
    // τ = 44/√3 = 25.403 MPa; π · 4.93 · (5.3 − 0.28 · 4.93) = 60.706 mm²: 25.4034 · 60.7064 = 1542.15 N
    expectPublished(modelOf().load.value, '1542.2');
    expect(modelOf().ownDeviation).toBe(0);
  });
  test('is the joint’s own knurl shear over its bond factor, where the coupon is printed like the joint', () => {
    const cool = answerableJoint({ loads: { serviceTemperature_degC: 23 } });
    const limit = assess(cool, INSERT).limits.find(({ mode }) => mode === 'knurl-shear');
    const bite = assess(cool, INSERT).hole.biteFactor.value;
    expectRelative((limit?.capacity.median.value ?? 0) / 0.85 / bite, modelOf().load.value);
  });
  test('of a turn is half a knurl diameter times that', () => {
    const turned = modelOf({ kind: 'torque-out', unit: 'N·m', value: 1.3, result: 'insert-turned' });
    expectRelative(turned.load.value, (modelOf().load.value * 4.93) / 2);
    const jacked = modelOf({ kind: 'jack-out-torque', unit: 'N·m', value: 1.3, result: 'insert-turned' });
    expectWays([jacked.load]);
    const share = jacked.load.entries.find(({ symbol }) => symbol === 'a');
    const put = wayTo(share)?.entries.filter(({ symbol }) => ['μ_G', 'μ_K', 'D_Km'].includes(symbol));
    expect(put?.map((one) => wayTo(one)?.formula)).toEqual([
      '√(μ_Gl · μ_Gh)',
      '√(μ_Kl · μ_Kh)',
      '(d_w + d_h)/2',
    ]);
  });
  test('of a jack-out goes through the middle of the friction, whose range blurs it', () => {
    const { load, ownDeviation } = modelOf({ kind: 'jack-out-torque', unit: 'N·m', value: 0.9 });
    const { slippery, sticky } = torqueToForce(JOINT, surroundingsOf(JOINT));
    expectRelative(load.value, modelOf().load.value * Math.sqrt(slippery * sticky));
    // Ends of a range that holds 9 of 10 lie 2 · 1.645 deviations apart.
    expectPublished(Math.log(sticky / slippery) / ownDeviation / 2, '1.645');
  });
  test('of an insert that a jacking screw turned is that of a turn over the share that the thread passes on', () => {
    const turned = { unit: 'N·m', value: 0.9, result: 'insert-turned' } as const;
    const { load, ownDeviation } = modelOf({ kind: 'jack-out-torque', ...turned });
    const share = modelOf({ kind: 'torque-out', ...turned }).load.value / load.value;
    // Friction √(0.10 · 0.24) = 0.155: thread 0.0796 + 0.155 · 2.675/(2 · cos 30°) = 0.3188, head 0.155 · 4.235/2 = 0.3280.
    expectPublished(share, '0.493');
    // Ends: 0.4502/(0.4502 + 0.2118) = 0.680 and 0.2340/(0.2340 + 0.5082) = 0.315; ln of one over the other, over 3.29.
    expectPublished(ownDeviation, '0.234');
  });
  test('falls with a bore that is wider than intended', () => {
    expect(modelOf({ bore_mm: 4.5 }).load.value).toBeLessThan(modelOf().load.value);
  });
});

describe('findingOf', () => {
  test.each(['insert-out-clean', 'insert-out-with-plastic'] as const)('takes %s for the bond', (result) => {
    expect(finding({ result }).says).toBe('broke');
  });
  test.each(['held', 'screw-broke', 'thread-stripped', 'boss-split', 'layers-parted'] as const)(
    'takes %s for a bond that bore at least as much',
    (result) => {
      expect(finding({ result }).says).toBe('held');
    },
  );
  test.each(['screwed-in', 'nut'] as const)('has nothing to say of the bond where it was %s', (setting) => {
    expect(finding({ setting })).toMatchObject({ says: 'other' });
  });
  test('gives the share of the model that was shown, lever and all: 35.667 kg three times over', () => {
    const levered = finding({ value: 107 / 3, leverRatio: 3 });
    expectRelative(levered.bond?.value ?? 0, finding().bond?.value ?? 1, 1e-9);
    // 107 · 9.80665 N = 1049.3 N over 1542.1 N
    expectPublished(finding().bond?.value ?? 0, '0.680');
  });
  test('leaves out what no insert can bear, and a bore as wide as the knurl', () => {
    expect(finding({ value: 2, unit: 'N' }).fault?.code).toBe('far-from-model');
    expect(finding({ bore_mm: 5.1 }).fault).toMatchObject({ code: 'bore-leaves-no-bite', bore: 5.1 });
  });
  test('leaves out a host that does not melt', () => {
    expect(finding({ material: 'resin' }).fault?.code).toBe('does-not-melt');
  });
  test('blurs a reading by the step of a coarse scale only', () => {
    expect(finding({ resolution: 0.1 }).ownDeviation).toBe(0);
    // A step of 20 kg on 107 kg: 20/√12/107
    expectPublished(finding({ resolution: 20 }).ownDeviation ?? 0, '0.0540');
  });
});

describe('evidenceOf', () => {
  const evidence = (tests: readonly Partial<TestRecord>[], printer?: string) =>
    evidenceOf(
      tests.map((one, index) =>
        benchTest({ id: `test-${index + 1}`, date: `2026-04-0${index + 1}`, ...one }),
      ),
      JOINT,
      printer,
    );
  const median = (tests: readonly Partial<TestRecord>[]) => {
    const { ofJoint } = evidence(tests);
    if (ofJoint === undefined) throw new Error('the joint’s set-up was not tested');
    return medianBond(ofJoint.tested.unpulled);
  };
  test('of no test of the joint’s set-up says nothing of it', () => {
    expect(evidence([])).toEqual({ findings: [], setups: [] });
    expect(evidence([{ material: 'abs' }, { setting: 'hammered' }, { printer: 'attic' }])).not.toHaveProperty(
      'ofJoint',
    );
    expect(
      evidence([{ material: 'abs' }, { setting: 'hammered' }, { printer: 'attic' }]).setups,
    ).toHaveLength(3);
  });
  test('takes the tests of the joint’s own printer', () => {
    expect(evidence([{ printer: 'attic' }], 'attic').ofJoint?.findings).toHaveLength(1);
    expect(evidence([{}], 'attic')).not.toHaveProperty('ofJoint');
  });
  test('moves the median towards what broke, and a screw that broke below it takes nothing away', () => {
    expect(median([{ value: 90 }])).toBeLessThan(0.85);
    expect(median([{ value: 180 }])).toBeGreaterThan(0.85);
    expect(median([{ value: 90, result: 'screw-broke' }])).toBeGreaterThanOrEqual(0.8499);
  });
  test('does not take coupons that only held for more than they showed', () => {
    const held = [{ value: 170 }, { value: 171 }, { value: 172 }, { value: 173 }].map((one) => ({
      ...one,
      result: 'held' as const,
    }));
    // 173 kg are 1.100 of the model's 1542.1 N.
    expectPublished(median(held), '1.100');
  });
  test.each([
    ['coupons that broke', [{ value: 96 }, { value: 121 }, { value: 0 }, { value: 108 }], 3],
    ['one that only held', [{ value: 96 }, { value: 121, result: 'held' }], 2],
  ] as const)('keeps what the bond was learned from, each coupon with its way: %s', (_, tests, count) => {
    const { unpulled, bySize } = evidence(tests).ofJoint?.tested ?? {};
    const [pulled] = bySize?.values() ?? [];
    for (const one of [unpulled, pulled]) {
      if (one === undefined) throw new Error('nothing was learned');
      expect(one.origin?.coupons).toHaveLength(count);
      const { factor, scatter } = testedBond(one);
      expectWays([characteristicOf(factor, scatter)]);
      const [coupon] = one.origin?.coupons ?? [];
      expect(wayTo(coupon?.bond)).toMatchObject({ symbol: 'η_i', value: coupon?.bond.value });
    }
  });
  test('counts a faulty test with none', () => {
    expect(median([{ value: 90 }, { value: 0 }, { insert: 'gone' }])).toBe(median([{ value: 90 }]));
  });
});
