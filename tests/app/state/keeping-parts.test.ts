import { describe, expect, test } from 'vitest';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { withEdits } from '../../../src/app/state/edit.ts';
import { keepingParts } from '../../../src/app/state/keeping-parts.ts';
import { openDocument } from '../../../src/storage/open-document.ts';

const BEFORE = SENSOR_LID;
const parsed = (candidate: unknown) => {
  const opened = openDocument(candidate);
  if (opened.kind === 'refused') throw new Error('not a document');
  return opened.document;
};

describe('a document that came through the door anew', () => {
  test('is the one before where it says the same', () => {
    const anew = parsed(structuredClone(BEFORE));
    expect(anew).not.toBe(BEFORE);
    expect(keepingParts(BEFORE, anew)).toBe(BEFORE);
  });

  test('is the one before in whatever order its keys stand', () => {
    const turned = Object.fromEntries(Object.entries(BEFORE).reverse());
    expect(keepingParts(BEFORE, parsed(turned))).toBe(BEFORE);
  });

  test('keeps what did not change and has what did', () => {
    const anew = parsed(withEdits(structuredClone(BEFORE), [{ path: 'joint.host.wall.count', value: 7 }]));
    const after = keepingParts(BEFORE, anew);
    expect(after).toEqual(anew);
    expect(after.drawer).toBe(BEFORE.drawer);
    expect(after.joint.screw).toBe(BEFORE.joint.screw);
    expect(after.joint.host.infill).toBe(BEFORE.joint.host.infill);
    expect(after.joint.host.wall).not.toBe(BEFORE.joint.host.wall);
  });

  test('has an optional key that was added, and has it no more when it was taken out', () => {
    const wide = parsed(withEdits(BEFORE, [{ path: 'joint.host.bossDiameter_mm', value: 31 }]));
    expect(keepingParts(BEFORE, wide)).toEqual(wide);
    const without = parsed(withEdits(wide, [{ path: 'joint.host.bossDiameter_mm', value: undefined }]));
    expect(keepingParts(wide, without)).toEqual(without);
    expect('bossDiameter_mm' in keepingParts(wide, without).joint.host).toBe(false);
  });

  test('has a list that grew or shrank, its first items kept', () => {
    const [first, ...rest] = BEFORE.drawer;
    if (first === undefined) throw new Error('the drawer is empty');
    const shorter = keepingParts(BEFORE, { ...BEFORE, drawer: [structuredClone(first)] });
    expect(shorter.drawer).toHaveLength(1);
    expect(shorter.drawer[0]).toBe(first);
    const longer = keepingParts(shorter, structuredClone({ ...BEFORE, drawer: [first, ...rest] }));
    expect(longer.drawer).toEqual(BEFORE.drawer);
    expect(longer.drawer[0]).toBe(first);
  });
});
