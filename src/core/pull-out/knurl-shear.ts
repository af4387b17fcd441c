import { type Derived, entryFrom } from '../sources/derived.ts';
import { characteristicOf } from './bond.ts';
import { knurlScatter } from './knurl-scatter.ts';
import type { InsertRule, Situation } from './situation.ts';

/** What the knurl's hold is worked out with. */
export interface KnurlHold extends Pick<Situation, 'bond' | 'insert' | 'biteFactor'> {
  readonly strengths: Pick<Situation['strengths'], 'knurlShear'>;
}

/**
 * Force at which the plastic in the knurl shears off along the knurl's cylinder.
 *
 *     F = η · τ · π · Dk · Lk · kb
 *
 * The shear is taken as even along the knurl. While the plastic is elastic its peak is 1.5 … 3.7 means in a usual boss
 * (docs/finite-element.md): even shear needs plastic that yields, and a bond factor carries over only at about the same
 * Lk/Dk.
 *
 * @param hold - bond factor η [-], shear strength τ [MPa], knurl Dk and Lk [mm], bite factor kb [-]
 * @returns median F [N]
 * @source own-model shear cylinder with bond factor
 * @example η 0.85, τ 25.4 MPa, Dk 5, Lk 3.6 mm, kb 1 gives 1221 N
 */
export function knurlShearForce(hold: KnurlHold): Derived {
  const { bond, strengths, insert, biteFactor } = hold;
  const knurl = insert.knurlDiameter.estimate;
  const knurled = insert.knurledLength.estimate;
  return {
    symbol: 'F_ks',
    value:
      bond.factor.value *
      strengths.knurlShear.value *
      Math.PI *
      knurl.value *
      knurled.value *
      biteFactor.value,
    unit: 'N',
    formula: 'η · τ · π · D_k · L_k · k_b',
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

/** Knurl shear: loaded by the clamp force where it passes through the plastic, else by the pull alone. */
export const knurlShear: InsertRule = {
  of: 'insert',
  mode: 'knurl-shear',
  path: (seat) => (seat === 'on-insert' ? 'pull' : seat === 'far-side' ? 'none' : 'clamp'),
  capacity: (situation) => {
    const median = knurlShearForce(situation);
    return { median, characteristic: characteristicOf(median, knurlScatter(situation)) };
  },
};
