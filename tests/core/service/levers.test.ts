import { describe, expect, test } from 'vitest';
import { noRoomAtAll } from '../../../src/core/joint/room-for-insert.ts';
import { isAnswered } from '../../../src/core/service/answered.ts';
import { type LeverId, type Subject, sizeOfMove } from '../../../src/core/service/lever.ts';
import { LEVERS } from '../../../src/core/service/levers.ts';
import type { InsertRecord } from '../../../src/storage/document.ts';
import { answerableJoint, type Changes, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { leverOf, moved } from './subject-of.ts';

const subject = (changes: Changes = {}, record: Partial<InsertRecord> = {}): Subject => ({
  joint: answerableJoint(changes),
  insert: theInsert(record),
});
const move = (id: LeverId, steps: number, changes: Changes = {}, record: Partial<InsertRecord> = {}) =>
  leverOf(id).move(subject(changes, record), steps);
/** The documents before and after a move come to the same joint. */
const expectSameJoint = (after: Subject, changes: Changes) =>
  expect(after.joint).toEqual(answerableJoint(changes));

describe('levers', () => {
  test('have a name of their own each, and leave the subject they move alone', () => {
    expect(new Set(LEVERS.map(({ id }) => id)).size).toBe(LEVERS.length);
    const given = subject({ gap_mm: 0.4, clamped: { material: 'petg' }, tool: { kind: 'hand' } });
    const before = structuredClone(given);
    for (const lever of LEVERS) lever.move(given, 1);
    expect(given).toEqual(before);
  });
  test('that are made or not are made once, forwards', () => {
    for (const lever of LEVERS.filter(({ unit }) => unit === 'change')) {
      const given = subject({ gap_mm: 0.4, clamped: { material: 'petg' }, tool: { kind: 'hand' } });
      expect(lever.move(given, -1)).toBeUndefined();
      expect(lever.move(given, 2)).toBeUndefined();
    }
  });
});

describe('print levers', () => {
  const lines = (count: number): Changes => ({
    host: { wall: { kind: 'lines', count, lineWidth_mm: 0.43, convention: 'rounded-beads' } },
  });
  test('wall lines count from 1 to 30', () => {
    expectSameJoint(moved(subject(), 'wall-lines', 3), lines(8));
    expect(move('wall-lines', -4)).toBeDefined();
    expect(move('wall-lines', -5)).toBeUndefined();
    expect(move('wall-lines', 1, lines(30))).toBeUndefined();
    const measured: Changes = { host: { wall: { kind: 'measured', thickness_mm: 2.1, lineWidth_mm: 0.43 } } };
    expect(move('wall-lines', 1, measured)).toBeUndefined();
  });
  test('infill moves by tenths from none up, its last step to solid, and says by how much', () => {
    const at = (density_percent: number): Changes => ({
      host: { infill: { pattern: 'grid', density_percent } },
    });
    expectRelative(moved(subject(at(37)), 'infill', 2).joint.host.infill.density, 0.57);
    expect(moved(subject(at(90)), 'infill', 1).joint.host.infill.density).toBe(1);
    expect(moved(subject(at(30)), 'infill', -3).joint.host.infill.density).toBe(0);
    for (const [density, steps, size] of [
      [90, 1, 10],
      [95, 1, 5],
      [91.3, 1, 8.7],
      [73, 3, 27],
      [0, 10, 100],
      [3, 10, 97],
    ] as const) {
      const given = subject(at(density));
      expect(moved(given, 'infill', steps).joint.host.infill.density).toBe(1);
      expectRelative(sizeOfMove(leverOf('infill'), given, steps), size);
      expect(leverOf('infill').move(given, steps + 1)).toBeUndefined();
    }
    expectRelative(sizeOfMove(leverOf('infill'), subject(at(37)), 2), 20);
    expectRelative(sizeOfMove(leverOf('infill'), subject(at(37)), -3), -30);
    expect(leverOf('infill').remedySteps).toBe(10);
    expect(move('infill', -1, at(9))).toBeUndefined();
  });
});

describe('clamp levers', () => {
  test('a washer goes under a head that has none, not under a cone', () => {
    expectSameJoint(moved(subject(), 'washer', 1), { screw: { washer: 'plain' } });
    expect(move('washer', 1, { screw: { washer: 'plain' } })).toBeUndefined();
    expect(move('washer', 1, { screw: { head: 'ISO 10642' } })).toBeUndefined();
  });
  test('a spacer of 1 mm wall goes into a printed part under a flat head', () => {
    const printed: Changes = { clamped: { material: 'petg' } };
    expectSameJoint(moved(subject(printed), 'sleeve', 1), {
      clamped: { material: 'petg', sleeve: { material: 'steel', outsideDiameter_mm: 5.4 } },
    });
    expect(move('sleeve', 1)).toBeUndefined();
    expect(move('sleeve', 1, { ...printed, screw: { head: 'ISO 10642' } })).toBeUndefined();
    const there: Changes = {
      clamped: { material: 'petg', sleeve: { material: 'steel', outsideDiameter_mm: 5.1 } },
    };
    expect(move('sleeve', 1, there)).toBeUndefined();
  });
  test('a gap and a sunk insert are closed, and the seat found anew', () => {
    expectSameJoint(moved(subject({ gap_mm: 0.4, seat: 'over-gap' }), 'close-gap', 1), {});
    expectSameJoint(moved(subject({ sunk_mm: 0.3 }), 'close-gap', 1), {});
    expect(move('close-gap', 1)).toBeUndefined();
    expect(move('close-gap', 1, { insertSide: 'far-side', gap_mm: 0.4 })).toBeUndefined();
  });
  test('an oiled thread, a torque driver, a 12.9 screw: only where they are not there yet', () => {
    expectSameJoint(moved(subject(), 'oiled-thread', 1), { screw: { friction: 'oiled' } });
    expect(move('oiled-thread', 1, { screw: { friction: 'oiled' } })).toBeUndefined();
    expectSameJoint(moved(subject({ tool: { kind: 'hand' } }), 'torque-driver', 1), {});
    expect(move('torque-driver', 1)).toBeUndefined();
    expect(moved(subject(), 'stronger-screw', 1).joint.screw.propertyClass.id).toBe('12.9');
    expect(move('stronger-screw', 1, { screw: { propertyClass: '12.9' } })).toBeUndefined();
  });
});

describe('insert levers', () => {
  test('a longer insert is longer in its knurl too, measured or not', () => {
    expect(moved(subject(), 'insert-length', 3).insert).toEqual(theInsert({ length_mm: [6.8] }));
    const after = moved(subject({}, { knurledLength_mm: [3.25] }), 'insert-length', 1).insert;
    expect(after).toEqual(theInsert({ length_mm: [5.8], knurledLength_mm: [3.75] }));
  });
  test('a wider insert keeps its bite', () => {
    const { insert } = moved(
      subject({}, { knurlDiameter_mm: [4.75], pilotDiameter_mm: [4.25] }),
      'knurl-diameter',
      5,
    );
    expect(insert).toEqual(theInsert({ knurlDiameter_mm: [5.75], pilotDiameter_mm: [5.25] }));
  });
  test('from behind it stands flush on its shoulder, with a screw chosen anew', () => {
    const given: Changes = { gap_mm: 0.4, sunk_mm: 0.2, seat: 'over-gap', screw: { length_mm: 8 } };
    expectSameJoint(moved(subject(given), 'far-side', 1), { insertSide: 'far-side' });
    expect(move('far-side', 1, { insertSide: 'far-side' })).toBeUndefined();
  });
  test('the next thread brings its head, washer, hole, and an insert in proportion', () => {
    const sleeve = { material: 'steel', outsideDiameter_mm: 5.1 };
    const { joint, insert } = moved(
      subject({ clamped: { material: 'petg', sleeve }, screw: { washer: 'plain', length_mm: 8 } }),
      'bigger-thread',
      1,
    );
    // ISO 273 medium: 4.5 mm for M4; the spacer keeps its wall of 0.85 mm.
    expect(joint.screw.thread.id).toBe('M4');
    expect(joint.screw.washer?.thread).toBe('M4');
    expect(joint.screw.fixedLength).toBeUndefined();
    expect(joint.clamped.clearanceHole).toBe(4.5);
    expectRelative(joint.clamped.sleeve?.outsideDiameter ?? 0, 6.2);
    expect(insert.thread.id).toBe('M4');
    expectRelative(insert.length.values[0] ?? 0, (5.3 * 4) / 3);
    expectRelative(insert.knurlDiameter.values[0] ?? 0, (4.93 * 4) / 3);
  });
  test('there is no thread above the largest', () => {
    const m8: Changes = {
      screw: { thread: 'M8' },
      clamped: { clearanceHole_mm: 9 },
      drawer: [],
    };
    const big = { thread: 'M8', knurlDiameter_mm: [11.1], pilotDiameter_mm: [10.1], length_mm: [12.7] };
    const joint = answerableJoint({ ...m8, drawer: [{ id: 'big', ...big }] });
    expect(leverOf('bigger-thread').move({ joint, insert: theInsert() }, 1)).toBeUndefined();
  });
});

describe('load levers', () => {
  test('a load moves by tenths of itself; none stays none', () => {
    expectRelative(moved(subject(), 'pull', -1).joint.loads.pull, 0.9 * 83);
    expectRelative(moved(subject(), 'shear', 2).joint.loads.shear, 1.2 * 19);
    expect(move('pull', 1, { loads: { pull_N: 0 } })).toBeUndefined();
    expect(move('shear', -11)).toBeUndefined();
  });
  test('re-tightening is done up to four times', () => {
    expectSameJoint(moved(subject(), 'retightening', 4), { loads: { retightenings: 4 } });
    expect(move('retightening', -1)).toBeUndefined();
    expect(move('retightening', 1, { loads: { retightenings: 4 } })).toBeUndefined();
  });
  test('time doubles and halves, temperature goes by 5 K', () => {
    expectSameJoint(moved(subject(), 'duration', 1), { loads: { duration_h: 17_520 } });
    expectSameJoint(moved(subject(), 'temperature', -2), { loads: { serviceTemperature_degC: 21 } });
    expect(move('duration', 1, { loads: { duration_h: 0 } })).toBeUndefined();
  });
});

describe('isAnswered', () => {
  test('a usual joint is', () => {
    expect(isAnswered(subject())).toBe(true);
  });
  test('a joint too near softening is not', () => {
    expect(isAnswered(moved(subject({ loads: { serviceTemperature_degC: 68 } }), 'temperature', 1))).toBe(
      false,
    );
  });
  test('an insert that cannot exist is not: too long, too short, no brass left', () => {
    // Least length 0.4 · 4.93 mm, greatest 5 · 3 mm.
    expect(isAnswered(moved(subject({}, { length_mm: [14.9] }), 'insert-length', 1))).toBe(false);
    expect(isAnswered(moved(subject({}, { length_mm: [2.3] }), 'insert-length', -1))).toBe(false);
    expect(
      isAnswered(
        moved(subject({}, { knurlDiameter_mm: [3.5], pilotDiameter_mm: [3.3] }), 'knurl-diameter', -1),
      ),
    ).toBe(false);
  });
  test('an insert without room is not: a boss no wider than the knurl, a part too thin for a shoulder', () => {
    const wide = moved(subject({ host: { bossDiameter_mm: 5.2 } }), 'knurl-diameter', 2);
    expect(noRoomAtAll(wide.joint, wide.insert)).toMatchObject({ code: 'boss-too-small' });
    expect(isAnswered(wide)).toBe(false);
    expect(isAnswered(moved(subject({ host: { thickness_mm: 5.9 } }), 'far-side', 1))).toBe(false);
  });
});
