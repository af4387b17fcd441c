/** Where one screw of a pattern sits in the plane of the joint, mm. */
export interface ScrewPosition {
  readonly x: number;
  readonly y: number;
}

/** How the screws of a joint are laid out round the origin of the loads. */
export type ScrewPattern =
  | { readonly kind: 'single' }
  | {
      readonly kind: 'rectangular';
      readonly columns: number;
      readonly rows: number;
      readonly spacingX: number;
      readonly spacingY: number;
    }
  | { readonly kind: 'circular'; readonly count: number; readonly diameter: number }
  | { readonly kind: 'free'; readonly positions: readonly ScrewPosition[] };

/**
 * Positions of the screws of a pattern.
 *
 * Rectangular and circular patterns are centred on the origin; a circular one begins on the x axis.
 *
 * @param pattern - counts [-], ≥ 1; spacings and diameter [mm], > 0; or free positions [mm], at least one
 * @returns positions [mm], as many as there are screws
 * @source own-model layout
 * @example 2 × 2 with spacings 80 and 60 mm gives (±40, ±30) mm
 */
export function screwPositions(pattern: ScrewPattern): readonly ScrewPosition[] {
  switch (pattern.kind) {
    case 'single':
      return [{ x: 0, y: 0 }];
    case 'rectangular':
      return grid(pattern.rows).flatMap((row) =>
        grid(pattern.columns).map((column) => ({ x: column * pattern.spacingX, y: row * pattern.spacingY })),
      );
    case 'circular':
      return Array.from({ length: pattern.count }, (_, index) => {
        const angle = (2 * Math.PI * index) / pattern.count;
        return { x: (pattern.diameter / 2) * Math.cos(angle), y: (pattern.diameter / 2) * Math.sin(angle) };
      });
    case 'free':
      return pattern.positions;
  }
}

/** Places of a row of a given count about its middle, in spacings. */
const grid = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => index - (count - 1) / 2);

/** Centroid of screws of equal size, mm. */
export function centroidOf(positions: readonly ScrewPosition[]): ScrewPosition {
  const n = positions.length;
  return {
    x: positions.reduce((sum, { x }) => sum + x, 0) / n,
    y: positions.reduce((sum, { y }) => sum + y, 0) / n,
  };
}
