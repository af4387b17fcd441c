import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import { type Changes, givenJoint, insertRecord } from '../support/joints.ts';

/** The next larger screw of a joint with a thread, head and hole; the drawer holds what the thread says. */
const biggerThan = (thread: string, clearanceHole_mm: number, head = 'ISO 4762') => {
  const changes: Changes = {
    screw: { thread, head },
    clamped: { clearanceHole_mm },
    drawer: [insertRecord()],
  };
  return givenJoint(changes).screw.alternatives.bigger;
};

describe('the next larger screw', () => {
  test.each([
    ['M2', 2.4, 'M2.5'],
    ['M2.5', 2.9, 'M3'],
    ['M3', 3.4, 'M4'],
    ['M6', 6.6, 'M8'],
  ])('than %s is the next of its system', (thread, hole, next) => {
    const bigger = biggerThan(thread, hole);
    expect(bigger).toMatchObject({
      thread: { id: next },
      head: { standard: 'ISO 4762', thread: next },
      washer: { thread: next },
    });
    expect(bigger?.standardLengths).toEqual(
      CATALOGUE.screwLengths.find((row) => row.thread === next)?.lengths,
    );
  });
  test('of an inch thread stays an inch thread, without a washer', () => {
    const bigger = biggerThan('UNC-4-40', 3.2, 'ASME B18.3 cap');
    expect(bigger?.thread.id).toBe('UNC-6-32');
    expect(bigger?.washer).toBeUndefined();
  });
  test('is none above the largest', () => {
    expect(biggerThan('M8', 9)).toBeUndefined();
  });
  test('is none where its head is not made', () => {
    const heads = CATALOGUE.heads.filter((row) => row.standard === 'ISO 7380-1').map((row) => row.thread);
    expect(heads).toContain('M3');
    expect(biggerThan('M3', 3.4, 'ISO 7380-1')?.head.standard).toBe('ISO 7380-1');
  });
});
