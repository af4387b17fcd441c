/** A turn and a shift, row by row: x' = x · m[0] + y · m[3] + z · m[6] + m[9], and so on. */
export type Transform = readonly number[];

export const UNMOVED: Transform = [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0];

/** The twelve numbers of a transform as written in a 3MF file; undefined where they are not. */
export function readTransform(text: string | undefined): Transform | undefined {
  if (text === undefined) return UNMOVED;
  const numbers = text.trim().split(/\s+/).map(Number);
  return numbers.length === 12 && numbers.every(Number.isFinite) ? numbers : undefined;
}

/** First one transform, then another. */
export function chained(first: Transform, then: Transform): Transform {
  return Array.from({ length: 12 }, (_, place) => {
    const [row, column] = [Math.floor(place / 3), place % 3];
    let sum = row === 3 ? (then[9 + column] ?? 0) : 0;
    for (let k = 0; k < 3; k += 1) sum += (first[3 * row + k] ?? 0) * (then[3 * k + column] ?? 0);
    return sum;
  });
}

/** Whether a transform turns a surface inside out. */
export function isMirrored(m: Transform): boolean {
  const at = (place: number) => m[place] ?? 0;
  const determinant =
    at(0) * (at(4) * at(8) - at(5) * at(7)) -
    at(1) * (at(3) * at(8) - at(5) * at(6)) +
    at(2) * (at(3) * at(7) - at(4) * at(6));
  return determinant < 0;
}
