import { insertStrippingArea, screwStrippingArea } from '../screws/stripping-areas.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { InsertRule } from './situation.ts';

/** Shear over tensile strength of steel by distortion energy, 1/√3, [-]. */
const SHEAR_PER_TENSION = 1 / Math.sqrt(3);

/** A value that the standard or the row's low end already guarantees: nothing is taken off again. */
const guaranteed = (median: Derived, characteristic: Derived) => ({ median, characteristic });

/**
 * Insert thread strips.
 *
 *     F = τb · ASn        characteristic with the low end of the brass's shear strength
 *
 * Limits of tolerance that leave least area. Widening of a thin insert under load is not in it.
 *
 * @source fed-std-h28-2 shear area of internal threads
 * @source brass-data shear strength
 */
export const insertThreadStrips: InsertRule = {
  of: 'insert',
  mode: 'insert-thread',
  path: () => 'clamp',
  capacity: ({ screw, engagement, insertMetal }) => {
    const area = insertStrippingArea(screw.thread, engagement);
    const force = (symbol: string, shear: number): Derived => ({
      symbol,
      value: shear * area.value,
      unit: 'N',
      formula: 'τ_b · A_Sn',
      entries: [entry('τ_b', shear, 'MPa'), entryFrom(area)],
      source: 'fed-std-h28-2',
      standing: 'published',
    });
    const { shear } = insertMetal;
    return guaranteed(force('F_it', shear.value), force('R_k', shear.low ?? shear.value));
  },
};

/**
 * Screw thread strips.
 *
 *     F = Rm/√3 · ASs
 *
 * With the minimum tensile strength of the property class: median and characteristic value are the same minimum.
 *
 * @source fed-std-h28-2 shear area of external threads
 * @source von-mises shear over tension
 */
export const screwThreadStrips: InsertRule = {
  of: 'insert',
  mode: 'screw-thread',
  path: () => 'clamp',
  capacity: ({ screw, engagement }) => {
    const area = screwStrippingArea(screw.thread, engagement);
    const strength = screw.propertyClass.tensileStrengthMin;
    const median: Derived = {
      symbol: 'F_st',
      value: SHEAR_PER_TENSION * strength * area.value,
      unit: 'N',
      formula: 'R_m/√3 · A_Ss',
      entries: [entry('R_m', strength, 'MPa'), entryFrom(area)],
      source: 'fed-std-h28-2',
      standing: 'published',
    };
    return guaranteed(median, { ...median, symbol: 'R_k' });
  },
};
