import type { InsertDimensions } from '../inserts/dimensions.ts';
import { type Derived, type Entry, entry, entryAs, entryFrom } from '../sources/derived.ts';

/**
 * Bore that the insert wants, as printed.
 *
 *     Dt = Dp + fit
 *
 * The fit of 0.05 mm (0 … 0.15) lets the pilot drop in and stand upright.
 *
 * @param insert - pilot diameter Dp [mm]
 * @param fit - bore over the pilot [mm], 0 … 0.15
 * @returns Dt [mm]
 * @source trade-practice bore just over the pilot
 * @example pilot 4.25 mm with fit 0.05 mm gives 4.30 mm
 */
export function boreAsPrinted(insert: InsertDimensions, fit: number): Derived {
  return {
    symbol: 'D_t',
    value: insert.pilotDiameter.estimate.value + fit,
    unit: 'mm',
    formula: 'D_p + f',
    entries: [entryFrom(insert.pilotDiameter.estimate), entry('f', fit, 'mm')],
    source: 'trade-practice',
    standing: 'common-practice',
  };
}

/**
 * Depth by which the knurl bites into the bore, per side.
 *
 *     z = max(0, (Dk − Dt)/2)
 *
 * 0 in a hole that is there and is as wide as the knurl.
 *
 * @param insert - knurl diameter Dk [mm]
 * @param bore - bore as printed Dt [mm]
 * @returns z [mm], ≥ 0
 * @source own-model geometry
 * @example knurl 5.0 in a bore of 4.3 mm gives 0.35 mm
 */
export function bite(insert: InsertDimensions, bore: Derived): Derived {
  return {
    symbol: 'z',
    value: Math.max(0, (insert.knurlDiameter.estimate.value - bore.value) / 2),
    unit: 'mm',
    formula: 'max(0, (D_k − D_t)/2)',
    entries: [entryFrom(insert.knurlDiameter.estimate), entryFrom(bore)],
    source: 'own-model',
    standing: 'estimate',
  };
}

/** Diameters that a bite follows from, mm; the intended bore is below the knurl. */
export interface BiteDiameters {
  readonly knurl: number;
  readonly intended: number;
  readonly expected: number;
}

/**
 * Share of the intended bite that a bore leaves, as a plain number; see biteFactor.
 *
 * @param diameters - knurl Dk, bore as intended Dt, bore to be expected D [mm], Dt < Dk as designed
 * @returns kb [-], 0 … 1
 * @source own-model bite factor
 */
export const biteFactorOf = ({ knurl, intended, expected }: BiteDiameters): number =>
  Math.min(1, Math.max(0, (knurl - expected) / (knurl - intended)));

/**
 * Share of the intended bite that a bore leaves.
 *
 *     kb = (Dk − D)/(Dk − Dt), held between 0 and 1
 *
 * 1 at the intended bite, falling in a straight line to 0 at none. A smaller bore bites deeper but is not credited
 * with more: it only displaces more plastic.
 *
 * @param insert - knurl diameter Dk [mm]
 * @param intended - bore as intended Dt [mm], below the knurl
 * @param expected - bore to be expected D [mm], as it is put in
 * @returns kb [-], 0 … 1
 * @source own-model bite factor
 * @example knurl 5, intended 4.3, expected 4.5 mm gives 0.714
 */
export function biteFactor(insert: InsertDimensions, intended: Derived, expected: Entry): Derived {
  const knurl = insert.knurlDiameter.estimate;
  return {
    symbol: 'k_b',
    value: biteFactorOf({ knurl: knurl.value, intended: intended.value, expected: expected.value }),
    unit: '-',
    formula: `min(1, max(0, (D_k − D)/(D_k − ${intended.symbol})))`,
    entries: [entryFrom(knurl), entryAs('D', expected), entryFrom(intended)],
    source: 'own-model',
    standing: 'estimate',
  };
}
