import type { HostMaterial } from './material.ts';

export type InsertAxis = 'along-build' | 'across-build';

/**
 * How the slicer counts wall lines: rounded beads overlap their neighbours; plain ones lie side by side at full width.
 */
export type WallConvention = 'rounded-beads' | 'plain-beads';

/** Shape of the infill as far as the wall plug's strength asks. */
export type InfillFamily = 'prismatic' | 'cellular';

export type Wall =
  | {
      readonly kind: 'lines';
      readonly count: number;
      readonly lineWidth: number;
      readonly convention: WallConvention;
    }
  | { readonly kind: 'measured'; readonly thickness: number; readonly lineWidth: number };

/** The printed part round the insert; lengths in mm, density 0…1. */
export interface Host {
  readonly material: HostMaterial;
  readonly axis: InsertAxis;
  readonly wall: Wall;
  readonly layerHeight: number;
  readonly infill: { readonly pattern: string; readonly family: InfillFamily; readonly density: number };
  /** Solid layers at the face of the insert, mm of thickness. */
  readonly topSkin: number;
  /** Material under the face in the direction of the insert, mm. */
  readonly thickness: number;
  /** Outside diameter of a free-standing boss, mm; absent: the insert sits in a larger part. */
  readonly bossDiameter?: number;
}
