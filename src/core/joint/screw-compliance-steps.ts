import { screwStiffness } from '../screws/stiffness.ts';
import { tensileStressArea } from '../screws/stress-area.ts';
import { type Derived, entryFrom, withWays } from '../sources/derived.ts';
import type { Joint } from './joint.ts';
import { STEEL_MODULUS, screwComplianceOf } from './screw-compliance.ts';

/**
 * Stiffness of the stretched screw: what is behind screwComplianceOf.
 *
 *     kb = E · As/(g + LE/2)
 *
 * @param joint - thread of the screw [mm]
 * @param engagement - thread that carries LE [mm]
 * @param grip - stretched length g [mm]
 * @returns kb [N/mm]
 * @source shigley ch. 8, bolt stiffness
 */
export function stretchedScrew({ screw }: Joint, engagement: Derived, grip: Derived): Derived {
  const area = tensileStressArea(screw.thread);
  const length: Derived = {
    symbol: 'l_t',
    value: grip.value + engagement.value / 2,
    unit: 'mm',
    formula: 'g + L_E/2',
    entries: [entryFrom(grip), entryFrom(engagement)],
    source: 'own-model',
    standing: 'estimate',
  };
  const stiffness = screwStiffness({
    shankArea: area.value,
    shankLength: 0,
    threadArea: area.value,
    threadLength: length.value,
    modulus: STEEL_MODULUS,
  });
  return withWays(stiffness, { A_d: area, A_t: area, l_t: length });
}

/**
 * Compliance of the stretched screw with its steps; see screwComplianceOf.
 *
 *     Cb = 1/kb
 *
 * @param joint - thread of the screw [mm]
 * @param engagement - thread that carries LE [mm]
 * @param grip - stretched length g [mm]
 * @returns Cb [mm/N]
 * @source shigley ch. 8, bolt stiffness
 */
export const screwCompliance = (joint: Joint, engagement: Derived, grip: Derived): Derived => ({
  symbol: 'C_b',
  value: screwComplianceOf(joint, engagement.value, grip.value),
  unit: 'mm/N',
  formula: '1/k_b',
  entries: [entryFrom(stretchedScrew(joint, engagement, grip))],
  source: 'shigley',
  standing: 'published',
});
