import { describe, expect, test } from 'vitest';
import { boreScale } from '../../../src/app/questions/existing-hole/bore-scale.ts';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';

const sizes = { smallest: 4.11, pilot: 4.21, largest: 4.46, knurl: 4.93 };
const text = (diameter: number) => diameter.toFixed(2);
const LETTER = 7.6;

describe('boreScale', () => {
  test('puts the bore between its limits in proportion', () => {
    const { needle, fits, touches } = boreScale({ ...sizes, bore: 4.335 }, 640, text);
    expectRelative(needle, (fits[0] + fits[1]) / 2, 1e-9);
    expect(touches[0]).toBeLessThan(fits[0]);
    expect(touches[1]).toBeGreaterThan(fits[1]);
  });
  test('keeps everything on the line, however far the bore is off and however narrow the page', () => {
    const bore = fc.double({ min: 0.2, max: 60, noNaN: true });
    fc.assert(
      fc.property(bore, fc.integer({ min: 300, max: 1100 }), (one, width) => {
        const { ticks, needle, labels } = boreScale({ ...sizes, bore: one }, width, text);
        for (const x of [...ticks, needle]) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(width);
        }
        for (const { x, anchor, text: words } of labels) {
          const half = (words.length * LETTER) / 2;
          const left = anchor === 'start' ? x : anchor === 'end' ? x - 2 * half : x - half;
          expect(left).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });
});
