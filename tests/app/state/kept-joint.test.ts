import { beforeEach, describe, expect, test } from 'vitest';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { keepJoint } from '../../../src/app/state/keep-joint.ts';
import { keptJoint } from '../../../src/app/state/kept-joint.ts';
import { DOCUMENT_VERSION } from '../../../src/storage/document.ts';

/** The part of the browser's storage that is used, in memory. */
class MemoryStorage implements Storage {
  readonly map = new Map<string, string>();
  get length() {
    return this.map.size;
  }
  clear() {
    this.map.clear();
  }
  getItem(key: string) {
    return this.map.get(key) ?? null;
  }
  key(index: number) {
    return [...this.map.keys()][index] ?? null;
  }
  removeItem(key: string) {
    this.map.delete(key);
  }
  setItem(key: string, value: string) {
    this.map.set(key, value);
  }
}

const KEY = 'knurlwright joint';
let memory = new MemoryStorage();
const storage = () => memory;
beforeEach(() => {
  memory = new MemoryStorage();
});

describe('keptJoint', () => {
  test('is nothing on the first visit', () => {
    expect(keptJoint(storage)).toEqual({ kind: 'nothing' });
  });
  test('is what was kept', () => {
    expect(keepJoint(SENSOR_LID, storage)).toBe(true);
    expect(keptJoint(storage)).toEqual({ kind: 'read', document: SENSOR_LID });
  });
  test.each([
    ['damaged', '{"format":', 'not-json'],
    ['newer', JSON.stringify({ ...SENSOR_LID, version: DOCUMENT_VERSION + 1 }), 'newer-version'],
    ['of another kind', '{"format":"something"}', 'not-ours'],
    ['naming a row that is gone', JSON.stringify(SENSOR_LID).replace('"petg"', '"wood"'), 'unknown-row'],
  ])('sets a text aside that is %s, whole and under a key of its own', (_, text, code) => {
    memory.setItem(KEY, text);
    expect(keptJoint(storage)).toMatchObject({ kind: 'set-aside', text, moved: true, refusals: [{ code }] });
    expect([...memory.map]).toEqual([['knurlwright joint set aside 1', text]]);
  });
  test('sets a second text aside beside the first', () => {
    memory.setItem('knurlwright joint set aside 1', 'first');
    memory.setItem(KEY, 'second');
    keptJoint(storage);
    expect([...memory.map.values()]).toEqual(['first', 'second']);
  });
  test('leaves the text in its place when it cannot be moved', () => {
    memory.setItem(KEY, 'broken');
    memory.setItem = () => {
      throw new Error('full');
    };
    expect(keptJoint(storage)).toMatchObject({ kind: 'set-aside', moved: false });
    expect(memory.getItem(KEY)).toBe('broken');
  });
  test('is nothing where storage is closed, and keeping says so', () => {
    const closed = () => {
      throw new Error('closed');
    };
    expect(keptJoint(closed)).toEqual({ kind: 'nothing' });
    expect(keepJoint(SENSOR_LID, closed)).toBe(false);
  });
});
