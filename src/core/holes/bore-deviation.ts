import { type Derived, entry } from '../sources/derived.ts';
import { type ExistingHole, measuredDeviationOf, OUT_OF_ROUND } from './existing-hole.ts';
import { boreDeviationOf, type HoleBehaviour } from './print-error.ts';

/** The hole that a bore comes of, and how surely the pilot is known; mm. */
interface Drawn {
  /** Drawn diameter, > 0. */
  readonly drawn: number;
  /** ≥ 0; 0 where the pilot plays no part. */
  readonly pilotUncertainty: number;
}

const pilotEntry = (pilotUncertainty: number) =>
  pilotUncertainty === 0 ? [] : [entry('u_p', pilotUncertainty, 'mm')];
const withPilot = (squares: string, pilotUncertainty: number) =>
  pilotUncertainty === 0 ? `√(${squares})` : `√(${squares} + u_p²)`;

/**
 * Standard deviation of a printed bore about its expected diameter, with its derivation; see boreDeviationOf.
 *
 *     s = √(u_a² + 2 · ln(D/4 mm) · u_ab + (ln(D/4 mm) · u_b)² + s_r² + u_p²)
 *
 * @param behaviour - how the printer closes holes [mm]
 * @param hole - drawn diameter D [mm], > 0; standard uncertainty of the pilot diameter u_p [mm], ≥ 0
 * @returns s [mm]
 * @source jcgm-100 combination
 */
export const boreDeviation = (behaviour: HoleBehaviour, { drawn, pilotUncertainty }: Drawn): Derived => ({
  symbol: 's',
  value: boreDeviationOf(behaviour, drawn, pilotUncertainty),
  unit: 'mm',
  formula: withPilot('u_a² + 2 · ln(D_CAD/4 mm) · u_ab + (ln(D_CAD/4 mm) · u_b)² + s_r²', pilotUncertainty),
  entries: [
    entry('u_a', behaviour.offset.standardUncertainty, 'mm'),
    entry('u_b', behaviour.slope.standardUncertainty, 'mm'),
    entry('u_ab', behaviour.covariance ?? 0, 'mm²'),
    entry('D_CAD', drawn, 'mm'),
    entry('s_r', behaviour.repeatability, 'mm'),
    ...pilotEntry(pilotUncertainty),
  ],
  source: 'jcgm-100',
  standing: behaviour.standing,
});

/**
 * Standard deviation of a measured bore about its reading, with its derivation; see measuredDeviationOf.
 *
 *     s = √((a_c/√3)² + (r_o/√3)² + u_p²)
 *
 * @param hole - permissible error a_c [mm], ≥ 0
 * @param pilotUncertainty - standard uncertainty of the pilot diameter u_p [mm], ≥ 0
 * @returns s [mm], > 0
 * @source jcgm-100 combination
 * @source own-model out of round r_o
 */
export const measuredDeviation = (
  hole: Pick<ExistingHole, 'permissibleError'>,
  pilotUncertainty: number,
): Derived => ({
  symbol: 's',
  value: measuredDeviationOf(hole, pilotUncertainty),
  unit: 'mm',
  formula: withPilot('(a_c/√3)² + (r_o/√3)²', pilotUncertainty),
  entries: [
    entry('a_c', hole.permissibleError, 'mm'),
    entry('r_o', OUT_OF_ROUND, 'mm'),
    ...pilotEntry(pilotUncertainty),
  ],
  source: 'jcgm-100',
  standing: 'measured',
});
