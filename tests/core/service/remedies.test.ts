import { describe, expect, test } from 'vitest';
import { noRoomAtAll, tooLittleRoom } from '../../../src/core/joint/room-for-insert.ts';
import { stopOf } from '../../../src/core/joint/stop.ts';
import { tighten } from '../../../src/core/joint/tightening.ts';
import { recommend } from '../../../src/core/recommend/recommend.ts';
import { holdOf } from '../../../src/core/service/hold.ts';
import type { Subject } from '../../../src/core/service/lever.ts';
import { type Remedy, remediesFor } from '../../../src/core/service/remedies.ts';
import { answerableJoint, type Changes, given, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { theRow } from '../../support/the-row.ts';
import { leverOf, moved } from './subject-of.ts';

/** Joints that fail, each for another reason. */
const FAILING: readonly (readonly [string, Changes])[] = [
  [
    'slips after a year',
    { clamped: { material: 'petg' }, loads: { shear_N: 60, serviceTemperature_degC: 35 } },
  ],
  ['is pulled out over a gap', { gap_mm: 0.4, loads: { pull_N: 40, shear_N: 3 } }],
  [
    'tears its plug out of two walls',
    {
      gap_mm: 0.4,
      host: {
        wall: { kind: 'lines', count: 2, lineWidth_mm: 0.43, convention: 'rounded-beads' },
        infill: { pattern: 'grid', density_percent: 13 },
      },
      loads: { pull_N: 90, shear_N: 1, duration_h: 400 },
    },
  ],
  ['is tightened by hand', { clamped: { material: 'petg' }, tool: { kind: 'hand' }, loads: { shear_N: 30 } }],
  [
    'is tightened with more than its two walls bear',
    {
      gap_mm: 0.4,
      host: {
        wall: { kind: 'lines', count: 2, lineWidth_mm: 0.43, convention: 'rounded-beads' },
        infill: { pattern: 'grid', density_percent: 13 },
      },
      loads: { pull_N: 60, shear_N: 0, duration_h: 40, serviceTemperature_degC: 25 },
      tool: { settings_Nm: [0.2] },
    },
  ],
  [
    'holds with nothing but solid round its one wall',
    {
      host: {
        wall: { kind: 'lines', count: 1, lineWidth_mm: 0.43, convention: 'rounded-beads' },
        infill: { pattern: 'grid', density_percent: 73 },
      },
      loads: { pull_N: 288, shear_N: 1, duration_h: 400, serviceTemperature_degC: 25 },
    },
  ],
];

/** What a joint comes to without any shortcut: ranked by the drawer, and held at the setting of its window. */
function holds({ joint, insert }: Subject): { readonly dial: number; readonly margin: number } | undefined {
  const found = recommend(joint, [insert]);
  if (found.kind === 'stopped') return undefined;
  const torque = found.ranked[0]?.assessment.torque;
  if (torque?.kind !== 'window') return undefined;
  const { verdict, worst } = holdOf(joint, insert, torque.dial);
  return verdict === 'holds' ? { dial: torque.dial.value, margin: worst.margin } : undefined;
}

const subjectOf = (changes: Changes): Subject => ({ joint: answerableJoint(changes), insert: theInsert() });
/** The last step of infill is shorter than the others. */
const stepsOf = ({ lever, move }: Remedy): number => Math.ceil(move / leverOf(lever).size - 1e-9);

describe.each(FAILING)('remedies for a joint that %s', (_, changes) => {
  const subject = subjectOf(changes);
  const remedies = remediesFor(subject.joint, subject.insert);
  test('are there, for a joint that does fail', () => {
    expect(holds(subject)).toBeUndefined();
    expect(remedies.length).toBeGreaterThan(0);
  });
  test('hold when they are applied, with the margin and the setting they give', () => {
    for (const remedy of remedies) {
      const held = holds(moved(subject, remedy.lever, stepsOf(remedy)));
      expectRelative(held?.margin ?? 0, remedy.margin);
      expectRelative(held?.dial ?? 0, remedy.dial);
    }
  });
  test('open as the margin and the setting that the plain numbers say', () => {
    for (const { margin, dial, derivedMargin, derivedDial } of remedies) {
      expectRelative(derivedMargin().value, margin);
      expectRelative(derivedDial().value, dial);
      expect(derivedDial().entries.map(({ symbol }) => symbol)).toEqual(['T_least', 'T_most']);
    }
  });
  test('do not hold with one step less', () => {
    for (const remedy of remedies.filter((one) => stepsOf(one) > 1)) {
      expect(holds(moved(subject, remedy.lever, stepsOf(remedy) - 1))).toBeUndefined();
    }
  });
  test('move no load, and name an input once', () => {
    const ids = remedies.map(({ lever }) => lever);
    expect(new Set(ids).size).toBe(ids.length);
    for (const load of ['pull', 'shear', 'temperature', 'duration']) expect(ids).not.toContain(load);
  });
});

describe('remediesFor', () => {
  test('finds some that need more than one step', () => {
    const steps = FAILING.flatMap(([, changes]) => {
      const { joint, insert } = subjectOf(changes);
      return remediesFor(joint, insert).map(stepsOf);
    });
    expect(Math.max(...steps)).toBeGreaterThan(1);
  });
  test('goes with infill as far as solid, by what is left to it', () => {
    const { joint, insert } = subjectOf(FAILING.at(-1)?.[1] ?? {});
    const infill = theRow(remediesFor(joint, insert), ({ lever }) => lever === 'infill');
    expect([infill.move, infill.unit]).toEqual([27, '%']);
  });
  test('has nothing to mend on a joint that holds', () => {
    const subject = subjectOf({});
    expect(holds(subject)).toBeDefined();
    expect(remediesFor(subject.joint, subject.insert)).toEqual([]);
  });
  test('has none where no single change is enough', () => {
    const { joint, insert } = subjectOf({ gap_mm: 0.4, loads: { pull_N: 19_000 } });
    expect(remediesFor(joint, insert)).toEqual([]);
  });
  test('proposes no insert that the part has no room for', () => {
    const subject = subjectOf({
      gap_mm: 0.4,
      host: { thickness_mm: 8.1, bossDiameter_mm: 6.7 },
      loads: { pull_N: 120, shear_N: 3 },
    });
    for (const remedy of remediesFor(subject.joint, subject.insert)) {
      const after = moved(subject, remedy.lever, stepsOf(remedy));
      expect(noRoomAtAll(after.joint, after.insert)).toBeUndefined();
      expect(tooLittleRoom(after.joint, tighten(after.joint, after.insert).found)).toBeUndefined();
      expect(stopOf(after.joint)).toBeUndefined();
    }
    const lengthened = moved(subject, 'insert-length', 12);
    expect(tooLittleRoom(lengthened.joint, tighten(lengthened.joint, lengthened.insert).found)).toMatchObject(
      {
        code: 'part-too-thin',
      },
    );
  });
  test('goes by the torque of the changed joint, not by that of the failing one', () => {
    const subject = subjectOf({
      clamped: { material: 'petg' },
      loads: { shear_N: 60, serviceTemperature_degC: 35 },
    });
    for (const { lever, move, dial, margin } of remediesFor(subject.joint, subject.insert)) {
      const after = moved(subject, lever, Math.round(move / leverOf(lever).size));
      expectRelative(holdOf(after.joint, after.insert, given('T', dial, 'N·mm')).worst.margin, margin);
      expect(holdOf(after.joint, after.insert, given('T', dial / 1.9, 'N·mm')).worst.margin).not.toBe(margin);
    }
  });
});
