import { withoutDust } from '../numerics/binary-dust.ts';
import { rootInBracket } from '../numerics/root.ts';
import { type Derived, type Entry, entry, entryBy, entryFrom } from '../sources/derived.ts';
import { type HoleBehaviour, printError, printErrorOf } from './print-error.ts';

/** Where hole compensation happens: drawn larger in CAD, or by the slicer; never both. */
export type Compensation = 'in-cad' | 'in-slicer';

/** How far beyond the wanted bore the drawn one is looked for first, mm. */
const BRACKET = 2;
/** Below this share of the wanted bore no drawn one is looked for any more. */
const LEAST_SHARE = 1e-6;

/** Rounds to the nearest multiple of a step without leaving binary dust. */
export const roundedToStep = (value: number, step: number): number =>
  withoutDust(Math.round(value / step) * step);

/**
 * Drawn diameter whose printed bore is the wanted one, unrounded, as a plain number.
 *
 *     D + e(D) = Dt
 *
 * D + e(D) grows with D wherever 1 + b/D > 0. Where it does not, one of its roots.
 *
 * @param behaviour - how the printer closes holes; its ceiling below the bore, or b ≥ 0
 * @param bore - wanted bore Dt [mm], > 0
 * @returns D [mm]
 * @source hole-metrology-note fit, solved for the drawn diameter
 */
export function drawnDiameterOf(behaviour: HoleBehaviour, bore: number): number {
  const f = (drawn: number): number => drawn + printErrorOf(behaviour, drawn) - bore;
  let low = Math.max(bore - BRACKET, bore / 2);
  while (f(low) > 0 && low > LEAST_SHARE * bore) low /= 2;
  let high = bore + BRACKET;
  while (f(high) < 0) high *= 2;
  return rootInBracket({ f, low, high });
}

/**
 * Drawn diameter whose printed bore is the wanted one, put in with its way; see drawnDiameterOf.
 *
 * @param behaviour - how the printer closes holes
 * @param bore - wanted bore Dt [mm], > 0
 * @returns D_x [mm], unrounded
 * @source hole-metrology-note fit, solved for the drawn diameter
 */
export function exactDiameter(behaviour: HoleBehaviour, bore: Derived): Entry {
  const value = drawnDiameterOf(behaviour, bore.value);
  return entryBy('D_x', value, 'mm', (steps) => steps.diameterSolved(behaviour, bore));
}

/**
 * Diameter to draw so that the wanted bore comes out, rounded to the step.
 *
 *     D + e(D) = Dt, then the nearest multiple of the step
 *     a circle that leaves as a polygon of N corners is drawn larger by 1/cos(π/N) first
 *
 * With compensation in the slicer the wanted bore itself is drawn: never both.
 *
 * @param bore - wanted bore Dt [mm], > 0
 * @param habits - how the printer closes holes, where it is compensated, step [mm], corners of its polygon [-] or none
 * @returns D_CAD [mm]
 * @source hole-metrology-note fit
 * @source trade-practice pilot + 0.30 mm on a printer without calibration
 * @example bore 4.30 mm gives 4.55 mm
 */
export function holeToDraw(
  bore: Derived,
  habits: {
    readonly behaviour: HoleBehaviour;
    readonly compensation: Compensation;
    readonly step: number;
    readonly facets?: number;
  },
): Derived {
  const { behaviour, compensation, step, facets } = habits;
  const polygon = facets === undefined ? 1 : Math.cos(Math.PI / facets);
  const corners = facets === undefined ? [] : [entry('N', facets, '-')];
  if (compensation === 'in-slicer') {
    return {
      symbol: 'D_CAD',
      value: roundedToStep(bore.value / polygon, step),
      unit: 'mm',
      formula: facets === undefined ? 'round(D_t/step) · step' : 'round(D_t/cos(π/N)/step) · step',
      entries: [entryFrom(bore), entry('step', step, 'mm'), ...corners],
      source: 'trade-practice',
      standing: 'common-practice',
    };
  }
  const exact = exactDiameter(behaviour, bore);
  return {
    symbol: 'D_CAD',
    value: roundedToStep(exact.value / polygon, step),
    unit: 'mm',
    formula: facets === undefined ? 'round((D_t − e)/step) · step' : 'round((D_t − e)/cos(π/N)/step) · step',
    entries: [
      entryFrom(bore),
      entryFrom(printError(behaviour, exact)),
      entry('step', step, 'mm'),
      ...corners,
    ],
    source: behaviour.standing === 'measured' ? 'your-measurement' : 'hole-metrology-note',
    standing: behaviour.standing,
  };
}
