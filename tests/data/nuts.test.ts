import { describe, expect, test } from 'vitest';
import { NUTS } from '../../src/data/nuts.ts';
import { THREADS } from '../../src/data/threads.ts';
import { expectPublished } from '../support/published.ts';
import { theRow } from '../support/the-row.ts';

const nutOf = (thread: string) => theRow(NUTS, (nut) => nut.thread === thread);
const mediumHole = (thread: string) => theRow(THREADS, ({ id }) => id === thread).clearanceHoles.medium;

describe('NUTS', () => {
  test.each([
    ['M2', 4, 1.6, 3.1],
    ['M2.5', 5, 2, 4.1],
    ['M3', 5.5, 2.4, 4.6],
    ['M4', 7, 3.2, 5.9],
    ['M5', 8, 4.7, 6.9],
    ['M6', 10, 5.2, 8.9],
    ['M8', 13, 6.8, 11.6],
  ])('%s holds s %f, m max %f and dw min %f mm (iso-4032)', (thread, acrossFlats, thickness, bearing) => {
    expect(nutOf(thread)).toEqual({
      standard: 'ISO 4032',
      thread,
      acrossFlats,
      thickness,
      bearingDiameter: bearing,
      source: 'iso-4032',
      howKnown: 'read',
    });
  });

  test.each([
    ['M2', '3.0'],
    ['M2.5', '6.6'],
    ['M3', '7.5'],
    ['M4', '11.4'],
    ['M5', '13.6'],
    ['M6', '28.0'],
    ['M8', '42.1'],
  ])('%s bears on %s mm² round the medium hole of ISO 273 (hand calculation)', (thread, printed) => {
    const { bearingDiameter } = nutOf(thread);
    expectPublished((Math.PI / 4) * (bearingDiameter ** 2 - mediumHole(thread) ** 2), printed);
  });
});
