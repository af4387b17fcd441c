import { describe, expect, test } from 'vitest';
import { CAMERA_BRACKET } from '../../../src/app/demos/camera-bracket.ts';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { admit } from '../../../src/app/state/admit.ts';
import {
  fieldKey,
  type Sheet,
  type SheetAction,
  sheetOf,
  sheetReducer,
} from '../../../src/app/state/sheet.ts';

const KNURL = 'drawer.0.knurlDiameter_mm';
const PILOT = 'drawer.0.pilotDiameter_mm';

const edit = (path: string, value: unknown, at = 0): SheetAction => ({
  type: 'edit',
  key: path,
  edits: [{ path, value }],
  at,
  admit,
});
const sheetAfter = (...actions: readonly SheetAction[]): Sheet =>
  actions.reduce(sheetReducer, sheetOf(SENSOR_LID));
const present = (sheet: Sheet) => sheet.journal.present;

describe('an edit', () => {
  test('that the door admits goes into the document and can be undone', () => {
    const sheet = sheetAfter(edit('joint.loads.pull_N', 123));
    expect(present(sheet).joint.loads.pull_N).toBe(123);
    expect(sheet.pending.size).toBe(0);
    expect(present(sheetReducer(sheet, { type: 'undo' }))).toBe(SENSOR_LID);
  });
  test('that the door refuses leaves the document alone and waits with its reasons', () => {
    const sheet = sheetAfter(edit(KNURL, [4.1]));
    expect(present(sheet)).toBe(SENSOR_LID);
    expect(sheet.journal.past).toEqual([]);
    expect(sheet.pending.get(KNURL)).toEqual({
      edits: [{ path: KNURL, value: [4.1] }],
      refusals: [
        { path: PILOT, code: 'pilot-not-below-knurl', facts: { pilotDiameter: 4.25, knurlDiameter: 4.1 } },
      ],
    });
  });
  test('outside the range of its key is refused as a file would be', () => {
    const sheet = sheetAfter(edit('joint.gap_mm', 51));
    expect(sheet.pending.get('joint.gap_mm')?.refusals).toEqual([
      { path: 'joint.gap_mm', code: 'above-limit', facts: { value: '51', greatest: 50 } },
    ]);
  });
  test('that changes nothing leaves no step to undo', () => {
    expect(sheetAfter(edit('joint.loads.pull_N', SENSOR_LID.joint.loads.pull_N)).journal.past).toEqual([]);
  });
});

describe('edits that are only valid together', () => {
  test('go in together once the last of them is typed', () => {
    // Knurl 3.9 is below the pilot of 4.25 until the pilot is 3.4.
    const sheet = sheetAfter(edit(KNURL, [3.9]), edit(PILOT, [3.4], 5000));
    expect(present(sheet).drawer[0]).toMatchObject({ knurlDiameter_mm: [3.9], pilotDiameter_mm: [3.4] });
    expect(sheet.pending.size).toBe(0);
    expect(sheet.journal.past).toHaveLength(1);
  });
  test('go in with the one that fits them, while another goes on waiting', () => {
    const sheet = sheetAfter(edit('joint.gap_mm', 51), edit(KNURL, [3.9]), edit(PILOT, [3.4]));
    expect(present(sheet).drawer[0]?.knurlDiameter_mm).toEqual([3.9]);
    expect([...sheet.pending.keys()]).toEqual(['joint.gap_mm']);
  });
  test('do not hold up one that has nothing to do with them', () => {
    const sheet = sheetAfter(edit(KNURL, [4.1]), edit('joint.loads.pull_N', 77));
    expect(present(sheet).joint.loads.pull_N).toBe(77);
    expect([...sheet.pending.keys()]).toEqual([KNURL]);
  });
});

describe('a waiting edit', () => {
  test('is replaced by the next one of its field', () => {
    const sheet = sheetAfter(edit(KNURL, [4.1]), edit(KNURL, [4.9]));
    expect(present(sheet).drawer[0]?.knurlDiameter_mm).toEqual([4.9]);
    expect(sheet.pending.size).toBe(0);
  });
  test('is replaced by one of the same value in another place', () => {
    const typed = (place: string, value: unknown): SheetAction => ({
      type: 'edit',
      key: fieldKey('joint.gap_mm', place),
      edits: [{ path: 'joint.gap_mm', value }],
      at: 0,
      admit,
    });
    const sheet = sheetAfter(typed('drawing', 51), typed('list', 52));
    expect([...sheet.pending.keys()]).toEqual(['joint.gap_mm@list']);
    expect([...sheet.renewals]).toEqual([['joint.gap_mm@drawing', 1]]);
    expect(sheetReducer(sheet, typed('drawing', 0.4)).pending.size).toBe(0);
  });
  test('is gone when it is given up', () => {
    const sheet = sheetAfter(edit(KNURL, [4.1]), { type: 'give-up', key: KNURL });
    expect(sheet.pending.size).toBe(0);
    expect(present(sheet)).toBe(SENSOR_LID);
  });
  test('has its reason found anew when the document changes', () => {
    const sheet = sheetAfter(edit(KNURL, [4.1]), edit(PILOT, [4.4]));
    expect(sheet.pending.get(KNURL)?.refusals[0]?.facts).toEqual({ pilotDiameter: 4.4, knurlDiameter: 4.1 });
  });
  test.each<SheetAction>([{ type: 'undo' }, { type: 'redo' }, { type: 'open', document: CAMERA_BRACKET }])(
    'goes with the document it was typed beside, on $type',
    (action) => {
      const sheet = sheetAfter(edit('joint.gap_mm', 0.4), edit(KNURL, [4.1], 5000), action);
      expect(sheet.pending.size).toBe(0);
      expect(sheet.epoch).toBe(1);
    },
  );
});

describe('the sheet', () => {
  test('opens another joint as a step that can be undone', () => {
    const sheet = sheetAfter({ type: 'open', document: CAMERA_BRACKET });
    expect(present(sheet)).toBe(CAMERA_BRACKET);
    expect(present(sheetReducer(sheet, { type: 'undo' }))).toBe(SENSOR_LID);
  });
  test('knows the fields whose text is no value, until it is one again', () => {
    const unread = sheetAfter({ type: 'text-unread', key: 'joint.gap_mm', unread: true });
    expect([...unread.unread]).toEqual(['joint.gap_mm']);
    const read = sheetReducer(unread, { type: 'text-unread', key: 'joint.gap_mm', unread: false });
    expect(read.unread.size).toBe(0);
  });
});
