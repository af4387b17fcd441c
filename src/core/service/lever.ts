import type { Insert, Readings } from '../inserts/insert.ts';
import type { AnswerableJoint } from '../joint/stop.ts';

/** A joint with its insert: what a lever moves. */
export interface Subject {
  readonly joint: AnswerableJoint;
  readonly insert: Insert;
}

export type LeverId =
  | 'wall-lines'
  | 'infill'
  | 'insert-length'
  | 'knurl-diameter'
  | 'pull'
  | 'shear'
  | 'temperature'
  | 'duration'
  | 'retightening'
  | 'washer'
  | 'sleeve'
  | 'close-gap'
  | 'oiled-thread'
  | 'torque-driver'
  | 'stronger-screw'
  | 'far-side'
  | 'bigger-thread';

/** One input that can be moved by steps; a step of ±1 is the move whose effect is compared. */
export interface Lever {
  readonly id: LeverId;
  /** Unit of the size of a step; 'change' for one that is made or not. */
  readonly unit: 'lines' | '%' | 'mm' | 'K' | 'times' | 'change';
  /** Size of one step in that unit. */
  readonly size: number;
  /** Size of so many steps with its sign, where that is not their number times the size of one. */
  readonly sizeOf?: (subject: Subject, steps: number) => number;
  /** Most steps that a remedy tries; 0 where nobody can design it. */
  readonly remedySteps: number;
  /** The subject after a number of steps, or undefined where it cannot be moved so far. */
  readonly move: (subject: Subject, steps: number) => Subject | undefined;
}

/** Size of a move that can be made, with its sign, in the unit of the lever. */
export const sizeOfMove = ({ size, sizeOf }: Lever, subject: Subject, steps: number): number =>
  sizeOf === undefined ? size * steps : sizeOf(subject, steps);

/** A change that is made once or not at all. */
export const once =
  (change: (subject: Subject) => Subject | undefined): Lever['move'] =>
  (subject, steps) =>
    steps === 1 ? change(subject) : undefined;

export const withJoint = (subject: Subject, joint: Partial<AnswerableJoint>): Subject => ({
  ...subject,
  joint: { ...subject.joint, ...joint },
});

/** Readings moved by a length, mm. */
export const shifted = (readings: Readings, by: number): Readings => ({
  ...readings,
  values: readings.values.map((value) => value + by),
});

/** Readings stretched by a ratio. */
export const scaled = (readings: Readings, by: number): Readings => ({
  ...readings,
  values: readings.values.map((value) => value * by),
});
