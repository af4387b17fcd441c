import type { JointAssessment, Stop } from '../joint/assessment.ts';
import type { HopelessHole } from '../joint/existing-verdict.ts';
import type { NoRoom } from '../joint/room-for-insert.ts';

/** Why an insert of the drawer is out for this joint, with the facts of the sentence. */
export type Rejection = { readonly insertId: string } & (
  | { readonly code: 'other-thread'; readonly insertThread: string; readonly screwThread: string }
  | NoRoom
  | HopelessHole
  | { readonly code: 'holds-too-little'; readonly holds: number; readonly asked: number }
  | { readonly code: 'no-screw-length'; readonly least: number; readonly greatest: number }
  | { readonly code: 'no-torque'; readonly least: number; readonly most: number }
);

export interface Candidate {
  readonly rank: number;
  readonly insertId: string;
  /** Worked out when it is first asked for: a page shows a few of a large drawer. */
  readonly assessment: JointAssessment;
}

export interface RejectedCandidate {
  readonly rejection: Rejection;
  /** Worked out when first asked for; absent where no hole can hold the insert, or its thread is another one. */
  readonly assessment?: JointAssessment;
}

/** Every insert of the drawer for one joint: ranked, or out with one reason; or the whole question stopped. */
export type Recommendation =
  | {
      readonly kind: 'answered';
      readonly ranked: readonly Candidate[];
      readonly rejected: readonly RejectedCandidate[];
    }
  | { readonly kind: 'stopped'; readonly stop: Stop };
