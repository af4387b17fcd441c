import { type SolvedCase, shared } from './results.ts';

/** Elastic ring bonded to an insert: p = Do/Dk [-], lengths mm, moduli MPa. */
export interface BondedRing {
  readonly knurlDiameter: number;
  readonly outerPerKnurl: number;
  readonly length: number;
  readonly modulus: number;
  readonly poissonRatio: number;
}

const shearModulus = (ring: BondedRing): number => ring.modulus / (2 * (1 + ring.poissonRatio));

/** Ring held at a rigid rim: C = ln p/(2π·G·Lk) [mm/N]. */
export const rimHeldCompliance = (ring: BondedRing): number =>
  Math.log(ring.outerPerKnurl) / (2 * Math.PI * shearModulus(ring) * ring.length);

/** How far the mean of a ring with a free rim lags behind its sheared bore: Λ = p⁴·ln p/(p² − 1)² − (3p² − 1)/(4·(p² − 1)). */
export function lagFactor(p: number): number {
  const q = p ** 2 - 1;
  return (p ** 4 * Math.log(p)) / q ** 2 - (3 * p ** 2 - 1) / (4 * q);
}

/** x = Lk·√(2π·G/(Λ·E·A)), A = π/4·(Do² − Dk²) [-]. */
export function lagLength(ring: BondedRing): number {
  const area = (Math.PI / 4) * ring.knurlDiameter ** 2 * (ring.outerPerKnurl ** 2 - 1);
  const pull = lagFactor(ring.outerPerKnurl) * ring.modulus * area;
  return ring.length * Math.sqrt((2 * Math.PI * shearModulus(ring)) / pull);
}

/** Ring with a free rim, held at one end: C = Λ/(2π·G·Lk)·x·coth x [mm/N]. */
export function endHeldCompliance(ring: BondedRing): number {
  const x = lagLength(ring);
  const even = lagFactor(ring.outerPerKnurl) / (2 * Math.PI * shearModulus(ring) * ring.length);
  return (even * x) / Math.tanh(x);
}

/** Diameter that the shear of a pull reaches, over Dk: 1.55 + 1.27·Lk/Dk, fitted to the large part. */
export const reachPerKnurl = (lengthPerKnurl: number): number => 1.55 + 1.27 * lengthPerKnurl;

/** Diameter that answers a pressed ring round the insert, over Dk: 1.5 + 0.5·Lk/Dk, fitted. */
export const pressedReachPerKnurl = (lengthPerKnurl: number): number => 1.5 + 0.5 * lengthPerKnurl;

export const ringOf = (solved: SolvedCase, reach: number): BondedRing => ({
  knurlDiameter: shared.knurlDiameter,
  outerPerKnurl: Math.min(solved.outerPerKnurl, reach),
  length: solved.lengthPerKnurl * shared.knurlDiameter,
  modulus: solved.modulus,
  poissonRatio: solved.poissonRatio,
});

/**
 * Boss below the insert: C = a/(E·An) + s1/(M·A0) + (s − s1)/(E·A0) [mm/N].
 *
 * Room a under the insert on the net section An, solid s on the full one A0; of the solid the part s1 = min(s, Do/4)
 * next to the base cannot shrink sideways: M = E·(1 − ν)/((1 + ν)·(1 − 2ν)).
 */
export function columnCompliance(ring: BondedRing, floor: number): number {
  const outer = ring.outerPerKnurl * ring.knurlDiameter;
  const full = (Math.PI / 4) * outer ** 2;
  const net = full - (Math.PI / 4) * shared.boreDiameter ** 2;
  const { modulus, poissonRatio: nu } = ring;
  const confined = (modulus * (1 - nu)) / ((1 + nu) * (1 - 2 * nu));
  const held = Math.min(floor, outer / 4);
  return (
    shared.clearanceBelow / (modulus * net) + held / (confined * full) + (floor - held) / (modulus * full)
  );
}

/** Compliance between the insert and where the reaction stands [mm/N], by the closed form for that reaction. */
export function closedCompliance(solved: SolvedCase): number {
  const reach = reachPerKnurl(solved.lengthPerKnurl);
  if (solved.load === 'clamp' || solved.load === 'wide') {
    return endHeldCompliance(ringOf(solved, pressedReachPerKnurl(solved.lengthPerKnurl)));
  }
  const ring = ringOf(solved, reach);
  return solved.host === 'part'
    ? rimHeldCompliance(ring)
    : endHeldCompliance(ring) + columnCompliance(ring, solved.floor);
}
