import { describe, expect, test } from 'vitest';
import { METER_COVER } from '../../../src/app/demos/meter-cover.ts';
import { MOTOR_PLATE } from '../../../src/app/demos/motor-plate.ts';
import { PARTS_BOX } from '../../../src/app/demos/parts-box.ts';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { duplicated, freeId, removed } from '../../../src/app/joint/drawer/drawer-edits.ts';
import { threadEdits } from '../../../src/app/joint/thread-edits.ts';
import { wallOfKind } from '../../../src/app/joint/wall-of-kind.ts';
import { admit } from '../../../src/app/state/admit.ts';
import { type Edit, withEdits } from '../../../src/app/state/edit.ts';
import { CATALOGUE } from '../../../src/data/catalogue.ts';

const thread = (value: string): Edit => ({ path: 'joint.screw.thread', value });

describe('threadEdits', () => {
  test.each(CATALOGUE.threads.map(({ id }) => id))('of %s leave a joint that the door admits', (id) => {
    for (const document of [SENSOR_LID, MOTOR_PLATE, METER_COVER, PARTS_BOX]) {
      const edited = withEdits(document, [thread(id), ...threadEdits(document, id, CATALOGUE)]);
      expect(admit(edited)).toMatchObject({ kind: 'admitted' });
    }
  });
  test('take the usual clearance hole along', () => {
    expect(threadEdits(SENSOR_LID, 'M5', CATALOGUE)).toEqual([
      { path: 'joint.clamped.clearanceHole_mm', value: 5.5 },
    ]);
  });
  test('put a spacer round the hole that came along', () => {
    expect(threadEdits(PARTS_BOX, 'M5', CATALOGUE)).toContainEqual({
      path: 'joint.clamped.sleeve.outsideDiameter_mm',
      value: 7.5,
    });
  });
  test('leave a clearance hole of one’s own alone', () => {
    const own = {
      ...SENSOR_LID,
      joint: { ...SENSOR_LID.joint, clamped: { ...SENSOR_LID.joint.clamped, clearanceHole_mm: 6 } },
    };
    expect(threadEdits(own, 'M4', CATALOGUE)).toEqual([]);
  });
  test('leave a length that is not sold to the program', () => {
    const fixed = {
      ...SENSOR_LID,
      joint: { ...SENSOR_LID.joint, screw: { ...SENSOR_LID.joint.screw, length_mm: 5 } },
    };
    expect(threadEdits(fixed, 'M8', CATALOGUE)).toContainEqual({
      path: 'joint.screw.length_mm',
      value: undefined,
    });
  });
});

describe('the drawer', () => {
  test('gives a copy an id of its own, without label and count', () => {
    const labelled = withEdits(SENSOR_LID, [
      { path: 'drawer.0.label', value: 'left box' },
    ]) as typeof SENSOR_LID;
    const { id, edit } = duplicated(labelled, 0);
    const after = admit(withEdits(labelled, [edit]));
    const copy = after.kind === 'admitted' ? after.document.drawer[1] : undefined;
    const { label: _label, count: _count, ...measured } = labelled.drawer[0] ?? {};
    expect(copy).toEqual({ ...measured, id });
    expect(after.kind === 'admitted' && after.document.drawer).toHaveLength(8);
  });
  test('never names two inserts alike', () => {
    const drawer = [
      { ...SENSOR_LID.drawer[0], id: 'insert-7' },
      { ...SENSOR_LID.drawer[1], id: 'other' },
    ] as typeof SENSOR_LID.drawer;
    expect(freeId(drawer)).toBe('insert-8');
  });
  test('lets the choice go with the insert that was chosen', () => {
    const chosen = { ...SENSOR_LID, chosenInsert: 'slim-long' };
    const after = admit(withEdits(chosen, removed(chosen, 1)));
    expect(after).toMatchObject({ kind: 'admitted' });
    expect(after.kind === 'admitted' && after.document.chosenInsert).toBeUndefined();
    expect(after.kind === 'admitted' && after.document.drawer.map(({ id }) => id)).not.toContain('slim-long');
  });
  test('keeps the choice of another one', () => {
    const chosen = { ...SENSOR_LID, chosenInsert: 'tall-five' };
    const after = admit(withEdits(chosen, removed(chosen, 1)));
    expect(after.kind === 'admitted' && after.document.chosenInsert).toBe('tall-five');
  });
});

describe('wallOfKind', () => {
  test('begins a measured wall with what its lines come to', () => {
    expect(wallOfKind(SENSOR_LID.joint.host.wall, 'measured', 2.0778)).toEqual({
      kind: 'measured',
      thickness_mm: 2.08,
      lineWidth_mm: 0.45,
    });
  });
  test('keeps a wall that is given that way already', () => {
    expect(wallOfKind(SENSOR_LID.joint.host.wall, 'lines', 2)).toBe(SENSOR_LID.joint.host.wall);
  });
});
