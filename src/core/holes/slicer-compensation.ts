import { type Derived, entryFrom } from '../sources/derived.ts';
import { type Compensation, exactDiameter, roundedToStep } from './hole-to-draw.ts';
import { type HoleBehaviour, printError } from './print-error.ts';

/** Whether the slicer enlarged the holes of the gauge that was read. */
export type GaugeCompensation = 'none' | 'slicer';

/** Step in which a slicer takes its hole expansion, mm. */
const SLICER_STEP = 0.01;

/** How the readings of a gauge bear on a joint. */
export interface CompensationRule {
  /**
   * drawn-in-cad: the readings' error is drawn for. slicer-takes-error: the slicer takes it, none is drawn for.
   * slicer-leaves-rest: the gauge shows what the slicer leaves. gauge-was-compensated: the joint is printed without what
   * the gauge was printed with; its readings do not apply.
   */
  readonly code: 'drawn-in-cad' | 'slicer-takes-error' | 'slicer-leaves-rest' | 'gauge-was-compensated';
  /** Whose curve applies to the joint. */
  readonly curve: 'readings' | 'prior';
  /** What of that curve's error is left at the hole as drawn. */
  readonly error: 'whole' | 'none';
  /** What would be corrected twice if the slicer's setting were left as it should not be. */
  readonly doubles: 'if-slicer-compensates-too' | 'if-drawn-larger-too' | 'never';
}

const RULES: Readonly<Record<Compensation, Readonly<Record<GaugeCompensation, CompensationRule>>>> = {
  'in-cad': {
    none: {
      code: 'drawn-in-cad',
      curve: 'readings',
      error: 'whole',
      doubles: 'if-slicer-compensates-too',
    },
    slicer: {
      code: 'gauge-was-compensated',
      curve: 'prior',
      error: 'whole',
      doubles: 'if-slicer-compensates-too',
    },
  },
  'in-slicer': {
    none: { code: 'slicer-takes-error', curve: 'readings', error: 'none', doubles: 'if-drawn-larger-too' },
    slicer: { code: 'slicer-leaves-rest', curve: 'readings', error: 'whole', doubles: 'never' },
  },
};

/**
 * Which error applies to the hole of a joint, by where it is compensated and how the gauge was printed.
 *
 * @param joint - where the joint's holes are compensated
 * @param gauge - whether the slicer enlarged the gauge's holes
 */
export const compensationRule = (joint: Compensation, gauge: GaugeCompensation): CompensationRule =>
  RULES[joint][gauge];

/**
 * Curve that applies to a joint: that of the readings, or the prior's where they do not apply.
 *
 * @param rule - of compensationRule
 * @param curves - after the readings, and before them
 */
export const curveThatApplies = (
  { curve }: CompensationRule,
  curves: { readonly readings: HoleBehaviour; readonly prior: HoleBehaviour },
): HoleBehaviour => curves[curve];

/** What to type into a slicer for its hole expansion. */
export interface SlicerExpansion {
  /** On the diameter, mm; below 0 where holes come out large. */
  readonly onDiameter: Derived;
  /** The same a side, for a slicer that moves the contour. */
  readonly perSide: Derived;
}

/**
 * Hole expansion to type into a slicer so that a hole drawn at the wanted bore comes out as wanted.
 *
 *     x = −e(D_t + x), to 0.01 mm        a side: x/2
 *
 * The slicer enlarges D_t to the hole that prints to it, so the error is that of the enlarged hole. One setting serves
 * every hole of a part: other diameters keep the difference of their errors. Of a gauge printed with an expansion, this
 * is what to add to it. Where a slicer moves outer contours along with holes, it is the wrong setting.
 *
 * @param behaviour - how the printer closes holes
 * @param bore - wanted bore Dt [mm], > 0
 * @returns on the diameter and a side [mm]
 * @source own-model inverse of the curve of errors
 * @example bore 4.30 mm on an unknown printer: 0.25 mm on the diameter, 0.125 mm a side
 */
export function slicerExpansion(behaviour: HoleBehaviour, bore: Derived): SlicerExpansion {
  const error = printError(behaviour, exactDiameter(behaviour, bore));
  const onDiameter: Derived = {
    symbol: 'x_D',
    value: roundedToStep(-error.value, SLICER_STEP),
    unit: 'mm',
    formula: 'round(−e/(0.01 mm)) · 0.01 mm',
    entries: [entryFrom(error)],
    source: error.source,
    standing: error.standing,
  };
  return {
    onDiameter,
    perSide: {
      ...onDiameter,
      symbol: 'x_s',
      value: onDiameter.value / 2,
      formula: 'x_D/2',
      entries: [entryFrom(onDiameter)],
    },
  };
}
