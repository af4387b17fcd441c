/** A function that changes sign once between two ends. */
export interface Bracket {
  readonly f: (x: number) => number;
  readonly low: number;
  readonly high: number;
  /** Largest error of the root; 0 asks for all that double precision has. */
  readonly tolerance?: number;
}

const RELATIVE_TOLERANCE = 2 ** -52;

/**
 * Root of a monotone function between two ends, by bisection helped by inverse quadratic interpolation.
 *
 *     x with f(x) = 0, low ≤ x ≤ high
 *
 * The method of T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145–149: it never leaves the bracket
 * and halves it where interpolation is not safe.
 *
 * @param bracket - f [-]; ends low and high [-], f of opposite sign or zero there; tolerance of the root [-], ≥ 0
 * @returns x [-]
 */
export function rootInBracket({ f, low, high, tolerance = 0 }: Bracket): number {
  let near = { x: high, y: f(high) };
  let far = { x: low, y: f(low) };
  if (near.y * far.y > 0) throw new RangeError('rootInBracket: no change of sign between the ends');
  let former = far;
  let share = 0.5;
  for (;;) {
    const best = Math.abs(near.y) < Math.abs(far.y) ? near : far;
    const least = (RELATIVE_TOLERANCE * Math.abs(best.x) + tolerance / 2) / Math.abs(far.x - near.x);
    if (best.y === 0 || !(least < 0.5)) return best.x;
    const x = near.x + Math.min(1 - least, Math.max(least, share)) * (far.x - near.x);
    const next = { x, y: f(x) };
    former = near;
    if (Math.sign(next.y) !== Math.sign(near.y)) {
      former = far;
      far = near;
    }
    near = next;
    share = interpolatedShare(near, far, former);
  }
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where between near and far to look next, 0 … 1: by inverse quadratic interpolation where it is safe, else half. */
function interpolatedShare(near: Point, far: Point, former: Point): number {
  const xi = (near.x - far.x) / (former.x - far.x);
  const phi = (near.y - far.y) / (former.y - far.y);
  if (!(phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi)) return 0.5;
  return (
    (near.y / (far.y - near.y)) * (former.y / (far.y - former.y)) +
    ((former.x - near.x) / (far.x - near.x)) * (near.y / (former.y - near.y)) * (far.y / (former.y - far.y))
  );
}
