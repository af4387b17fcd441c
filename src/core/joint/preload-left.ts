import type { End } from '../host/little-known.ts';
import { creepFactorOf } from '../relaxation/findley.ts';
import { isCreepInDoubt } from '../relaxation/polymer-creep.ts';
import { residualPreloadRatioOf } from '../relaxation/residual-preload.ts';
import { lastRetightening, RETIGHTENING_HOURS } from '../relaxation/retightening.ts';
import { type Derived, entry, rangeOfCareful } from '../sources/derived.ts';
import type { CreepingLoop, Plastic, PlasticLink } from './clamp-loop.ts';
import type { Joint } from './joint.ts';
import { leastBy } from './least-by.ts';

/** How long a joint is under load, and how often it is tightened again. */
type Loads = Pick<Joint['loads'], 'duration' | 'retightenings'>;

/** Where creep and modulus of a plastic are taken within what is known of them. */
interface Taken {
  readonly creep: End;
  readonly modulus: End;
}

type Knowledge = Readonly<Record<Plastic, Taken>>;

/**
 * Share of the preload that is left at a time.
 *
 *     F(t)/F0 = [Cb + Σ Cp · c(tr)]/[Cb + Σ Cp · c(t)]        c(t) = 1 + m · θ^−2.4 · tⁿ
 *
 * In the loop: the screw; a printed clamped part without a sleeve (pressure cone); the plastic that holds the insert
 * where the clamp force passes through it. A metal part on the insert leaves no plastic in the loop: nothing is lost.
 * tr is the last re-tightening: what has crept until then need not creep again. Where little is known of creep or
 * modulus the least of all their ends counts, and the range shows the others.
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
 * Share of the preload that is left at a time at the best of all ends of what is known; see preloadLeftAt.
 *
 * @param loop - screw and plastics
 * @param loads - re-tightenings
 * @param hours - time since assembly t [h], ≥ 0
 * @returns F(t)/F0 [-], the same as that of preloadLeftAt where nothing is in doubt
 * @source own-model the ends of a little known creep and modulus
 */
export const bestPreloadLeftAt = (loop: CreepingLoop, { retightenings }: Loads, hours: number): Derived =>
  bestLeft(loop, [{ restored: lastRetightening(hours, retightenings), until: hours }]);

/**
 * Smallest share of the preload that is left at any time under load: at its end, or just before a re-tightening.
 *
 * @param loop - screw and plastics
 * @param loads - time under load t [h], re-tightenings
 * @returns the smallest F(t)/F0 [-], above 0, at most 1; see preloadLeftAt
 * @source own-model the joint must stay closed between re-tightenings too
 */
export const preloadLeft = (loop: CreepingLoop, loads: Loads): Derived => leastLeft(loop, spansOf(loads));

/**
 * Smallest share of the preload that is left at any time under load, at the best of all ends of what is known.
 *
 * @param loop - screw and plastics
 * @param loads - time under load t [h], re-tightenings
 * @returns the most that preloadLeft may be [-]: the high end of its range; the same where nothing is in doubt
 * @source own-model the ends of a little known creep and modulus
 */
export const bestPreloadLeft = (loop: CreepingLoop, loads: Loads): Derived => bestLeft(loop, spansOf(loads));

/** What passes between one re-tightening and the next, and at last until the end. */
function spansOf({ duration, retightenings }: Loads): readonly Span[] {
  const restored = RETIGHTENING_HOURS.slice(0, retightenings).filter((hours) => hours < duration);
  return [...restored, duration].map((until, index) => ({ restored: restored[index - 1], until }));
}

/**
 * Share of the preload that loads a host which has crept, at the end of the time under load.
 *
 * Where little is known of the creep: the host has crept the most, which takes more of its strength than of the force
 * on it, and a printed clamped part the least, which takes nothing off that force. Of a little known modulus the high
 * end, at which the force lasts longest.
 *
 * @param loop - screw and plastics
 * @param loads - time under load t [h], re-tightenings
 * @returns F(t)/F0 [-], above 0, at most 1; see preloadLeftAt
 * @source own-model strength and force follow one law of creep
 */
export function preloadOnCreptHost(loop: CreepingLoop, { duration, retightenings }: Loads): Derived {
  const span = { restored: lastRetightening(duration, retightenings), until: duration };
  return shareLeft(loop, span, {
    host: { creep: 'low', modulus: 'high' },
    clamped: { creep: 'high', modulus: 'high' },
  });
}

/** From a restored preload, or from the assembly where none was, to a time; h. */
interface Span {
  readonly restored: number | undefined;
  readonly until: number;
}

/** Compliance of the plastic after a time, mm/N; without one at once. */
const plasticAt = ({ links }: CreepingLoop, known: Knowledge, hours?: number): number =>
  links.reduce((sum, { of, compliance, creep }) => {
    const { modulus, creep: end } = known[of];
    return sum + compliance[modulus] * (hours === undefined ? 1 : creepFactorOf(creep[end], hours));
  }, 0);

/** Compliance of the plastic, how it has grown at the beginning and at the end of a span, and what is left then. */
function shareOf(loop: CreepingLoop, { restored, until }: Span, known: Knowledge) {
  const { elasticCompliance } = loop;
  const plasticCompliance = plasticAt(loop, known);
  const grownAt = (hours: number) =>
    plasticCompliance === 0 ? 1 : plasticAt(loop, known, hours) / plasticCompliance;
  const crept = restored === undefined ? 1 : grownAt(restored);
  const creep = grownAt(until);
  const leftOf = (factor: number) => residualPreloadRatioOf({ elasticCompliance, plasticCompliance }, factor);
  return { plasticCompliance, crept, creep, share: leftOf(creep) / leftOf(crept) };
}

/** Share left at the end of a span. */
function shareLeft(loop: CreepingLoop, span: Span, known: Knowledge): Derived {
  const { plasticCompliance, crept, creep, share } = shareOf(loop, span, known);
  return {
    symbol: 'R_F',
    value: share,
    unit: '-',
    formula: '(1 + C_p/C_b · c_r)/(1 + C_p/C_b · c)',
    entries: [
      entry('C_p/C_b', plasticCompliance / loop.elasticCompliance, '-'),
      entry('c', creep, '-'),
      entry('c_r', crept, '-'),
      entry('t', span.until, 'h'),
    ],
    source: 'own-model',
    standing: 'estimate',
  };
}

const EXPECTED: Taken = { creep: 'middle', modulus: 'middle' };
const MIDDLE: Knowledge = { host: EXPECTED, clamped: EXPECTED };

/** Where a plastic of the loop may be taken: the ends of what is in doubt. */
function endsOf(loop: CreepingLoop, plastic: Plastic): readonly Taken[] {
  const link = loop.links.find(({ of }) => of === plastic);
  if (link === undefined) return [EXPECTED];
  const both: readonly End[] = ['low', 'high'];
  const creeps = isCreepInDoubt(link.creep) ? both : (['middle'] as const);
  const moduli = isModulusInDoubt(link) ? both : (['middle'] as const);
  return creeps.flatMap((end) => moduli.map((modulus) => ({ creep: end, modulus })));
}

/** The ends of what is in doubt of both plastics, each with each. */
const knowledgesOf = (loop: CreepingLoop): readonly Knowledge[] =>
  endsOf(loop, 'host').flatMap((host) => endsOf(loop, 'clamped').map((clamped) => ({ host, clamped })));

const isModulusInDoubt = ({ compliance }: PlasticLink): boolean => compliance.low !== compliance.high;

const isInDoubt = (link: PlasticLink): boolean => isCreepInDoubt(link.creep) || isModulusInDoubt(link);

/** The span of some at which the least is left, and how much. */
const leastAt = (loop: CreepingLoop, spans: readonly Span[], known: Knowledge) =>
  leastBy(spans, (span) => shareOf(loop, span, known).share);

/** The same at every end of what is in doubt. */
const leastAtEnds = (loop: CreepingLoop, spans: readonly Span[]) =>
  knowledgesOf(loop).map((known) => ({ known, ...leastAt(loop, spans, known) }));

/**
 * The least share of some spans, at the careful ends of creep and modulus, with what the others give. The share is a
 * quotient of sums, each of one power in every creep factor and in every compliance: its least and most lie at ends.
 */
function leastLeft(loop: CreepingLoop, spans: readonly Span[]): Derived {
  const middle = leastAt(loop, spans, MIDDLE);
  if (!loop.links.some(isInDoubt)) return shareLeft(loop, middle.one, MIDDLE);
  const ends = leastAtEnds(loop, spans);
  const careful = leastBy(ends, ({ size }) => size).one;
  const high = Math.max(...ends.map(({ size }) => size));
  return {
    ...shareLeft(loop, careful.one, careful.known),
    ...rangeOfCareful({ low: careful.size, middle: middle.size, high }),
  };
}

/** The least share of some spans at the best of all ends: the high end of what leastLeft gives. */
function bestLeft(loop: CreepingLoop, spans: readonly Span[]): Derived {
  const best = leastBy(leastAtEnds(loop, spans), ({ size }) => -size).one;
  return shareLeft(loop, best.one, best.known);
}
