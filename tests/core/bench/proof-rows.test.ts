import { describe, expect, test } from 'vitest';
import { evidenceOf } from '../../../src/core/bench/evidence.ts';
import { lastingLoadOf, proofRows, scatterOf } from '../../../src/core/bench/proof-rows.ts';
import { withinScatter } from '../../../src/core/evidence/within-scatter.ts';
import { assess } from '../../../src/core/joint/assess.ts';
import { holdOf } from '../../../src/core/service/hold.ts';
import type { TestRecord } from '../../../src/storage/document.ts';
import { documentWithTests, resolvedWithTests, testRecord } from '../../support/bench-tests.ts';
import { answerableJoint, given, theInsert } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const RIG = { leverRatio: 4, scaleLimit: 490.3325 };
const ASKED = { load: 600, scatter: withinScatter([]).scatter, rig: RIG };
const [one, three, five] = proofRows([1, 3, 5], ASKED);

describe('proofRows', () => {
  test('of one coupon is exp(0.10 · (1.645 + 1.645)) times the load (hand calculation)', () => {
    // exp(0.32897) = 1.38954: 833.7 N; a quarter of it at the scale
    expectPublished(one?.proofLoad.value ?? 0, '833.7');
    if (one?.reading.kind !== 'reading') throw new Error('the scale is large enough');
    expectPublished(one.reading.reading.value, '208.4');
    expectPublished(one.shareAtProofLoad.value, '0.050');
  });
  test('asks less of each coupon the more are pulled', () => {
    expect(three?.proofLoad.value).toBeLessThan(one?.proofLoad.value ?? 0);
    expect(five?.proofLoad.value).toBeLessThan(three?.proofLoad.value ?? 0);
    expect(five?.proofLoad.value).toBeGreaterThan(600);
  });
  test('says which lever a scale needs that is too small', () => {
    const [straight] = proofRows([1], { ...ASKED, rig: { ...RIG, leverRatio: 1 } });
    if (straight?.reading.kind !== 'refused') throw new Error('833.7 N is more than 50 kg');
    expectRelative(straight.reading.leverRatio.value, 833.72 / 490.3325, 1e-4);
  });
  test('reads the scale at the load that makes up for the time', () => {
    const joint = answerableJoint({ loads: { duration_h: 1000 } });
    const lasting = lastingLoadOf(joint);
    if (lasting === undefined) throw new Error('1000 h are a time under load');
    const [row] = proofRows([1], { ...ASKED, lasting });
    expectRelative(row?.proofLoad.value ?? 0, lasting.creep.value * (one?.proofLoad.value ?? 0));
    expectRelative(row?.reading.reading.value ?? 0, (row?.proofLoad.value ?? 0) / 4);
  });
});

describe('lastingLoadOf', () => {
  test('is nothing where the load does not last', () => {
    expect(lastingLoadOf(answerableJoint({ loads: { duration_h: 0 } }))).toBeUndefined();
  });
  test('is what the joint’s own knurl shear loses in the same time', () => {
    const joint = answerableJoint({ loads: { duration_h: 2190, serviceTemperature_degC: 31 }, gap_mm: 1.3 });
    const insert = theInsert();
    const knurl = assess(joint, insert).limits.find(({ mode }) => mode === 'knurl-shear');
    const states = holdOf(joint, insert, given('T', 110, 'N·mm')).states;
    const after = states.find(({ id }) => id === 'after')?.limits.find(({ mode }) => mode === 'knurl-shear');
    const lost = (knurl?.capacity.characteristic.value ?? 0) / (after?.capacity.characteristic.value ?? 1);
    expectRelative(lastingLoadOf(joint)?.creep.value ?? 0, lost);
  });
});

describe('scatterOf', () => {
  const joint = answerableJoint();
  const scatter = (records: readonly Partial<TestRecord>[]) => {
    const document = documentWithTests(
      records.map((record, index) => testRecord({ ...record, id: `test-${index + 1}`, coupon: index + 1 })),
    );
    return scatterOf(evidenceOf(resolvedWithTests(document).bench, joint, undefined).ofJoint);
  };
  test('is what is assumed where nobody has pulled', () => {
    expectRelative(scatterOf(undefined).scatter.value, 0.1);
  });
  test('is that of like coupons that broke: 95, 107 and 121 kg (hand calculation)', () => {
    // ln: 4.55388, 4.67283, 4.79579 about 4.67417; squares 0.014470 + 0.0000018 + 0.014791 = 0.029263
    // √((0.04 + 0.029263)/6) = 0.10744
    expectPublished(scatter([{ value: 95 }, { value: 107 }, { value: 121 }]).scatter.value, '0.1074');
  });
  test('leads back to the bond factor that each coupon showed, and on to what was read', () => {
    const within = scatter([{ value: 95 }, { value: 107 }, { value: 121 }]);
    const squares = within.scatter.entries.find(({ symbol }) => symbol === 'Q_w')?.from;
    // As above: 0.029263
    expectPublished(squares?.value ?? 0, '0.0293');
    const shown = squares?.entries[0]?.from?.entries[0]?.from;
    expect(shown).toMatchObject({ symbol: 'y_b', formula: 'ln(η_i)' });
    expect(shown?.entries[0]?.from?.entries.length).toBeGreaterThan(0);
    expectWays([within.scatter, within.careful]);
  });
  test('takes none from what held, from friction, from a coarse scale, nor from one of each size', () => {
    const others: readonly Partial<TestRecord>[] = [
      { value: 60, kind: 'proof-pull', result: 'held' },
      { value: 80, kind: 'proof-pull', result: 'held' },
      { value: 0.9, unit: 'N·m', kind: 'jack-out-torque' },
      { value: 1.1, unit: 'N·m', kind: 'jack-out-torque' },
      { value: 90, resolution: 20 },
      { value: 150, resolution: 20 },
      { value: 107 },
    ];
    expect(scatter(others).freedom).toBe(0);
  });
});
