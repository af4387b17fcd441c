import type { ChanceAtTorque } from '../../../core/chance/chance-over-torque.ts';
import type { ChanceResult } from '../../../core/chance/chance-result.ts';
import type { Insert } from '../../../core/inserts/insert.ts';
import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import type { Outcome } from '../../../workers/worker-client.ts';

/** One question to the sampling; torques in N·mm. */
export interface Question {
  readonly joint: Joint;
  readonly insert: Insert;
  readonly torque: number;
  /** Settings that the curve runs over, ascending. */
  readonly torques: readonly number[];
  /** Window that the setting belongs to; drawn beside what was found for it. */
  readonly window: JointAssessment['torque'];
  readonly seed: number;
}

export interface Sampled {
  readonly result: ChanceResult;
  readonly curve: readonly ChanceAtTorque[];
}

type Failure = Extract<Outcome<Sampled>, { readonly kind: 'failed' }>;

/** Where the sampling stands. What was found stays until something newer is. */
export interface SamplingState {
  readonly phase: 'waiting' | 'running' | 'done' | 'cancelled' | 'failed';
  /** Share done, 0 … 1. */
  readonly share: number;
  readonly found?: Sampled & { readonly question: Question };
  readonly failure?: Failure;
}

export type SamplingEvent =
  | { readonly kind: 'waits' | 'starts' }
  | { readonly kind: 'advances'; readonly share: number }
  | { readonly kind: 'ends'; readonly question: Question; readonly outcome: Outcome<Sampled> };

export const NOT_BEGUN: SamplingState = { phase: 'waiting', share: 0 };

export function nextState({ found, phase }: SamplingState, event: SamplingEvent): SamplingState {
  const kept = found ? { found } : {};
  switch (event.kind) {
    case 'waits':
      return { ...kept, phase: 'waiting', share: 0 };
    case 'starts':
      return { ...kept, phase: 'running', share: 0 };
    case 'advances':
      return { ...kept, phase, share: event.share };
    case 'ends':
      return endOf(kept, event);
  }
}

function endOf(
  kept: Pick<SamplingState, 'found'>,
  { outcome, question }: Extract<SamplingEvent, { readonly kind: 'ends' }>,
): SamplingState {
  switch (outcome.kind) {
    case 'done':
      return { phase: 'done', share: 1, found: { ...outcome.output, question } };
    case 'cancelled':
      return { ...kept, phase: 'cancelled', share: 0 };
    case 'failed':
      return { ...kept, phase: 'failed', share: 0, failure: outcome };
  }
}
