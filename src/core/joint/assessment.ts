import type { ExistingHole } from '../holes/existing-hole.ts';
import type { FitWindow } from '../holes/fit-window.ts';
import type { InsertDimensions } from '../inserts/dimensions.ts';
import type { Capacity, FailureMode, LoadPath, SeatKind } from '../pull-out/limit.ts';
import type { Derived } from '../sources/derived.ts';
import type { Use } from './joint.ts';

/** The bore as it is to be printed and drawn. */
export interface HoleDesign {
  /** The hole that is there already: diameter and depth are then given, not proposed. */
  readonly existing?: ExistingHole;
  /** Bore that the insert wants. */
  readonly intended: Derived;
  /** Bore that it is set into: the same, or that of the hole that is there. */
  readonly boreAsPrinted: Derived;
  /** How far the printer closes the drawn hole, mm, negative when it closes. */
  readonly printError: Derived;
  /** Diameter to draw in CAD, rounded to the step; of a hole that is there as it was given. */
  readonly drawn: Derived;
  /** Depth to draw, whole layers; of a hole that is there as it was given, else as it would have to be. */
  readonly depth: Derived;
  readonly meltVolume: Derived;
  /** Height that the displaced plastic fills in the bore below the insert. */
  readonly meltHeight: Derived;
  /** Room in the hole below the insert. */
  readonly well: Derived;
  /** What is left of the part under the hole. */
  readonly floor: Derived;
  /** Leg of the 45° chamfer at the mouth. */
  readonly chamfer: Derived;
  readonly bossDiameter: Derived;
  /** Wall that the joint's own lines give. */
  readonly wall: Derived;
  /** Lines that the boss diameter asks for. */
  readonly wallLines: Derived;
  /** Radial bite of the knurl. */
  readonly bite: Derived;
  readonly biteFactor: Derived;
  readonly window: FitWindow;
}

export type SeatReason =
  | 'clearance-smaller-than-knurl'
  | 'clearance-reaches-knurl'
  | 'gap-open'
  | 'insert-sunk'
  | 'insert-from-far-side'
  | 'overruled';

export interface SeatFinding {
  readonly kind: SeatKind;
  readonly reason: SeatReason;
  /** What the geometry alone gives, also when a person has overruled it. */
  readonly fromGeometry: SeatKind;
  readonly clearanceHole: number;
  readonly knurlDiameter: number;
  readonly gap: number;
  readonly sunk: number;
}

export type ScrewChoice =
  | {
      readonly kind: 'chosen';
      readonly length: Derived;
      readonly grip: Derived;
      /** Length of thread that carries in the insert. */
      readonly engagement: Derived;
      /** How far the tip stands beyond the insert's inner end; negative: it ends inside. */
      readonly overrun: Derived;
      readonly choice: 'standard' | 'fixed';
    }
  | {
      readonly kind: 'refused';
      readonly code: 'too-short' | 'bottoms';
      readonly grip: Derived;
      readonly leastLength: number;
      readonly greatestLength: number;
      readonly available: readonly number[];
    };

/** A failure mode beside what loads it, for a short load. */
export interface Limit {
  readonly mode: FailureMode;
  readonly path: LoadPath;
  readonly capacity: Capacity;
  readonly demand: Derived;
  /** Characteristic capacity over demand; absent when nothing loads it. */
  readonly factor?: number;
  readonly governs: boolean;
  /** Largest torque to dial as far as this mode asks, also after the time, N·mm; absent on the pull path. */
  readonly allows?: Derived;
}

/** One change that would open a closed torque window. */
export type Opening =
  | 'seat-on-insert'
  | 'oiled-thread'
  | 'torque-driver'
  | 'finer-settings'
  | 'stronger-screw'
  | 'more-walls'
  | 'solid-infill'
  | 'washer'
  | 'less-pull';

export type TorqueWindow =
  | {
      readonly kind: 'window';
      readonly least: Derived;
      readonly most: Derived;
      /** Most torque that a short load would leave, N·mm: the time under load takes nothing off it. */
      readonly mostAtOnce: Derived;
      readonly dial: Derived;
      readonly limitedBy: FailureMode;
      readonly clampForceLow: Derived;
      readonly clampForceHigh: Derived;
    }
  | {
      readonly kind: 'refused';
      /** no-window: least above most; no-setting: the tool has no setting between them. */
      readonly code: 'no-window' | 'no-setting';
      readonly least: Derived;
      readonly most: Derived;
      readonly mostAtOnce: Derived;
      readonly limitedBy: FailureMode;
      readonly openedBy: readonly Opening[];
    };

export type NoticeCode =
  | 'hole-outside-fit-range'
  | 'hole-rarely-fits'
  | 'above-service-temperature'
  | 'countersunk-wedges-printed-part'
  | 'printed-part-on-insert-ring'
  | 'seat-overruled'
  | 'infill-below-practice'
  | 'wall-below-practice'
  | 'boss-below-practice'
  | 'floor-below-practice'
  | 'cold-setting-may-split'
  | 'short-insert'
  | 'elastomer-host'
  | 'tightened-by-hand'
  | 'bond-untested'
  | 'bond-tested'
  | 'gauge-was-compensated'
  | 'printer-of-other-material'
  | 'printer-of-other-layers'
  | 'few-holes-read'
  | 'creep-extrapolated'
  | 'creep-little-known'
  | 'warmth-little-known'
  | 'window-hangs-on-little-known'
  | 'most-torque-by-time'
  | 'vibration'
  | 'breaking-torque-unknown'
  | 'setting-above-breaking-torque'
  | 'readings-scatter'
  | 'knurled-length-estimated'
  | 'threadlocker-cracks-host'
  | 'dial-above-breaking-torque'
  | 'strengths-low-confidence'
  | 'no-load-given'
  | 'insert-across-layers';

/** Something to know that does not refuse the answer; the app words it. */
export interface Notice {
  readonly code: NoticeCode;
  /** What it says: a number that was computed with the way to it. */
  readonly facts: Readonly<Record<string, number | string | Derived>>;
}

export type Stop =
  | { readonly code: 'use-endangers-people'; readonly use: Exclude<Use, 'general'> }
  | { readonly code: 'host-does-not-melt'; readonly material: string }
  | {
      readonly code: 'too-near-softening';
      readonly material: string;
      readonly serviceTemperature: number;
      readonly softening: number;
      readonly greatest: number;
      /** Both at the other end of what is known; absent where softening is known well enough. */
      readonly atBest?: { readonly softening: number; readonly greatest: number };
    };

/** Everything found about one joint with one insert. */
export interface JointAssessment {
  readonly insertId: string;
  readonly dimensions: InsertDimensions;
  readonly hole: HoleDesign;
  readonly seat: SeatFinding;
  readonly screw: ScrewChoice;
  readonly limits: readonly Limit[];
  /** The mode with the smallest factor. */
  readonly governing: FailureMode;
  readonly torque: TorqueWindow;
  /** Share of the preload that is left after the time under load. */
  readonly preloadLeft: Derived;
  /** The same at the best end of what is known; absent where nothing about it is in doubt. */
  readonly preloadLeftAtBest?: Derived;
  /**
   * Largest multiple of the given pull and shear at which every answer still holds; absent when no load is given.
   */
  readonly loadReserve?: Derived;
  /** Smallest characteristic force of all modes that the pull loads: what the insert holds. */
  readonly holds: Capacity;
  readonly holdsMode: FailureMode;
}
