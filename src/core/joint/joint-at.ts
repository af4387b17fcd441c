import { type End, polymerAt } from '../host/little-known.ts';
import type { AnswerableJoint } from './stop.ts';

/**
 * A joint whose polymers are known for certain in warmth and creep, at one end of what is known of them: to ask what the
 * other end would say, or what is expected.
 *
 * @param joint - a joint that may be answered
 * @param end - where softening, strength in the warmth and creep of host and clamped part are taken
 * @returns the same joint of such polymers
 * @source own-model the low end of what is left is the careful one
 */
export function jointAt(joint: AnswerableJoint, end: End): AnswerableJoint {
  const { material } = joint.clamped;
  return {
    ...joint,
    host: { ...joint.host, material: polymerAt(joint.host.material, end) },
    clamped: {
      ...joint.clamped,
      material:
        material.kind === 'printed' ? { ...material, polymer: polymerAt(material.polymer, end) } : material,
    },
  };
}
