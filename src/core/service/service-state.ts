import type { Limit } from '../joint/assessment.ts';
import type { FailureMode } from '../pull-out/limit.ts';
import type { Derived } from '../sources/derived.ts';

/** When a joint is asked whether it holds: while it is tightened, warm and loaded at once, and after the time. */
export type StateId = 'assembly' | 'in-service' | 'after';

/** What ends a joint besides its failure modes: it opens under the pull, or slips under the shear. */
export type Loosening = 'opens' | 'slips';

/** One condition of staying closed: what is left against what is needed. */
export interface ClosedCheck {
  readonly by: Loosening;
  readonly left: Derived;
  readonly needed: Derived;
  /** Left over needed, the closing factor included in what is needed, [-]. */
  readonly margin: number;
}

/** A joint at one time: every mode and every condition of staying closed. */
export interface ServiceState {
  readonly id: StateId;
  /** h since assembly. */
  readonly hours: number;
  /** °C */
  readonly temperature: number;
  /** Share of the preload that is left, [-]. */
  readonly preloadLeft: Derived;
  readonly limits: readonly Limit[];
  readonly closed: readonly ClosedCheck[];
  /** Smallest of all margins: limits over the limit factor, closing over the closing factor, [-]; at least 1 holds. */
  readonly margin: number;
  readonly by: FailureMode | Loosening;
}
