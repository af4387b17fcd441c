import { type Derived, entry, entryFrom } from '../sources/derived.ts';

/**
 * Bore whose inside jaws read too little, as a plain number.
 *
 *     D = √(R² + t²)
 *
 * @param reading - between the jaws R [mm], > 0; width of their flats and offset together t [mm], ≥ 0
 * @returns D [mm]
 * @source own-model chord of a circle, exact
 */
export const boreBetweenJawsOf = (reading: { readonly between: number; readonly flat: number }): number =>
  Math.hypot(reading.between, reading.flat);

/**
 * Bore from a reading of the inside jaws: their flats touch on two chords, not on a diameter.
 *
 *     D = √(R² + t²)        so D − R ≈ t²/(2·D)
 *
 * Round hole, jaws square to its axis. Ribs between layers, a tilted caliper and worn jaws are not in it.
 *
 * @param between - mean reading between the jaws R [mm], > 0
 * @param flat - width of the flats and offset of the blades together, across the hole, t [mm], ≥ 0
 * @returns D [mm], at least R
 * @source own-model chord of a circle, exact
 * @example jaws with 0.5 mm that read 4.975 mm stand in a bore of 5.000 mm
 */
export function boreBetweenJaws(between: Derived, flat: number): Derived {
  return {
    symbol: 'D_m',
    value: boreBetweenJawsOf({ between: between.value, flat }),
    unit: 'mm',
    formula: '√(R_j² + t_j²)',
    entries: [entryFrom(between), entry('t_j', flat, 'mm')],
    source: 'own-model',
    standing: 'measured',
  };
}
