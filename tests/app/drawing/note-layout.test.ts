import { describe, expect, test } from 'vitest';
import { leadersCross, placeNotes } from '../../../src/app/drawing/note-layout.ts';
import type { Note } from '../../../src/app/drawing/notes.ts';
import { sectionView } from '../../../src/app/drawing/view.ts';
import { section } from './section-inputs.ts';

const note = (id: Note['id'], x: number, y: number): Note => ({
  id,
  head: ['Words'],
  detail: [],
  anchor: { x, y },
});

describe('placeNotes', () => {
  const view = sectionView(section(), 'wide');

  test('orders notes by the level of what they name', () => {
    const placed = placeNotes(section(), [note('melt', 1, 6), note('screw', 1, -4)], view, 700);
    expect(placed.map(({ note: { id } }) => id)).toEqual(['screw', 'melt']);
  });

  test('exchanges two notes whose leaders would cross', () => {
    // The first three push the leader of the fourth below the start of the fifth, which stands further right.
    const upper = [note('screw', 4, 0.7), note('washer', 4, 0.8), note('clearance', 4, 0.9)];
    const notes = [...upper, note('knurl', 0.5, 1), note('walls', 5.6, 1.1)];
    const placed = placeNotes(section(), notes, view, 700);
    expect(placed.map(({ note: { id } }) => id)).toEqual(['screw', 'washer', 'clearance', 'walls', 'knurl']);
    placed.slice(1).forEach((lower, index) => {
      expect(leadersCross(placed[index]?.leader ?? [], lower.leader)).toBe(false);
    });
  });
});

describe('leadersCross', () => {
  const leader = (x: number, y: number, end: number) => [
    { x, y },
    { x: 100, y: end },
  ];

  test('sees an upper leader that starts below the lower one', () => {
    expect(leadersCross(leader(0, 50, 10), leader(20, 5, 30))).toBe(true);
  });

  test('lets pass two that keep their order', () => {
    expect(leadersCross(leader(0, 5, 10), leader(20, 50, 30))).toBe(false);
  });
});
