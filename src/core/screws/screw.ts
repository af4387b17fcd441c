import type { Standing } from '../sources/derived.ts';
import type { SourceId } from '../sources/sources.ts';
import type { Thread } from './thread.ts';

/** Minimum strengths of a screw's property class, MPa. */
export interface PropertyClass {
  readonly id: string;
  readonly designation: string;
  readonly tensileStrengthMin: number;
  /** ReL, Rp0.2 or Rpf, whichever the standard gives for the class. */
  readonly yieldStrengthMin: number;
  /** Absent where the standard gives none (stainless classes). */
  readonly proofStress?: number;
  readonly family: 'carbon-steel' | 'stainless-steel';
  readonly source: SourceId;
}

/** Minimum breaking torque of one thread and class, N·mm; a torsional test value, never a tightening torque. */
export interface BreakingTorque {
  readonly thread: string;
  readonly propertyClass: string;
  readonly torque: number;
  readonly source: SourceId;
  readonly howKnown: 'read' | 'from-memory';
}

export type HeadShape = 'cylindrical' | 'button' | 'countersunk';

/** One head of one thread; lengths in mm. */
export interface ScrewHead {
  readonly standard: string;
  readonly shape: HeadShape;
  readonly thread: string;
  /** dk, largest (plain); countersunk: theoretical sharp diameter. */
  readonly diameter: number;
  /** k, largest. */
  readonly height: number;
  /** Outer diameter of the bearing face: dw min where given, else dk min. */
  readonly bearingDiameter: number;
  /** s, across flats of the hexagon socket. */
  readonly socketAcrossFlats: number;
  /** t, smallest depth of the socket. */
  readonly socketDepth: number;
  readonly source: SourceId;
  readonly howKnown: 'read' | 'from-memory';
}

/** A plain washer; lengths in mm. */
export interface Washer {
  readonly standard: string;
  readonly thread: string;
  readonly holeDiameter: number;
  readonly outsideDiameter: number;
  readonly thickness: number;
  readonly source: SourceId;
  readonly howKnown: 'read' | 'from-memory';
}

/** A hexagon nut; lengths in mm. */
export interface HexNut {
  readonly standard: string;
  readonly thread: string;
  /** s, largest. */
  readonly acrossFlats: number;
  /** m, largest. */
  readonly thickness: number;
  /** dw, smallest. */
  readonly bearingDiameter: number;
  readonly source: SourceId;
  readonly howKnown: 'read' | 'from-memory';
}

/** A range of friction coefficients in which 9 of 10 joints are expected to lie. */
export interface FrictionRange {
  readonly low: number;
  readonly high: number;
}

/** What is on the thread, and the friction that goes with it. */
export interface FrictionCondition {
  readonly id: string;
  readonly thread: FrictionRange;
  /** Under the head on a metal face or washer. */
  readonly headOnMetal: FrictionRange;
  /** Under the head on plastic. */
  readonly headOnPlastic: FrictionRange;
  readonly source: SourceId;
  readonly standing: Standing;
}

/** Standard lengths of a kind of screw, ascending, mm, and the tolerance on each. */
export interface ScrewLengths {
  readonly thread: string;
  readonly standard: string;
  readonly lengths: readonly number[];
  readonly source: SourceId;
}

/** What a screw of the next larger thread brings. */
export interface BiggerScrew {
  readonly thread: Thread;
  readonly head: ScrewHead;
  readonly standardLengths: readonly number[];
  readonly washer?: Washer;
}

/** The screw of a joint with its table rows resolved. */
export interface Screw {
  readonly thread: Thread;
  readonly head: ScrewHead;
  readonly propertyClass: PropertyClass;
  readonly friction: FrictionCondition;
  readonly washer?: Washer;
  /** A length that the person has fixed, mm; absent: the program chooses from the standard lengths. */
  readonly fixedLength?: number;
  readonly standardLengths: readonly number[];
  /** Smallest published breaking torque, N·mm; absent where no standard covers the class. */
  readonly breakingTorque?: BreakingTorque;
  /** Rows to try where no torque fits. */
  readonly alternatives: {
    readonly friction?: FrictionCondition;
    readonly propertyClass?: PropertyClass;
    readonly washer?: Washer;
    /** Next larger thread of the same system with its head, lengths and washer. */
    readonly bigger?: BiggerScrew;
  };
}
