import { describe, expect, test } from 'vitest';
import type { MaterialValue, PrintedMaterial } from '../../../src/core/host/material.ts';
import { assess } from '../../../src/core/joint/assess.ts';
import { jointAt } from '../../../src/core/joint/joint-at.ts';
import type { AnswerableJoint } from '../../../src/core/joint/stop.ts';
import { holdOf } from '../../../src/core/service/hold.ts';
import fc from '../../support/fast-check.ts';
import { answerableJoint, type Changes, given, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const insert = theInsert();
const TORQUE = given('T', 170, 'N·mm');

/** Joints with plastic in every place that a doubt about it can reach. */
const JOINTS: readonly (readonly [string, Changes])[] = [
  ['on the insert', { loads: { pull_N: 41 } }],
  ['over a gap', { gap_mm: 0.4, loads: { pull_N: 17, shear_N: 2 } }],
  ['on the plastic', { sunk_mm: 0.3, loads: { pull_N: 17, shear_N: 2 } }],
  [
    'from the far side, printed',
    { insertSide: 'far-side', clamped: { material: 'pla' }, loads: { shear_N: 2 } },
  ],
  [
    'of two plastics, tightened again',
    { gap_mm: 0.4, clamped: { material: 'abs' }, loads: { retightenings: 3 } },
  ],
  [
    'of PA12 in the warmth',
    { host: { material: 'pa12' }, gap_mm: 0.4, loads: { serviceTemperature_degC: 57 } },
  ],
  ['set cold', { setting: 'cold-pressed', sunk_mm: 0.3, loads: { pull_N: 11, shear_N: 1 } }],
];

/** The same joint, its polymers changed. */
function withPolymers(
  joint: AnswerableJoint,
  change: (polymer: PrintedMaterial) => PrintedMaterial,
): AnswerableJoint {
  const { host, clamped } = joint;
  const { material } = clamped;
  return {
    ...joint,
    host: { ...host, material: change(host.material) },
    clamped: {
      ...clamped,
      material: material.kind === 'printed' ? { ...material, polymer: change(material.polymer) } : material,
    },
  };
}

/** Every doubtful value of warmth and creep between two ends, a share of the way to either. */
function withDoubt(polymer: PrintedMaterial, width: number): PrintedMaterial {
  const doubtful = <Row extends MaterialValue>(row: Row, most: number): Row => ({
    ...row,
    low: row.value - width * 0.6 * row.value,
    high: row.value + width * (most - row.value),
    lowConfidence: true,
  });
  return {
    ...polymer,
    softening: {
      ...doubtful(polymer.softening, 1.3 * polymer.softening.value),
      low: polymer.softening.value - 12 * width,
    },
    creepRatio1h: doubtful(polymer.creepRatio1h, 0.97),
    creepRatio24h: doubtful(polymer.creepRatio24h, 0.94),
    creepRatio1000h: doubtful(polymer.creepRatio1000h, 0.9),
    strengthRatios: polymer.strengthRatios.map((row) => ({ ...row, ratio: doubtful(row.ratio, 1) })),
  };
}

/** What a joint comes to: the two ends of its torque, its reserve, and its margins at a setting. */
function answersOf(joint: AnswerableJoint) {
  const { torque, loadReserve, preloadLeft, holds } = assess(joint, insert);
  const { worst, states } = holdOf(joint, insert, TORQUE);
  return {
    least: torque.least.value,
    most: torque.most.value,
    reserve: loadReserve?.value ?? 0,
    left: preloadLeft.value,
    holds: holds.characteristic.value,
    worst: worst.margin,
    loaded: states.map(({ closed }) => Math.min(...closed.map(({ margin }) => margin))),
  };
}

describe.each(JOINTS)('a joint %s', (_, changes) => {
  const joint = answerableJoint(changes);

  test('of polymers that are known for certain answers with their values, and shows no range', () => {
    const certain = jointAt(joint, 'middle');
    const measured = withPolymers(joint, (polymer) => withDoubt(polymer, 0));
    const [one, other] = [answersOf(certain), answersOf(measured)];
    expectRelative(one.least, other.least);
    expectRelative(one.most, other.most);
    expectRelative(one.worst, other.worst);
    expect(assess(certain, insert).preloadLeft.range).toBeUndefined();
    expect(assess(measured, insert).preloadLeft.range).toBeUndefined();
  });
  test('never has a wider window, a larger reserve or a larger margin the less is known of its polymers (law)', () => {
    const width = fc.double({ min: 0, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(width, width, (one, other) => {
        const [narrow, wide] = [Math.min(one, other), Math.max(one, other)].map((doubt) =>
          answersOf(withPolymers(joint, (polymer) => withDoubt(polymer, doubt))),
        );
        if (!narrow || !wide) throw new Error('two of two');
        const room = 1 + 1e-9;
        expect(wide.least).toBeGreaterThanOrEqual(narrow.least / room);
        expect(wide.most).toBeLessThanOrEqual(narrow.most * room);
        expect(wide.reserve).toBeLessThanOrEqual(narrow.reserve * room);
        expect(wide.left).toBeLessThanOrEqual(narrow.left * room);
        expect(wide.holds).toBeLessThanOrEqual(narrow.holds * room);
        expect(wide.worst).toBeLessThanOrEqual(narrow.worst * room);
        wide.loaded.forEach((margin, index) => {
          expect(margin).toBeLessThanOrEqual((narrow.loaded[index] ?? 0) * room);
        });
      }),
      { numRuns: 25 },
    );
  });
  test('lies between what its polymers would give at either end of what is known of them', () => {
    const [careful, expected, hopeful] = [
      answersOf(joint),
      answersOf(jointAt(joint, 'middle')),
      answersOf(jointAt(joint, 'high')),
    ];
    const { value, range = { low: value, middle: value, high: value } } = assess(joint, insert).preloadLeft;
    expectRelative(range.low, careful.left);
    expectRelative(range.middle ?? 0, expected.left);
    // Both ends of two plastics that are tightened again need not be at the same end of each.
    expect(range.high).toBeGreaterThanOrEqual(hopeful.left * (1 - 1e-12));
    expect(careful.least).toBeGreaterThanOrEqual(expected.least);
    expect(expected.least).toBeGreaterThanOrEqual(hopeful.least);
    expect(careful.most).toBeLessThanOrEqual(expected.most * (1 + 1e-12));
  });
});

describe('jointAt', () => {
  test('leaves a metal part and everything else as it is', () => {
    const joint = answerableJoint();
    const careful = jointAt(joint, 'low');
    expect(careful.clamped).toEqual(joint.clamped);
    expect({ ...careful, host: { ...careful.host, material: joint.host.material } }).toEqual(joint);
  });
});
