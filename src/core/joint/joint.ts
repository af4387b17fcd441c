import type { HoleCalibration } from '../holes/calibrate-holes.ts';
import type { ExistingHole } from '../holes/existing-hole.ts';
import type { Compensation } from '../holes/hole-to-draw.ts';
import type { HoleBehaviour } from '../holes/print-error.ts';
import type { CompensationRule } from '../holes/slicer-compensation.ts';
import type { Host } from '../host/host.ts';
import type { ClampedMaterial, InsertMetal } from '../host/material.ts';
import type { SettingMethod } from '../inserts/insert.ts';
import type { Pivot } from '../loads/out-of-plane.ts';
import type { ScrewPattern } from '../loads/pattern.ts';
import type { PartLoad, PatternLoads } from '../loads/screw-loads.ts';
import type { TestedSetup } from '../pull-out/bond.ts';
import type { SeatKind } from '../pull-out/limit.ts';
import type { Screw } from '../screws/screw.ts';

/** What the joint is used for; everything but 'general' stops the program. */
export type Use = 'general' | 'overhead' | 'lifting' | 'vehicle' | 'climbing' | 'pressure' | 'mains';

export interface TorqueTool {
  readonly kind: 'torque-driver' | 'hand';
  /** Relative deviation ±: 0.06 for a driver, 0.35 by hand. */
  readonly deviation: number;
  /** The settings that can be dialled, ascending, N·mm; none: every multiple of the step. */
  readonly settings: readonly number[];
  readonly step: number;
}

/** A metal spacer through the clamped part, as long as the part is thick: the clamp force bypasses the plastic. */
export interface Sleeve {
  readonly outsideDiameter: number;
  readonly material: Extract<ClampedMaterial, { readonly kind: 'metal' }>;
}

export interface ClampedPart {
  readonly material: ClampedMaterial;
  readonly thickness: number;
  /** Hole for the screw; with a sleeve the hole of the sleeve. */
  readonly clearanceHole: number;
  readonly sleeve?: Sleeve;
}

export interface Loads {
  /** Pull along the screw that lifts the clamped part off, N. */
  readonly pull: number;
  /** Load across the screw, N, carried by friction. */
  readonly shear: number;
  readonly serviceTemperature: number;
  /** Time under load, h. */
  readonly duration: number;
  /** How often the screw is tightened again: after an hour, a day, a week, a month; 0 … 4. */
  readonly retightenings: number;
}

/** What is known of the holes of the printer that a joint is made on. */
export interface PrinterHoles {
  readonly name: string;
  readonly material: { readonly id: string; readonly name: string };
  readonly layerHeight: number;
  readonly calibration: HoleCalibration;
  readonly rule: CompensationRule;
}

/** The pattern of screws that the joint's screw is the worst of, and what each of them has to hold. */
export interface ScrewGroup {
  readonly pattern: ScrewPattern;
  readonly load: PartLoad;
  readonly pivot: Pivot;
  readonly loads: PatternLoads;
}

/** One screw, one clamped part, one insert in one printed part. Lengths mm, forces N. */
export interface Joint {
  readonly clamped: ClampedPart;
  /** Free distance between clamped part and printed face, mm. */
  readonly gap: number;
  /** How far the insert sits below the printed face, mm; 0 is flush. */
  readonly sunk: number;
  readonly insertSide: 'near-side' | 'far-side';
  /** Absent: the seat is found from the geometry. */
  readonly seatOverride?: SeatKind;
  readonly host: Host;
  readonly setting: SettingMethod;
  /** What coupons of this set-up say of the bond; absent: nobody has pulled one. */
  readonly tested?: TestedSetup;
  readonly insertMetal: InsertMetal;
  readonly holes: {
    readonly behaviour: HoleBehaviour;
    readonly compensation: Compensation;
    /** Bore over the pilot, mm. */
    readonly fit: number;
    /** Step the drawn hole is rounded to, mm. */
    readonly step: number;
    /** Corners of the polygon that leaves the CAD program for a circle; absent: a true circle. */
    readonly facets?: number;
    /** The printer whose holes were read; absent: an unknown one. */
    readonly printer?: PrinterHoles;
    /** A hole that is there and is not drawn anew; absent: it is designed. */
    readonly existing?: ExistingHole;
  };
  readonly screw: Screw;
  /** What the worst screw of the group has to hold. */
  readonly loads: Loads;
  readonly group: ScrewGroup;
  /** Shaking that turns screws loose. */
  readonly vibration: 'none' | 'present';
  readonly threadLocking: 'none' | 'fluid';
  readonly use: Use;
  readonly tool: TorqueTool;
  /** Rows to try where a joint fails. */
  readonly alternatives: { readonly sleeveMaterial?: Sleeve['material'] };
  readonly factors: { readonly limits: number; readonly closed: number };
}
