import { type Evidence, evidenceOf } from '../core/bench/evidence.ts';
import type { Joint } from '../core/joint/joint.ts';
import { admit } from '../core/joint/stop.ts';
import type { JointDocument } from './document.ts';
import type { ResolvedDocument } from './resolve.ts';
import { withPrinter } from './with-printer.ts';

/** A joint that knows its printer's holes and what its tests say, unless they are left out; and what they say. */
export interface WithEvidence {
  readonly joint: Joint;
  /** Absent: there is no test, or the joint is stopped. */
  readonly evidence?: Evidence;
}

/** Puts what the measured holes and the tests of a document say into its joint. */
export function withEvidence(document: JointDocument, resolved: ResolvedDocument): WithEvidence {
  const { bench } = resolved;
  const joint = withPrinter(document, resolved);
  if (bench.length === 0) return { joint };
  const admission = admit(joint);
  if (admission.kind === 'stopped') return { joint };
  const evidence = evidenceOf(bench, admission.joint, document.joint.printer);
  const { ofJoint } = evidence;
  const speaks = document.evidence === 'used' && ofJoint !== undefined;
  return { joint: speaks ? { ...joint, tested: ofJoint.tested } : joint, evidence };
}
