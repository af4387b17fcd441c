import { describe, expect, test } from 'vitest';
import { HEADS } from '../../src/data/heads.ts';
import { THREADS } from '../../src/data/threads.ts';
import { WASHERS } from '../../src/data/washers.ts';
import { expectPublished } from '../support/published.ts';
import { theRow } from '../support/the-row.ts';

const washerOf = (thread: string) => theRow(WASHERS, (washer) => washer.thread === thread);
const threadOf = (thread: string) => theRow(THREADS, ({ id }) => id === thread);

describe('WASHERS', () => {
  test.each([
    ['M2', 2.2, 5, 0.3, 'read'],
    ['M2.5', 2.7, 6, 0.5, 'from-memory'],
    ['M3', 3.2, 7, 0.5, 'read'],
    ['M4', 4.3, 9, 0.8, 'read'],
    ['M5', 5.3, 10, 1, 'read'],
    ['M6', 6.4, 12, 1.6, 'read'],
    ['M8', 8.4, 16, 1.6, 'read'],
  ])(
    '%s holds d1 %f, d2 %f and h %f mm, %s (iso-7089)',
    (thread, holeDiameter, outsideDiameter, thickness, howKnown) => {
      expect(washerOf(thread)).toEqual({
        standard: 'ISO 7089',
        thread,
        holeDiameter,
        outsideDiameter,
        thickness,
        source: 'iso-7089',
        howKnown,
      });
    },
  );

  test.each([
    ['M2', '15.1'],
    ['M2.5', '21.7'],
    ['M3', '29.4'],
    ['M4', '47.7'],
    ['M5', '54.8'],
    ['M6', '78.9'],
    ['M8', '137.4'],
  ])('%s bears on %s mm² round the medium hole of ISO 273 (hand calculation)', (thread, printed) => {
    const hole = threadOf(thread).clearanceHoles.medium;
    expectPublished((Math.PI / 4) * (washerOf(thread).outsideDiameter ** 2 - hole ** 2), printed);
  });

  test.each(WASHERS)(
    '$thread has the fine clearance hole of ISO 273 as its own',
    ({ thread, holeDiameter }) => {
      expect(holeDiameter).toBe(threadOf(thread).clearanceHoles.fine);
    },
  );

  test.each(WASHERS)('$thread is wider than every head of its thread that bears on a face', (washer) => {
    const heads = HEADS.filter((head) => head.thread === washer.thread && head.shape === 'cylindrical');
    expect(heads.length).toBeGreaterThan(0);
    for (const head of heads) expect(washer.outsideDiameter).toBeGreaterThan(head.diameter);
  });

  test('ascend in diameter, never in reverse in thickness', () => {
    const outside = WASHERS.map((washer) => washer.outsideDiameter);
    const thickness = WASHERS.map((washer) => washer.thickness);
    expect(outside).toEqual([...new Set(outside)].sort((a, b) => a - b));
    expect(thickness).toEqual(thickness.toSorted((a, b) => a - b));
  });
});
