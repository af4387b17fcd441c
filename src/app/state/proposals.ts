import { centroidOf, screwPositions } from '../../core/loads/pattern.ts';
import type { JointDocument } from '../../storage/document.ts';
import { patternOf } from '../../storage/resolve-loads.ts';

type GivenJoint = JointDocument['joint'];
type GivenPattern = GivenJoint['pattern'];
type Sleeve = NonNullable<GivenJoint['clamped']['sleeve']>;

/** To the hundredth that a caliper shows. */
const readable = (length: number): number => Number(length.toFixed(2));

/** Wall of a spacer on both sides together that is begun with, mm. */
const SLEEVE_WALLS = 2;
/** Holes between the outermost screw and the edge that is begun with: a short arm, so the pulls come out large. */
const HOLES_TO_EDGE = 2;
/** Where a layout begins, mm. */
const BEGIN = { columns: 2, rows: 2, spacingX_mm: 40, spacingY_mm: 30, count: 4, diameter_mm: 40 };

/** A steel spacer with a wall of one millimetre round the hole. */
export const proposedSleeve = (hole: number): Sleeve => ({
  material: 'steel',
  outsideDiameter_mm: sleeveAround(hole),
});

export const sleeveAround = (hole: number): number => readable(hole + SLEEVE_WALLS);

export const edgeBeyond = (farthest: number, hole: number): number =>
  Math.ceil(farthest + HOLES_TO_EDGE * hole);

/** The edge of the part two holes beyond the outermost screw, to be measured. */
export function proposedEdge({
  pattern,
  clamped,
}: Pick<GivenJoint, 'pattern' | 'clamped'>): Extract<GivenJoint['loads']['pivot'], { kind: 'edge' }> {
  const positions = screwPositions(patternOf(pattern));
  const centre = centroidOf(positions);
  const farthest = (axis: 'x' | 'y') =>
    Math.max(...positions.map((position) => Math.abs(position[axis] - centre[axis])));
  return {
    kind: 'edge',
    x_mm: edgeBeyond(farthest('x'), clamped.clearanceHole_mm),
    y_mm: edgeBeyond(farthest('y'), clamped.clearanceHole_mm),
  };
}

/** The layout of another kind that a person begins with; a free one has the screws where they were. */
export function patternOfKind(pattern: GivenPattern, kind: GivenPattern['kind']): GivenPattern {
  if (pattern.kind === kind) return pattern;
  const { columns, rows, spacingX_mm, spacingY_mm, count, diameter_mm } = BEGIN;
  switch (kind) {
    case 'single':
      return { kind };
    case 'rectangular':
      return { kind, columns, rows, spacingX_mm, spacingY_mm };
    case 'circular':
      return { kind, count, diameter_mm };
    case 'free':
      return {
        kind,
        positions_mm: screwPositions(patternOf(pattern)).map(({ x, y }) => ({
          x: readable(x),
          y: readable(y),
        })),
      };
  }
}

type Place = { readonly x: number; readonly y: number };

/** Distance of a new screw of a free pattern from the last one, mm. */
const NEXT_SCREW = 20;

/** The places with one more beside the last, to be moved where it is. */
export function withScrew(places: readonly Place[]): readonly Place[] {
  const last = places.at(-1) ?? { x: 0, y: 0 };
  return [...places, { x: readable(last.x + NEXT_SCREW), y: last.y }];
}
