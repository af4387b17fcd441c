import { type Derived, type Entry, entry, entryAs } from '../sources/derived.ts';
import { type ExistingHole, measuredDeviationOf, OUT_OF_ROUND } from './existing-hole.ts';
import { boreDeviationOf, curveEntry, type HoleBehaviour } from './print-error.ts';

/** The hole that a bore comes of, and how surely the pilot is known; mm. */
export interface DrawnHole {
  /** Drawn diameter, > 0. */
  readonly drawn: Entry;
  /** Standard uncertainty, ≥ 0; absent where the pilot plays no part. */
  readonly pilotUncertainty?: Entry;
}

const withPilot = (squares: string, pilotUncertainty: Entry | undefined) =>
  pilotUncertainty === undefined
    ? { formula: `√(${squares})`, pilot: [] }
    : { formula: `√(${squares} + u_p²)`, pilot: [entryAs('u_p', pilotUncertainty)] };

/**
 * Standard deviation of a printed bore about its expected diameter, with its derivation; see boreDeviationOf.
 *
 *     s = √(u_a² + 2 · ln(D/4 mm) · u_ab + (ln(D/4 mm) · u_b)² + s_r² + u_p²)
 *
 * @param behaviour - how the printer closes holes [mm]
 * @param hole - drawn diameter D [mm], > 0; standard uncertainty of the pilot diameter u_p [mm], ≥ 0, or none
 * @returns s [mm]
 * @source jcgm-100 combination
 */
export function boreDeviation(behaviour: HoleBehaviour, { drawn, pilotUncertainty }: DrawnHole): Derived {
  const [offset, slope, both, scatter] = spreadEntries(behaviour);
  const x = `ln(${drawn.symbol}/4 mm)`;
  const squares = `${offset.symbol}² + 2 · ${x} · ${both.symbol} + (${x} · ${slope.symbol})² + s_r²`;
  const { formula, pilot } = withPilot(squares, pilotUncertainty);
  return {
    symbol: 's',
    value: boreDeviationOf(behaviour, drawn.value, pilotUncertainty?.value ?? 0),
    unit: 'mm',
    formula,
    entries: [offset, slope, both, drawn, scatter, ...pilot],
    source: 'jcgm-100',
    standing: behaviour.standing,
  };
}

/** How surely a curve is known: standard uncertainties of offset and slope, their covariance, scatter from hole to hole. */
export const spreadEntries = ({
  offset,
  slope,
  covariance,
  repeatability,
  figures,
}: HoleBehaviour): readonly [Entry, Entry, Entry, Entry] => [
  curveEntry(figures?.offsetUncertainty, entry('u_a', offset.standardUncertainty, 'mm')),
  curveEntry(figures?.slopeUncertainty, entry('u_b', slope.standardUncertainty, 'mm')),
  curveEntry(figures?.covariance, entry('u_ab', covariance ?? 0, 'mm²')),
  curveEntry(figures?.scatter, entry('s_r', repeatability, 'mm')),
];

/**
 * Standard deviation of a measured bore about its reading, with its derivation; see measuredDeviationOf.
 *
 *     s = √((a_c/√3)² + (r_o/√3)² + u_p²)
 *
 * @param hole - permissible error a_c [mm], ≥ 0
 * @param pilotUncertainty - standard uncertainty of the pilot diameter u_p [mm], ≥ 0, or none
 * @returns s [mm], > 0
 * @source jcgm-100 combination
 * @source own-model out of round r_o
 */
export function measuredDeviation(
  hole: Pick<ExistingHole, 'permissibleError'>,
  pilotUncertainty: Entry | undefined,
): Derived {
  const { formula, pilot } = withPilot('(a_c/√3)² + (r_o/√3)²', pilotUncertainty);
  return {
    symbol: 's',
    value: measuredDeviationOf(hole, pilotUncertainty?.value ?? 0),
    unit: 'mm',
    formula,
    entries: [entry('a_c', hole.permissibleError, 'mm'), entry('r_o', OUT_OF_ROUND, 'mm'), ...pilot],
    source: 'jcgm-100',
    standing: 'measured',
  };
}
