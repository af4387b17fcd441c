import { type Derived, entryFrom } from '../sources/derived.ts';
import { characteristicOf } from './bond.ts';
import { knurlScatter } from './knurl-scatter.ts';
import type { KnurlHold } from './knurl-shear.ts';
import type { InsertRule } from './situation.ts';

/**
 * Torque at which the insert turns in the plastic.
 *
 *     T = η · τ · π · Dk · Lk · kb · Dk/2
 *
 * The shear cylinder of the knurl turned instead of pulled. Friction of the clamped part on the insert's face, which
 * would help, is left out.
 *
 * @param hold - bond factor η [-], shear strength τ [MPa], knurl Dk and Lk [mm], bite factor kb [-]
 * @returns median T [N·mm]
 * @source own-model shear cylinder with bond factor
 * @example η 0.85, τ 25.4 MPa, Dk 5, Lk 3.6 mm, kb 1 gives 3.05 N·m
 */
export function torqueOut(hold: KnurlHold): Derived {
  const { bond, strengths, insert, biteFactor } = hold;
  const knurl = insert.knurlDiameter.estimate;
  const knurled = insert.knurledLength.estimate;
  const force =
    bond.factor.value * strengths.knurlShear.value * Math.PI * knurl.value * knurled.value * biteFactor.value;
  return {
    symbol: 'T_out',
    value: (force * knurl.value) / 2,
    unit: 'N·mm',
    formula: 'η · τ · π · D_k · L_k · k_b · D_k/2',
    entries: [
      entryFrom(bond.factor),
      entryFrom(strengths.knurlShear),
      entryFrom(knurl),
      entryFrom(knurled),
      entryFrom(biteFactor),
    ],
    source: 'own-model',
    standing: 'estimate',
  };
}

/** Torque-out: the thread's share of the tightening torque turns the insert, wherever the part bears. */
export const insertTurns: InsertRule = {
  of: 'insert',
  mode: 'torque-out',
  path: () => 'torque',
  capacity: (situation) => {
    const median = torqueOut(situation);
    return { median, characteristic: characteristicOf(median, knurlScatter(situation)) };
  },
};
