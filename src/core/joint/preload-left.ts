import type { End } from '../host/little-known.ts';
import { creepFactorOf } from '../relaxation/findley.ts';
import { isCreepInDoubt } from '../relaxation/polymer-creep.ts';
import { residualPreloadRatioOf } from '../relaxation/residual-preload.ts';
import { lastRetightening, RETIGHTENING_HOURS } from '../relaxation/retightening.ts';
import { type Derived, entry, rangeOfCareful } from '../sources/derived.ts';
import type { CreepingLoop, Plastic } from './clamp-loop.ts';
import type { Joint } from './joint.ts';
import { leastBy } from './least-by.ts';

/** How long a joint is under load, and how often it is tightened again. */
type Loads = Pick<Joint['loads'], 'duration' | 'retightenings'>;

/** Where the creep of each plastic is taken within what is known of it. */
type Knowledge = Readonly<Record<Plastic, End>>;

/**
 * Share of the preload that is left at a time.
 *
 *     F(t)/F0 = [Cb + Σ Cp · c(tr)]/[Cb + Σ Cp · c(t)]        c(t) = 1 + m · θ^−2.4 · tⁿ
 *
 * In the loop: the screw; a printed clamped part without a sleeve (pressure cone); the plastic that holds the insert
 * where the clamp force passes through it. A metal part on the insert leaves no plastic in the loop: nothing is lost.
 * tr is the last re-tightening: what has crept until then need not creep again. Where little is known of the creep the
 * least of all its ends counts, and the range shows the others.
 *
 * @param loop - screw and plastics
 * @param loads - re-tightenings
 * @param hours - time since assembly t [h], ≥ 0
 * @returns F(t)/F0 [-], above 0, at most 1
 * @source own-model constant length of the loop, growth with temperature
 * @source findley-iso-899 creep, extrapolated beyond 1000 h
 * @source shigley pressure cone, screw stiffness
 */
export const preloadLeftAt = (loop: CreepingLoop, { retightenings }: Loads, hours: number): Derived =>
  leastLeft(loop, [{ restored: lastRetightening(hours, retightenings), until: hours }]);

/**
 * Smallest share of the preload that is left at any time under load: at its end, or just before a re-tightening.
 *
 * @param loop - screw and plastics
 * @param loads - time under load t [h], re-tightenings
 * @returns the smallest F(t)/F0 [-], above 0, at most 1; see preloadLeftAt
 * @source own-model the joint must stay closed between re-tightenings too
 */
export function preloadLeft(loop: CreepingLoop, { duration, retightenings }: Loads): Derived {
  const restored = RETIGHTENING_HOURS.slice(0, retightenings).filter((hours) => hours < duration);
  const spans = [...restored, duration].map((until, index) => ({ restored: restored[index - 1], until }));
  return leastLeft(loop, spans);
}

/**
 * Share of the preload that loads a host which has crept, at the end of the time under load.
 *
 * Where little is known of the creep: the host has crept the most, which takes more of its strength than of the force
 * on it, and a printed clamped part the least, which takes nothing off that force.
 *
 * @param loop - screw and plastics
 * @param loads - time under load t [h], re-tightenings
 * @returns F(t)/F0 [-], above 0, at most 1; see preloadLeftAt
 * @source own-model strength and force follow one law of creep
 */
export function preloadOnCreptHost(loop: CreepingLoop, { duration, retightenings }: Loads): Derived {
  const span = { restored: lastRetightening(duration, retightenings), until: duration };
  return shareLeft(loop, span, { host: 'low', clamped: 'high' });
}

/** From a restored preload, or from the assembly where none was, to a time; h. */
interface Span {
  readonly restored: number | undefined;
  readonly until: number;
}

/** Compliance of the plastic over its first one after a time, [-]. */
function creepAt({ links, plasticCompliance }: CreepingLoop, hours: number, known: Knowledge): number {
  if (plasticCompliance === 0) return 1;
  const crept = links.map(({ of, compliance, creep }) => compliance * creepFactorOf(creep[known[of]], hours));
  return crept.reduce((sum, one) => sum + one, 0) / plasticCompliance;
}

/** Creep at the beginning and at the end of a span, and the share of the preload left at its end. */
function shareOf(loop: CreepingLoop, { restored, until }: Span, known: Knowledge) {
  const crept = restored === undefined ? 1 : creepAt(loop, restored, known);
  const creep = creepAt(loop, until, known);
  return { crept, creep, share: residualPreloadRatioOf(loop, creep) / residualPreloadRatioOf(loop, crept) };
}

/** Share left at the end of a span. */
function shareLeft(loop: CreepingLoop, span: Span, known: Knowledge): Derived {
  const { crept, creep, share } = shareOf(loop, span, known);
  return {
    symbol: 'R_F',
    value: share,
    unit: '-',
    formula: '(1 + C_p/C_b · c_r)/(1 + C_p/C_b · c)',
    entries: [
      entry('C_p/C_b', loop.plasticCompliance / loop.elasticCompliance, '-'),
      entry('c', creep, '-'),
      entry('c_r', crept, '-'),
      entry('t', span.until, 'h'),
    ],
    source: 'own-model',
    standing: 'estimate',
  };
}

const MIDDLE: Knowledge = { host: 'middle', clamped: 'middle' };
/** The share is a quotient of sums, each of one power in every creep factor: its least and most lie at ends. */
const ENDS: readonly Knowledge[] = [
  { host: 'low', clamped: 'low' },
  { host: 'low', clamped: 'high' },
  { host: 'high', clamped: 'low' },
  { host: 'high', clamped: 'high' },
];

/** The least share of some spans, at the careful ends of creep, with what the others give. */
function leastLeft(loop: CreepingLoop, spans: readonly Span[]): Derived {
  const leastAt = (known: Knowledge) => leastBy(spans, (span) => shareOf(loop, span, known).share);
  const middle = leastAt(MIDDLE);
  if (!loop.links.some(({ creep }) => isCreepInDoubt(creep))) return shareLeft(loop, middle.one, MIDDLE);
  const ends = ENDS.map((known) => ({ known, ...leastAt(known) }));
  const careful = leastBy(ends, ({ size }) => size).one;
  const high = Math.max(...ends.map(({ size }) => size));
  return {
    ...shareLeft(loop, careful.one, careful.known),
    ...rangeOfCareful({ low: careful.size, middle: middle.size, high }),
  };
}
