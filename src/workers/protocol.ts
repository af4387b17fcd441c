import type { ChanceAtTorque } from '../core/chance/chance-over-torque.ts';
import type { ChanceResult } from '../core/chance/chance-result.ts';
import type { Insert } from '../core/inserts/insert.ts';
import type { Stop } from '../core/joint/assessment.ts';
import type { Joint } from '../core/joint/joint.ts';
import type { FromWorkerOf, RequestOf, ToWorkerOf } from './line.ts';

/** One joint to sample; plain data that can be sent. */
interface Sampled {
  readonly joint: Joint;
  /** With the screw's thread. */
  readonly insert: Insert;
  /** Joints to draw, ≥ 1. */
  readonly samples: number;
  /** Whole number, 0 … 2³² − 1; the same seed gives the same counts. */
  readonly seed: number;
}

export interface ChanceInput extends Sampled {
  /** Setting of the tool, N·mm, > 0. */
  readonly torque: number;
}

export interface ChanceOverTorqueInput extends Sampled {
  /** Settings of the tool, N·mm, > 0, at least one. */
  readonly torques: readonly number[];
}

/** An answer, or the stop that withholds it. */
export type Sampling<Answer> =
  | { readonly kind: 'answered'; readonly answer: Answer }
  | { readonly kind: 'stopped'; readonly stop: Stop };

/** Every request by its name: what goes in, what comes out. */
export interface Requests {
  readonly chance: { readonly input: ChanceInput; readonly output: Sampling<ChanceResult> };
  readonly 'chance-over-torque': {
    readonly input: ChanceOverTorqueInput;
    readonly output: Sampling<readonly ChanceAtTorque[]>;
  };
}

export type RequestName = keyof Requests;
export type Request = RequestOf<Requests>;
export type ToWorker = ToWorkerOf<Requests>;
export type FromWorker = FromWorkerOf<Requests>;
