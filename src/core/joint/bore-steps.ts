import { boreDeviation, type DrawnHole, measuredDeviation } from '../holes/bore-deviation.ts';
import { type Derived, entryFrom } from '../sources/derived.ts';
import { type Bore, expectedBoreOf, type HoleHabits, printErrorIn, seenEntry } from './joint-bore.ts';

/**
 * Bore to be expected, with its derivation: of a hole as drawn, or of the one that is there; see expectedBoreOf.
 *
 *     D = D_e + e        D_e = D_CAD · cos(π/N) for a polygon of N corners, D_CAD for a true circle
 *
 * @param joint - hole habits
 * @param bore - what boreOf gave for the same joint
 * @returns D [mm]
 * @source hole-metrology-note see printError
 */
export function expectedBore({ holes }: HoleHabits, { printed, drawn }: Bore): Derived {
  if (holes.existing) return { ...printed, symbol: 'D' };
  const error = printErrorIn({ holes }, drawn);
  const seen = seenEntry(holes, drawn);
  return {
    symbol: 'D',
    value: expectedBoreOf({ holes }, drawn.value),
    unit: 'mm',
    formula: `${seen.symbol} + e`,
    entries: [seen, entryFrom(error)],
    source: error.source,
    standing: error.standing,
  };
}

/**
 * Standard deviation of the bore about the expected one, with its derivation; see boreDeviationIn.
 *
 * @param joint - hole habits, the hole that is there or none
 * @param hole - drawn diameter [mm], > 0; standard uncertainty of the pilot diameter [mm], ≥ 0, or none
 * @returns s [mm], > 0
 * @source jcgm-100 combination
 */
export const boreScatter = ({ holes }: HoleHabits, hole: DrawnHole): Derived =>
  holes.existing?.known === 'as-measured'
    ? measuredDeviation(holes.existing, hole.pilotUncertainty)
    : boreDeviation(holes.behaviour, hole);
