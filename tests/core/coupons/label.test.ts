import { describe, expect, test } from 'vitest';
import {
  areaWithin,
  type Corners,
  LABEL_HEIGHT,
  labelOutlines,
  labelVolume,
  labelWidth,
  raisedBy,
  STROKE,
} from '../../../src/core/coupons/label.ts';
import { expectRelative } from '../../support/published.ts';

/** Two lines of a nozzle of 0.4 mm. */
const LEAST_STROKE = 0.8;

const outlinesOf = (number: number) => labelOutlines({ number, at: [0, 0], raised: 0.6 });

interface Side {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

const sidesOf = (corners: Corners): readonly Side[] =>
  corners.map((from, place) => ({ from, to: corners[(place + 1) % corners.length] ?? from }));

/** Distance along a ray to a side, infinite where it misses. */
function reach(
  from: readonly [number, number],
  ray: readonly [number, number],
  { from: a, to: b }: Side,
): number {
  const [sx, sy] = [b[0] - a[0], b[1] - a[1]];
  const det = sx * ray[1] - sy * ray[0];
  if (Math.abs(det) < 1e-12) return Number.POSITIVE_INFINITY;
  const along = (sx * (a[1] - from[1]) - sy * (a[0] - from[0])) / det;
  const share = (ray[0] * (a[1] - from[1]) - ray[1] * (a[0] - from[0])) / det;
  return along > 1e-9 && share >= 0 && share <= 1 ? along : Number.POSITIVE_INFINITY;
}

const meet = (one: Side, other: Side) =>
  [one.from, one.to].some((corner) =>
    [other.from, other.to].some(([x, y]) => x === corner[0] && y === corner[1]),
  );

/**
 * Every way across from a side at a right angle, to the left or to the right of it, mm. Its neighbours are left out: every
 * corner is narrow at its very tip.
 */
function widthsAcross(number: number, turn: 1 | -1): readonly number[] {
  const sides = outlinesOf(number).flatMap(sidesOf);
  return sides.flatMap((across) => {
    const { from, to } = across;
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const size = Math.hypot(dx, dy);
    const ray = [(-turn * dy) / size, (turn * dx) / size] as const;
    return [0.1, 0.3, 0.5, 0.7, 0.9].map((share) => {
      const start = [from[0] + share * dx, from[1] + share * dy] as const;
      return Math.min(...sides.filter((side) => !meet(across, side)).map((side) => reach(start, ray, side)));
    });
  });
}

const DIGITS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];

describe('the digits', () => {
  test.each([...DIGITS, 10, 29])(
    'of %i have strokes and openings as wide as two lines of a 0.4 mm nozzle',
    (number) => {
      // Left of an island's outline is plastic; left of an opening's is the opening itself: each way across is one of the two.
      for (const width of [...widthsAcross(number, 1), ...widthsAcross(number, -1)]) {
        expect(width).toBeGreaterThanOrEqual(LEAST_STROKE);
      }
    },
  );
  test.each(DIGITS)('of %i are as high as every other and no wider than a digit', (digit) => {
    const corners = outlinesOf(digit).flat();
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
    expectRelative(Math.max(...ys) - Math.min(...ys), LABEL_HEIGHT);
    expect(Math.max(...xs) - Math.min(...xs)).toBeLessThanOrEqual(labelWidth(digit) + 1e-9);
  });
  test.each(DIGITS)('of %i go round counter-clockwise', (digit) => {
    for (const corners of outlinesOf(digit)) expect(areaWithin(corners)).toBeGreaterThan(0);
  });
  test('differ from each other, also turned upside down, but 0, 8 and the pair 6 and 9', () => {
    const filled = (digit: number, turned: 1 | -1) => {
      const outlines = outlinesOf(digit);
      const cells = [...Array(24).keys()].map((place) => {
        const [x, y] = [(place % 4) - 1.5, Math.floor(place / 4) - 2.5].map(
          (value) => value * turned * STROKE,
        );
        const crossed = outlines.flatMap(sidesOf).filter((side) => {
          const start = [x ?? 0, (y ?? 0) + LABEL_HEIGHT / 2] as const;
          return reach(start, [1, 1e-3], side) < Number.POSITIVE_INFINITY;
        });
        return crossed.length % 2;
      });
      return cells.join('');
    };
    const upright = DIGITS.map((digit) => filled(digit, 1));
    expect(new Set(upright).size).toBe(10);
    const same = DIGITS.flatMap((digit) =>
      DIGITS.filter((other) => filled(digit, 1) === filled(other, -1)).map((other) => `${digit}${other}`),
    );
    for (const pair of same) expect(['00', '88', '69', '96', '22', '55', '11']).toContain(pair);
  });
});

describe('a raised number', () => {
  test('is 3.6 mm wide with one digit, 8.1 mm with two', () => {
    expectRelative(labelWidth(7), 3.6);
    expectRelative(labelWidth(31), 8.1);
  });
  test('stands with the middle of its lower edge where it is put', () => {
    const corners = labelOutlines({ number: 88, at: [11, 7], raised: 0.6 }).flat();
    const xs = corners.map(([x]) => x);
    expectRelative((Math.min(...xs) + Math.max(...xs)) / 2, 11);
    expectRelative(Math.min(...corners.map(([, y]) => y)), 7);
  });
  test('holds the plastic of its bars: 8 as two openings in a plate without corners', () => {
    // In strokes: 4 · 6 less four corners of 0.7²/2 less 2 · 1.5 twice.
    const strokes = 4 * 6 - 4 * (0.7 ** 2 / 2) - 2 * 2 * 1.5;
    expectRelative(labelVolume({ number: 8, raised: 0.7 }), strokes * 0.9 ** 2 * 0.7);
  });
  test('holds as much as its digits do alone', () => {
    const alone = [4, 0, 7].reduce((sum, number) => sum + labelVolume({ number, raised: 0.6 }), 0);
    expectRelative(labelVolume({ number: 407, raised: 0.6 }), alone);
  });
  test('rises by whole layers on top of a print, by 0.6 mm from its side', () => {
    expectRelative(raisedBy({ axis: 'along-build', layerHeight: 0.28 }).value, 0.84);
    expectRelative(raisedBy({ axis: 'along-build', layerHeight: 0.2 }).value, 0.6);
    expectRelative(raisedBy({ axis: 'across-build', layerHeight: 0.28 }).value, 0.6);
  });
});
