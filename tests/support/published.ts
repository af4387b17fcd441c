import { expect } from 'vitest';
import { readPrinted } from './printed.ts';

/** Room for the last bit, so that a value exactly on the rounding boundary passes. */
const BOUNDARY_SLACK = 1e-9;

/**
 * Expects that a computed number agrees with a printed one within half a unit of the last printed digit.
 * The text is written as the source prints it ('14.20', not 14.2), so the tolerance is in the digits.
 */
export function expectPublished(computed: number, printed: string): void {
  const { value, halfUnit } = readPrinted(printed);
  const deviation = Math.abs(computed - value);
  expect(deviation, `${computed} against printed ${printed}`).toBeLessThanOrEqual(
    halfUnit * (1 + BOUNDARY_SLACK),
  );
}

/** Expects a ≈ b within a relative tolerance of the larger of the two. */
export function expectRelative(a: number, b: number, tolerance = 1e-12): void {
  const deviation = Math.abs(a - b);
  const room = tolerance * Math.max(Math.abs(a), Math.abs(b));
  expect(deviation, `${a} against ${b}`).toBeLessThanOrEqual(room);
}
