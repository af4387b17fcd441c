import { describe, expect, test } from 'vitest';
import { journalOf, record, redo, undo } from '../../../src/app/state/journal.ts';

const by = (key: string, at: number) => ({ key, at });

describe('journal', () => {
  test('goes back and forth through what was recorded', () => {
    const three = record(record(journalOf('one'), 'two', by('a', 0)), 'three', by('b', 10));
    expect(undo(three)).toMatchObject({ past: ['one'], present: 'two', future: ['three'] });
    expect(redo(undo(three))).toMatchObject({ past: ['one', 'two'], present: 'three', future: [] });
  });
  test('stays where it is at either end', () => {
    const one = journalOf('one');
    expect(undo(one)).toEqual(one);
    expect(redo(one)).toEqual(one);
  });
  test('forgets what was undone once something new is recorded', () => {
    const back = undo(record(journalOf('one'), 'two', by('a', 0)));
    expect(record(back, 'other', by('a', 5000))).toMatchObject({
      past: ['one'],
      present: 'other',
      future: [],
    });
  });
  test('takes quick steps of one key as one', () => {
    const steps = record(record(journalOf(1), 2, by('a', 0)), 3, by('a', 999));
    expect(undo(steps).present).toBe(1);
  });
  test.each([
    ['another key', by('b', 999)],
    ['a later time', by('a', 1000)],
  ])('keeps steps apart by %s', (_, next) => {
    expect(undo(record(record(journalOf(1), 2, by('a', 0)), 3, next)).present).toBe(2);
  });
  test('does not join a step to one before an undo', () => {
    const undone = undo(record(record(journalOf(1), 2, by('a', 0)), 3, by('b', 1)));
    expect(undo(record(undone, 4, by('b', 2))).present).toBe(2);
  });
  test('keeps the latest two hundred steps', () => {
    let journal = journalOf(0);
    for (let step = 1; step <= 250; step++) journal = record(journal, step, by(String(step), step));
    expect(journal.past).toHaveLength(200);
    expect(journal.past[0]).toBe(50);
  });
});
