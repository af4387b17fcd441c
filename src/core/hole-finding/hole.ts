import type { Point } from './surface.ts';

/** What stands at an end of a hole: nothing, a floor, or a bore on the same axis that is narrower or wider. */
export type EndKind = 'open' | 'closed' | 'narrower' | 'wider';

/** How the axis lies against z, the direction of printing: within 5° of it, of the bed, or neither. */
export type Lie = 'vertical' | 'horizontal' | 'oblique';

/** A cylindrical hole found in a part. */
export interface FoundHole {
  /** Middle of the mouth on the axis, mm. */
  readonly mouth: Point;
  /** From the mouth into the part, length 1. */
  readonly direction: Point;
  readonly lie: Lie;
  /** Angle between axis and z, rad, 0 … π/2. */
  readonly tilt: number;
  /** Diameter of the circle through the corners, mm: as drawn where the facets stand in it. */
  readonly cornerDiameter: number;
  /** Twice the least distance from the axis to a facet, mm: the largest pin that enters. */
  readonly acrossFlats: number;
  /** Length of the wall at its longest side, mm; chamfers and steps are not in it. */
  readonly depth: number;
  /** Heights of the chamfers between the wall and the faces, mm, ≥ 0; a countersink is none. */
  readonly chamfers: { readonly mouth: number; readonly far: number };
  /** Length over which the wall goes all the way round, mm, ≥ 0. */
  readonly depthAllRound: number;
  /** Facets of the whole circle. */
  readonly facets: number;
  /** How much of the circle has a wall, rad, up to 2π. */
  readonly turn: number;
  readonly ends: { readonly mouth: EndKind; readonly far: EndKind };
}

/** Depth from the face that the hole is drilled into, mm; of a through hole from face to face. */
export const depthFromFace = ({ depth, chamfers }: FoundHole): number =>
  depth + chamfers.mouth + chamfers.far;
