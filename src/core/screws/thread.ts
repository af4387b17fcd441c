import type { SourceId } from '../sources/sources.ts';

export type ThreadSystem = 'metric' | 'unified';

/**
 * A screw thread of 60°: basic sizes, and the limits of its usual tolerance (6g/6H, 2A/2B) that stripping needs.
 * Every length in mm.
 */
export interface Thread {
  readonly id: string;
  /** As the trade writes it: M3, 6-32. */
  readonly designation: string;
  readonly system: ThreadSystem;
  readonly nominalDiameter: number;
  readonly pitch: number;
  readonly limits: ThreadLimits;
  readonly clearanceHoles: ClearanceHoles;
  readonly source: SourceId;
  readonly limitsSource: SourceId;
}

export interface ThreadLimits {
  readonly externalMajorMin: number;
  readonly externalPitchMin: number;
  readonly externalMinorMin: number;
  readonly internalPitchMax: number;
  readonly internalMinorMax: number;
}

/** Clearance hole diameters, mm: ISO 273 fine, medium, coarse; ASME B18.2.8 close, normal, loose. */
export interface ClearanceHoles {
  readonly fine: number;
  readonly medium: number;
  readonly coarse: number;
  readonly source: SourceId;
}
