import { describe, expect, test } from 'vitest';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { admit } from '../../../src/app/state/admit.ts';
import { answeringWords } from '../../../src/app/state/path-words.ts';
import { type SheetAction, sheetOf, sheetReducer } from '../../../src/app/state/sheet.ts';
import { stalenessOf } from '../../../src/app/state/staleness.ts';

const typed = (path: string, value: unknown): SheetAction => ({
  type: 'edit',
  key: `${path}@list`,
  edits: [{ path, value }],
  at: 0,
  admit,
});
const after = (actions: readonly SheetAction[]) => actions.reduce(sheetReducer, sheetOf(SENSOR_LID));
const staleAfter = (...actions: readonly SheetAction[]) => stalenessOf(after(actions), 'slim-long');
const answeringAfter = (...actions: readonly SheetAction[]) =>
  answeringWords(after(actions).journal.present, staleAfter(...actions).waiting);

describe('stalenessOf', () => {
  test('is fresh as long as every field was taken', () => {
    expect(staleAfter(typed('joint.gap_mm', 0.3))).toEqual({ answers: false, ranking: false, waiting: [] });
  });
  test('names the value that is answered instead of a refused one', () => {
    const narrow = typed('joint.clamped.clearanceHole_mm', 2.2);
    expect(staleAfter(narrow)).toMatchObject({ answers: true, ranking: true });
    expect(answeringAfter(narrow)).toBe('clearance hole ⌀ 3.4\u00a0mm');
  });
  test('concerns the answers where the insert shown was typed wrong', () => {
    const long = typed('drawer.1.length_mm', [40]);
    expect(staleAfter(long)).toMatchObject({ answers: true, ranking: true });
    expect(answeringAfter(long)).toBe('length 5.7\u00a0mm');
  });
  test('concerns the ranking alone where another insert was', () => {
    expect(staleAfter(typed('drawer.3.pilotDiameter_mm', [6.1]))).toMatchObject({
      answers: false,
      ranking: true,
    });
  });
  test('holds for a text that is no value, until it is one', () => {
    const unread = (is: boolean): SheetAction => ({
      type: 'text-unread',
      key: 'joint.loads.pull_N@list',
      unread: is,
    });
    expect(staleAfter(unread(true)).answers).toBe(true);
    expect(answeringAfter(unread(true))).toBe('pull on this joint 70\u00a0N');
    expect(staleAfter(unread(true), unread(false)).answers).toBe(false);
  });
  test('does not come from a name that was refused', () => {
    expect(staleAfter(typed('name', ''))).toMatchObject({ answers: false, ranking: false });
  });
});
