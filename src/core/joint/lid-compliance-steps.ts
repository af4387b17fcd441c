import { type End, moduliOf } from '../host/little-known.ts';
import type { MaterialValue } from '../host/material.ts';
import type { Situation } from '../pull-out/situation.ts';
import { carefulEntry, type Derived, entryFrom, withWays } from '../sources/derived.ts';
import { lidComplianceOf, lidCone } from './clamp-loop.ts';
import type { Joint } from './joint.ts';

/**
 * Compliance of a printed clamped part, with its steps: its pressure cone.
 *
 * @param joint - clamped part [mm]
 * @param situation - face under the head [mm]
 * @param modulus - of the part, with what is known of it [MPa]
 * @param end - where it is taken
 * @returns C_l [mm/N]
 * @source shigley ch. 8, pressure cone
 */
export function lidCompliance(joint: Joint, situation: Situation, modulus: MaterialValue, end: End): Derived {
  const careful = moduliOf(modulus, end);
  const { from } = carefulEntry('E', careful, 'MPa');
  return {
    symbol: 'C_l',
    value: lidComplianceOf(joint, situation, careful.value),
    unit: 'mm/N',
    formula: '1/k',
    entries: [entryFrom(withWays(lidCone(joint, situation, careful.value), from ? { E: from } : {}))],
    source: 'shigley',
    standing: 'published',
  };
}
