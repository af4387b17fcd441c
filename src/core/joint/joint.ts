import type { Compensation } from '../holes/hole-to-draw.ts';
import type { HoleBehaviour } from '../holes/print-error.ts';
import type { Host } from '../host/host.ts';
import type { ClampedMaterial, InsertMetal } from '../host/material.ts';
import type { SettingMethod } from '../inserts/insert.ts';
import type { SeatKind } from '../pull-out/limit.ts';
import type { Screw } from '../screws/screw.ts';

/** What the joint is used for; everything but 'general' stops the program. */
export type Use = 'general' | 'overhead' | 'lifting' | 'vehicle' | 'climbing' | 'pressure' | 'mains';

export interface TorqueTool {
  readonly kind: 'torque-driver' | 'hand';
  /** Relative deviation ±: 0.06 for a driver, 0.35 by hand. */
  readonly deviation: number;
  /** The settings that can be dialled, ascending, N·mm; empty: any multiple of the step. */
  readonly settings: readonly number[];
  readonly step: number;
}

export interface ClampedPart {
  readonly material: ClampedMaterial;
  readonly thickness: number;
  readonly clearanceHole: number;
}

export interface Loads {
  /** Pull along the screw that lifts the clamped part off, N. */
  readonly pull: number;
  /** Load across the screw, N, carried by friction. */
  readonly shear: number;
  readonly serviceTemperature: number;
  /** Time under load, h. */
  readonly duration: number;
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
  readonly insertMetal: InsertMetal;
  readonly holes: {
    readonly behaviour: HoleBehaviour;
    readonly compensation: Compensation;
    /** Bore over the pilot, mm. */
    readonly fit: number;
    /** Step the drawn hole is rounded to, mm. */
    readonly step: number;
  };
  readonly screw: Screw;
  readonly loads: Loads;
  readonly use: Use;
  readonly tool: TorqueTool;
  readonly factors: { readonly limits: number; readonly closed: number };
}
