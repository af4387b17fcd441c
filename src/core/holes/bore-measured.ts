import type { MeasuredLength } from '../inserts/dimensions.ts';
import { measuredLength } from '../inserts/measured-length.ts';
import { type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';
import type { HoleReading } from './hole-reading.ts';
import { boreBetweenJaws } from './jaw-correction.ts';

/** Half of a digital caliper's step, mm. */
const RESOLUTION = 0.005;
/** What the correction for the jaws may still be off, ± mm (estimate). */
const REST_OF_CORRECTION = 0.01;
/** How far ribs and valleys of a printed bore take a jaw off its mean, ± mm (estimate, of 0.02 to 0.05). */
const FORM = 0.05;

const rectangular = (halfWidth: number): number => halfWidth / Math.sqrt(3);

/**
 * Bore of a hole from its readings, with its standard uncertainty.
 *
 *     jaws:            D = √(x̄² + t²)         u = √(uA² + uB² + ur² + ut² + uf²)
 *     pin or shank:    D = x̄ + Δ/2            u = √(uA² + us²), us = Δ/√12
 *
 * uA = s/√n from two readings on. Rectangular, ±a/√3: the caliper's permissible error uB, half its step 0.005 mm ur, the
 * rest of the jaw correction 0.01 mm ut, form 0.05 mm uf. Of pins the largest that enters is written down: the bore lies
 * anywhere up to the next one. A drill's shank is taken at its nominal diameter. The mean serves the curve; what a pilot
 * meets is the narrowest place.
 *
 * @param reading - readings of one hole [mm], at least one; caliper's permissible error, flat of the jaws, step Δ [mm]
 * @returns estimate D and standard uncertainty u [mm], and the number of readings
 * @source jcgm-100 4.2 (type A), 4.3.7 (rectangular), 5.1.2 (combined)
 * @source own-model form and rest of the correction are judged
 * @example the 4.2 mm pin enters and the 4.3 mm one does not: 4.25 mm with u 0.029 mm
 */
export function boreMeasured(reading: HoleReading): MeasuredLength {
  return reading.instrument === 'caliper-jaws' ? byJaws(reading) : byGauge(reading);
}

/** Mean of the readings and the uncertainty of their scatter alone. */
const meanAndTypeA = (symbol: string, values: readonly number[]) => {
  const { estimate, standardUncertainty } = measuredLength(symbol, { values, permissibleError: 0 });
  return { mean: estimate, typeA: standardUncertainty.value };
};

function byJaws({ measured, permissibleError, jawFlat }: HoleReading): MeasuredLength {
  const { mean, typeA } = meanAndTypeA('R_j', measured);
  const estimate = boreBetweenJaws(mean, jawFlat);
  const uncertainty = combined(estimate, '√(u_A² + u_B² + u_r² + u_t² + u_f²)', [
    entry('u_A', typeA, 'mm'),
    entry('u_B', rectangular(permissibleError), 'mm'),
    entry('u_r', rectangular(RESOLUTION), 'mm'),
    entry('u_t', rectangular(REST_OF_CORRECTION), 'mm'),
    entry('u_f', rectangular(FORM), 'mm'),
  ]);
  return { estimate, standardUncertainty: uncertainty, readings: measured.length };
}

function byGauge({ measured, gaugeStep }: HoleReading): MeasuredLength {
  const { mean, typeA } = meanAndTypeA('G', measured);
  const estimate: Derived = {
    symbol: 'D_m',
    value: mean.value + gaugeStep / 2,
    unit: 'mm',
    formula: 'G + Δ_G/2',
    entries: [entryFrom(mean), entry('Δ_G', gaugeStep, 'mm')],
    source: 'jcgm-100',
    standing: 'measured',
  };
  const uncertainty = combined(estimate, '√(u_A² + u_s²)', [
    entry('u_A', typeA, 'mm'),
    entry('u_s', gaugeStep / Math.sqrt(12), 'mm'),
  ]);
  return { estimate, standardUncertainty: uncertainty, readings: measured.length };
}

const combined = (bore: Derived, formula: string, entries: readonly Entry[]): Derived => ({
  symbol: 'u(D_m)',
  value: Math.hypot(...entries.map(({ value }) => value)),
  unit: 'mm',
  formula,
  entries: [...entries, entryFrom(bore)],
  source: 'jcgm-100',
  standing: 'estimate',
});
