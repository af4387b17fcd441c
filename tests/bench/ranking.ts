import { recommend } from '../../src/core/recommend/recommend.ts';
import type { Candidate, RejectedCandidate } from '../../src/core/recommend/recommendation.ts';
import { insertRecord, jointDocument, resolved } from '../support/joints.ts';
import { HEAVY } from './heavy-joint.ts';

const INSERTS = 1000;

/** Sizes of M3 inserts that all differ: knurl 4.0 … 5.6, pilot 0.3 … 0.8 below it, length 2.5 … 8.5 mm. */
const drawer = Array.from({ length: INSERTS }, (_, index) => {
  const share = (step: number) => ((index * step) % INSERTS) / INSERTS;
  const knurl = 4 + 1.6 * share(7);
  return insertRecord({
    id: `insert-${index}`,
    knurlDiameter_mm: [knurl, knurl + 0.01, knurl - 0.02],
    pilotDiameter_mm: [knurl - 0.3 - 0.5 * share(13)],
    length_mm: [2.5 + 6 * share(29), 2.51 + 6 * share(29)],
  });
});

/** The usual joint, and the one that takes longest. */
const JOINTS = {
  usual: resolved(jointDocument({ drawer })),
  heavy: resolved(jointDocument({ ...HEAVY, drawer })),
};

/** Ranks a drawer of 1,000 inserts once: the ranked ones, then the rejected ones. */
export function rank(of: keyof typeof JOINTS): readonly (Candidate | RejectedCandidate)[] {
  const { joint, drawer: inserts } = JOINTS[of];
  const recommendation = recommend(joint, inserts);
  if (recommendation.kind === 'stopped') throw new Error('the joint of the bench is answered');
  return [...recommendation.ranked, ...recommendation.rejected];
}
