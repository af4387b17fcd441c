import type { Host } from '../host/host.ts';
import type { InsertMetal, PrintedMaterial } from '../host/material.ts';
import type { HostStrengths, Strength } from '../host/strengths.ts';
import type { InsertDimensions } from '../inserts/dimensions.ts';
import type { SettingMethod } from '../inserts/insert.ts';
import type { BearingFace } from '../screws/head-bearing.ts';
import type { Screw } from '../screws/screw.ts';
import type { Derived } from '../sources/derived.ts';
import type { Bond } from './bond.ts';
import type { Capacity, FailureMode, LoadPath, SeatKind } from './limit.ts';

/** What the head presses on: metal up to a limiting pressure, or a polymer with its strength at service temperature. */
export type Contact =
  | { readonly kind: 'metal'; readonly limitingPressure: number }
  | { readonly kind: 'printed'; readonly polymer: PrintedMaterial; readonly compressive: Strength };

/** Everything that a failure mode may ask of a joint. Lengths mm, stresses MPa. */
export interface Situation {
  readonly insert: InsertDimensions;
  readonly setting: SettingMethod;
  readonly insertMetal: InsertMetal;
  readonly host: Host;
  readonly material: PrintedMaterial;
  readonly strengths: HostStrengths;
  readonly bond: Bond;
  readonly bore: Derived;
  readonly bite: Derived;
  readonly biteFactor: Derived;
  readonly depth: Derived;
  /** Printed part left under the hole; for a far-side insert the shoulder it is pulled against. */
  readonly floor: Derived;
  readonly wall: Derived;
  readonly seat: SeatKind;
  readonly screw: Screw;
  /** Length of thread that carries. */
  readonly engagement: Derived;
  readonly bearingFace: BearingFace;
  readonly clamped: {
    readonly clearanceHole: number;
    readonly contact: Contact;
  };
}

/** What a failure mode may ask of the joint, whatever its insert. */
export type Surroundings = Pick<
  Situation,
  'setting' | 'insertMetal' | 'host' | 'material' | 'strengths' | 'wall' | 'screw' | 'bearingFace' | 'clamped'
>;

/** One way to fail: when it is there at all, and what loads it. */
interface Rule {
  readonly mode: FailureMode;
  /** What loads the mode at a seat; 'none' where it cannot happen there. */
  readonly path: (seat: SeatKind) => LoadPath | 'none';
}

/** A mode whose capacity depends on the insert. */
export interface InsertRule extends Rule {
  readonly of: 'insert';
  /** Undefined where the joint has no such part: no free boss, no plug beyond the boss. */
  readonly capacity: (situation: Situation) => Capacity | undefined;
}

/** A mode whose capacity is the same for every insert of a joint: worked out once for a drawer. */
export interface JointRule extends Rule {
  readonly of: 'joint';
  readonly capacity: (surroundings: Surroundings) => Capacity;
}

export type ModeRule = InsertRule | JointRule;
