import type { Insert } from '../inserts/insert.ts';
import { assess } from '../joint/assess.ts';
import type { JointAssessment } from '../joint/assessment.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import type { Candidate, RejectedCandidate, Rejection } from './recommendation.ts';

/** An insert of a joint, assessed when that is first asked for; kept from then on. */
abstract class AssessedLate {
  private readonly joint: AnswerableJoint;
  private readonly insert: Insert;
  private made: JointAssessment | undefined;

  constructor(joint: AnswerableJoint, insert: Insert) {
    this.joint = joint;
    this.insert = insert;
  }

  get assessment(): JointAssessment {
    this.made ??= assess(this.joint, this.insert);
    return this.made;
  }
}

export class RankedInsert extends AssessedLate implements Candidate {
  readonly rank: number;
  readonly insertId: string;

  constructor(joint: AnswerableJoint, insert: Insert, rank: number) {
    super(joint, insert);
    this.rank = rank;
    this.insertId = insert.id;
  }
}

export class RejectedInsert extends AssessedLate implements RejectedCandidate {
  readonly rejection: Rejection;

  constructor(joint: AnswerableJoint, insert: Insert, rejection: Rejection) {
    super(joint, insert);
    this.rejection = rejection;
  }
}
