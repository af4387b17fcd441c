import type { Insert } from '../../core/inserts/insert.ts';
import type { Joint } from '../../core/joint/joint.ts';
import { admit } from '../../core/joint/stop.ts';
import type { Rejection } from '../../core/recommend/recommendation.ts';
import { rejectionWay } from '../../core/recommend/rejection-way.ts';
import { sentenceOfRejection, type WayToFact } from '../../wording/rejections.ts';
import { Told } from './told.tsx';

export interface ToldRejectionProps {
  readonly joint: Joint;
  readonly insert: Insert;
  readonly rejection: Rejection;
}

/** Why an insert is out for a joint; its computed numbers open where the row around it says. */
export function ToldRejection({ joint, insert, rejection }: ToldRejectionProps) {
  const wayTo: WayToFact = (fact) => {
    const admission = admit(joint);
    if (admission.kind === 'stopped') throw new Error('a joint that is stopped rejects no insert');
    return rejectionWay(admission.joint, insert, rejection, fact);
  };
  return <Told sentence={sentenceOfRejection(rejection, wayTo)} />;
}
