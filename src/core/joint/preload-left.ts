import type { End } from '../host/little-known.ts';
import { isCreepInDoubt, type PolymerCreep } from '../relaxation/polymer-creep.ts';
import { lastRetightening, RETIGHTENING_HOURS } from '../relaxation/retightening.ts';
import { type Derived, rangeOfCareful } from '../sources/derived.ts';
import type { CreepingLoop, JointCreep, Plastic } from './clamp-loop.ts';
import type { Joint } from './joint.ts';
import { leastBy } from './least-by.ts';
import {
  type CreptSpan,
  creptOver,
  type Knowledge,
  type Span,
  shareLeft,
  shareLeftOf,
  type Taken,
} from './share-left.ts';

/** How long a joint is under load, and how often it is tightened again. */
type Loads = Pick<Joint['loads'], 'duration' | 'retightenings'>;

/** What a time does to the printed parts of a joint, within what is known of them: the same for every insert. */
export interface Life {
  /** What passes between one re-tightening and the next, and at last until the end. */
  readonly spans: readonly CreptSpan[];
  /** The last of them: until the end of the time under load. */
  readonly atEnd: CreptSpan;
  /** Where each plastic may be taken: the ends of what is in doubt. */
  readonly ends: Readonly<Record<Plastic, readonly Taken[]>>;
}

const EXPECTED: Taken = { creep: 'middle', modulus: 'middle' };
const MIDDLE: Knowledge = { host: EXPECTED, clamped: EXPECTED };
/**
 * Where little is known: the host has crept the most, which takes more of its strength than of the force on it, and a
 * printed clamped part the least, which takes nothing off that force. Of a little known modulus the high end, at which
 * the force lasts longest.
 */
const ON_CREPT_HOST: Knowledge = {
  host: { creep: 'low', modulus: 'high' },
  clamped: { creep: 'high', modulus: 'high' },
};

/**
 * What the time under load does to the printed parts of a joint.
 *
 * @param creep - of both parts
 * @param loads - time under load t [h], re-tightenings
 * @returns spans between re-tightenings, creep factors [-], ends of what is known
 * @source own-model the ends of a little known creep and modulus
 */
export function lifeOf(creep: JointCreep, { duration, retightenings }: Loads): Life {
  const restored = RETIGHTENING_HOURS.slice(0, retightenings).filter((hours) => hours < duration);
  const spans = [...restored, duration].map((until, index) => ({ restored: restored[index - 1], until }));
  return livedThrough(creep, spans, { restored: lastRetightening(duration, retightenings), until: duration });
}

/** The same for what is left at one time. */
function lifeAt({ creep }: CreepingLoop, { retightenings }: Loads, hours: number): Life {
  const span = { restored: lastRetightening(hours, retightenings), until: hours };
  return livedThrough(creep, [span], span);
}

const livedThrough = (creep: JointCreep, spans: readonly Span[], atEnd: Span): Life => ({
  spans: spans.map((span) => creptOver(creep, span)),
  atEnd: creptOver(creep, atEnd),
  ends: { host: endsOf(creep.host), clamped: endsOf(creep.clamped) },
});

/** Where a plastic may be taken: the ends of what is in doubt. */
function endsOf(creep: PolymerCreep | undefined): readonly Taken[] {
  if (creep === undefined) return [EXPECTED];
  const both: readonly End[] = ['low', 'high'];
  const creeps = isCreepInDoubt(creep) ? both : (['middle'] as const);
  const moduli = creep.polymer.modulusInPlane.lowConfidence === true ? both : (['middle'] as const);
  return creeps.flatMap((end) => moduli.map((modulus) => ({ creep: end, modulus })));
}

/**
 * Smallest share of the preload that is left at any time of a life, at the careful ends, as a plain number.
 *
 * @param loop - screw and plastics
 * @param life - of their parts
 * @returns the smallest F(t)/F0 [-], above 0, at most 1; its steps: preloadLeft
 * @source own-model the joint must stay closed between re-tightenings too
 */
export function preloadLeftOf(loop: CreepingLoop, { spans, ends }: Life): number {
  let least = 1;
  for (const { atFirst, atLast } of spans) {
    // Every plastic at every end with every other: shareLeftOf, without working out its sums anew for each.
    const leastFrom = (at: number, first: number, last: number): number => {
      const link = loop.links[at];
      if (link === undefined) return first / last;
      const { of, compliance } = link;
      let smallest = 1;
      for (const { creep, modulus } of ends[of]) {
        const more = compliance[modulus];
        const share = leastFrom(at + 1, first + more * atFirst[of][creep], last + more * atLast[of][creep]);
        smallest = Math.min(smallest, share);
      }
      return smallest;
    };
    least = Math.min(least, leastFrom(0, loop.elasticCompliance, loop.elasticCompliance));
  }
  return least;
}

/**
 * Smallest share of the preload that is left at any time of a life: at its end, or just before a re-tightening.
 *
 *     F(t)/F0 = [Cb + Σ Cp · c(tr)]/[Cb + Σ Cp · c(t)]        c(t) = 1 + m · θ^−2.4 · tⁿ
 *
 * In the loop: the screw; a printed clamped part without a sleeve (pressure cone); the plastic that holds the insert
 * where the clamp force passes through it. A metal part on the insert leaves no plastic in the loop: nothing is lost.
 * tr is the last re-tightening: what has crept until then need not creep again. Where little is known of creep or
 * modulus the least of all their ends counts, and the range shows the others: the share is a quotient of sums, each of
 * one power in every creep factor and in every compliance, so its least and most lie at ends.
 *
 * @param loop - screw and plastics
 * @param life - of their parts
 * @returns the smallest F(t)/F0 [-], above 0, at most 1
 * @source own-model constant length of the loop, growth with temperature
 * @source findley-iso-899 creep, extrapolated beyond 1000 h
 * @source shigley pressure cone, screw stiffness
 */
export function preloadLeft(loop: CreepingLoop, life: Life): Derived {
  const ends = leastAtEnds(loop, life);
  const careful = leastBy(ends, ({ size }) => size).one;
  const middle = leastAt(loop, life, MIDDLE).size;
  const high = Math.max(...ends.map(({ size }) => size));
  return shareLeft(loop, careful.one, careful.known, rangeOfCareful({ low: careful.size, middle, high }));
}

/**
 * Smallest share of the preload that is left at any time of a life, at the best of all ends of what is known.
 *
 * @param loop - screw and plastics
 * @param life - of their parts
 * @returns the most that preloadLeft may be [-]: the high end of its range; the same where nothing is in doubt
 * @source own-model the ends of a little known creep and modulus
 */
export function bestPreloadLeft(loop: CreepingLoop, life: Life): Derived {
  const best = leastBy(leastAtEnds(loop, life), ({ size }) => -size).one;
  return shareLeft(loop, best.one, best.known);
}

/**
 * Share of the preload that is left at a time, since the last re-tightening; see preloadLeft.
 *
 * @param loop - screw and plastics
 * @param loads - re-tightenings
 * @param hours - time since assembly t [h], ≥ 0
 * @returns F(t)/F0 [-], above 0, at most 1
 * @source own-model constant length of the loop
 */
export const preloadLeftAt = (loop: CreepingLoop, loads: Loads, hours: number): Derived =>
  preloadLeft(loop, lifeAt(loop, loads, hours));

/**
 * Share of the preload that is left at a time at the best of all ends of what is known; see preloadLeftAt.
 *
 * @param loop - screw and plastics
 * @param loads - re-tightenings
 * @param hours - time since assembly t [h], ≥ 0
 * @returns F(t)/F0 [-], the same as that of preloadLeftAt where nothing is in doubt
 * @source own-model the ends of a little known creep and modulus
 */
export const bestPreloadLeftAt = (loop: CreepingLoop, loads: Loads, hours: number): Derived =>
  bestPreloadLeft(loop, lifeAt(loop, loads, hours));

/**
 * Share of the preload that loads a host which has crept, at the end of a life, as a plain number.
 *
 * @param loop - screw and plastics
 * @param life - of their parts
 * @returns F(t)/F0 [-], above 0, at most 1; its steps: preloadOnCreptHost
 * @source own-model strength and force follow one law of creep
 */
export const preloadOnCreptHostOf = (loop: CreepingLoop, { atEnd }: Life): number =>
  shareLeftOf(loop, atEnd, ON_CREPT_HOST);

/**
 * Share of the preload that loads a host which has crept, at the end of a life: where little is known, the ends at which
 * the host has lost the most strength to the most force.
 *
 * @param loop - screw and plastics
 * @param life - of their parts
 * @returns F(t)/F0 [-], above 0, at most 1; see preloadLeft
 * @source own-model strength and force follow one law of creep
 */
export const preloadOnCreptHost = (loop: CreepingLoop, { atEnd }: Life): Derived =>
  shareLeft(loop, atEnd, ON_CREPT_HOST);

/** The span of a life at which the least is left, and how much. */
const leastAt = (loop: CreepingLoop, { spans }: Life, known: Knowledge) =>
  leastBy(spans, (span) => shareLeftOf(loop, span, known));

/** The same at every end of what is in doubt of both plastics, each with each. */
const leastAtEnds = (loop: CreepingLoop, life: Life) =>
  life.ends.host.flatMap((host) =>
    life.ends.clamped.map((clamped) => {
      const known = { host, clamped };
      return { known, ...leastAt(loop, life, known) };
    }),
  );
