import { polymerAt } from '../host/little-known.ts';
import type { PrintedMaterial } from '../host/material.ts';
import { strengthLeft } from '../host/temperature.ts';
import { isCreepInDoubt, polymerCreep } from '../relaxation/polymer-creep.ts';
import type { NoticeCode } from './assessment.ts';
import { jointAt } from './joint-at.ts';
import type { NoticeRule } from './notice-rule.ts';
import type { AnswerableJoint } from './stop.ts';
import { tighten } from './tightening.ts';

/** The printed parts of a joint: the host, and a clamped part without a spacer. */
function polymersOf({ host, clamped }: AnswerableJoint): readonly PrintedMaterial[] {
  const { material, sleeve } = clamped;
  return material.kind === 'printed' && !sleeve ? [host.material, material.polymer] : [host.material];
}

const namesOf = (polymers: readonly PrintedMaterial[]): string =>
  [...new Set(polymers.map(({ name }) => name))].join(' and ');

/** Polymers of which an answer takes the careful end. */
const inDoubt = (joint: AnswerableJoint, polymers = polymersOf(joint)): readonly PrintedMaterial[] =>
  polymers.filter((polymer) => isCreepInDoubt(polymerCreep(polymer, joint.loads.serviceTemperature)));

/** What to know where creep and warmth of the plastic are little known: the careful end has decided. */
export const LITTLE_KNOWN_NOTICES = {
  'creep-little-known': ({ joint, found: { preloadLeft, preloadLeftAtBest, seat } }) => {
    if (preloadLeftAtBest === undefined) return undefined;
    const [, ...clamped] = polymersOf(joint);
    const polymers = inDoubt(joint, seat.kind === 'on-insert' ? clamped : polymersOf(joint));
    return {
      material: namesOf(polymers),
      least: preloadLeft,
      most: preloadLeftAtBest,
      hours: joint.loads.duration,
    };
  },
  'warmth-little-known': ({ joint }) => {
    const { serviceTemperature } = joint.loads;
    for (const polymer of polymersOf(joint)) {
      const least = strengthLeft(polymer, serviceTemperature);
      if (least.range === undefined) continue;
      const most = strengthLeft(polymerAt(polymer, 'high'), serviceTemperature);
      return { material: polymer.name, temperature: serviceTemperature, least, most };
    }
    return undefined;
  },
  'window-hangs-on-little-known': ({ joint, insert, found }) =>
    found.torque.kind === 'refused' && tighten(jointAt(joint, 'high'), insert).dial !== undefined
      ? { material: namesOf(inDoubt(joint)) }
      : undefined,
} as const satisfies Partial<Record<NoticeCode, NoticeRule>>;
