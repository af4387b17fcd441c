import type { MeasuredLength } from '../inserts/dimensions.ts';
import { measuredLength } from '../inserts/measured-length.ts';
import { combinedUncertainty, rectangular, scatterOnMean } from '../inserts/measurement-uncertainty.ts';
import { type Derived, type Entry, entry, entryFrom, entryLater } from '../sources/derived.ts';
import type { HoleReading } from './hole-reading.ts';
import { boreBetweenJaws } from './jaw-correction.ts';

/** Half of a digital caliper's step, mm. */
const RESOLUTION = 0.005;
/** What the correction for the jaws may still be off, ± mm (estimate). */
const REST_OF_CORRECTION = 0.01;
/** How far ribs and valleys of a printed bore take a jaw off its mean, ± mm (estimate, of 0.02 to 0.05). */
const FORM = 0.05;

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

/** Mean of the readings; what is uncertain about it is put in apart. */
const meanOfReadings = (symbol: string, values: readonly number[]): Derived =>
  measuredLength(symbol, { values, permissibleError: 0 }).estimate;

function byJaws({ measured, permissibleError, jawFlat }: HoleReading): MeasuredLength {
  const mean = meanOfReadings('R_j', measured);
  const estimate = boreBetweenJaws(mean, jawFlat);
  const uncertainty = combinedUncertainty(estimate, [
    ...scatterOnMean(mean, measured),
    rectangular('u_B', entry('a_c', permissibleError, 'mm')),
    rectangular('u_r', entry('a_r', RESOLUTION, 'mm')),
    rectangular('u_t', entry('a_t', REST_OF_CORRECTION, 'mm')),
    rectangular('u_f', entry('a_f', FORM, 'mm')),
  ]);
  return { estimate, standardUncertainty: asJudged(uncertainty), readings: measured.length };
}

function byGauge({ measured, gaugeStep }: HoleReading): MeasuredLength {
  const mean = meanOfReadings('G', measured);
  const step = entry('Δ_G', gaugeStep, 'mm');
  const estimate: Derived = {
    symbol: 'D_m',
    value: mean.value + gaugeStep / 2,
    unit: 'mm',
    formula: 'G + Δ_G/2',
    entries: [entryFrom(mean), step],
    source: 'jcgm-100',
    standing: 'measured',
  };
  const uncertainty = combinedUncertainty(estimate, [...scatterOnMean(mean, measured), ofStep(step)]);
  return { estimate, standardUncertainty: asJudged(uncertainty), readings: measured.length };
}

/** The bore lies anywhere between the gauge that enters and the next. */
function ofStep(step: Entry): Entry {
  const value = step.value / Math.sqrt(12);
  return entryLater('u_s', value, 'mm', () => ({
    symbol: 'u_s',
    value,
    unit: 'mm',
    formula: 'Δ_G/√12',
    entries: [step],
    source: 'jcgm-100',
    standing: 'published',
  }));
}

/** Form and the rest of the correction are judged, so what they are combined to is an estimate. */
const asJudged = (uncertainty: Derived): Derived => ({ ...uncertainty, standing: 'estimate' });
