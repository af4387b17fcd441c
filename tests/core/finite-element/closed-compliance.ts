import {
  type BondedRing,
  columnCompliance,
  endHeldCompliance,
  pressedReach,
  pulledReach,
  rimHeldCompliance,
} from '../../../src/core/joint/bonded-ring.ts';
import { type SolvedCase, shared } from './results.ts';

/** The ring of a solved case, its outside no farther than a reach, mm. */
export const ringOf = (solved: SolvedCase, reach: number): BondedRing => ({
  knurlDiameter: shared.knurlDiameter,
  outerDiameter: Math.min(solved.outerPerKnurl * shared.knurlDiameter, reach),
  length: solved.lengthPerKnurl * shared.knurlDiameter,
  modulus: solved.modulus,
  poissonRatio: solved.poissonRatio,
});

/** Compliance between the insert and where the reaction stands [mm/N], by the core's form for that reaction. */
export function closedCompliance(solved: SolvedCase): number {
  const insert = {
    knurlDiameter: shared.knurlDiameter,
    length: solved.lengthPerKnurl * shared.knurlDiameter,
  };
  if (solved.load === 'clamp' || solved.load === 'wide') {
    return endHeldCompliance(ringOf(solved, pressedReach(insert)));
  }
  const ring = ringOf(solved, pulledReach(insert));
  if (solved.host === 'part') return rimHeldCompliance(ring);
  const column = {
    outerDiameter: ring.outerDiameter,
    boreDiameter: shared.boreDiameter,
    room: shared.clearanceBelow,
    solid: solved.floor,
    modulus: ring.modulus,
    poissonRatio: ring.poissonRatio,
  };
  return endHeldCompliance(ring) + columnCompliance(column);
}
