import { normalQuantile } from '../numerics/normal-distribution.ts';
import { normalQuantileWay } from '../numerics/quantile-ways.ts';
import { type Derived, entry, entryAs, entryFrom } from '../sources/derived.ts';
import { countEntry } from './sample.ts';

/**
 * Share of all like parts that holds a load at least, when every one of n tested parts held it.
 *
 *     p = (1 − γ)^(1/n)        success run: all n hold with chance pⁿ, and a smaller p is refuted at 1 − γ
 *
 * Nothing is assumed of the scatter. The parts tested are drawn at random from those meant.
 *
 * @param count - parts that all held, n [-], ≥ 1
 * @param confidence - γ [-], 0 < γ < 1
 * @returns p [-], 0 … 1
 * @source success-run
 * @example 29 parts at 0.95 prove a share of 0.902
 */
export const provenShare = (count: number, confidence: number): number => (1 - confidence) ** (1 / count);

/**
 * Parts that must all hold, to prove a share.
 *
 *     n = ⌈ln(1 − γ)/ln p⌉
 *
 * @param share - p [-], 0 < p < 1
 * @param confidence - γ [-], 0 < γ < 1
 * @returns n [-]
 * @source success-run
 * @example 0.90/0.95 asks for 29
 */
export const partsToProve = (share: number, confidence: number): number =>
  // A hair below a whole number is one, but for the dust of two logarithms.
  Math.ceil(Math.log1p(-confidence) / Math.log(share) - 1e-9);

/** How long a proof load is held, s: until the reading stands still (common practice), 30 s where nothing else is said. */
export const PROOF_HOLD = { least: 10, usual: 30, greatest: 60 } as const;

/** How sure a run of parts shall make. */
export interface ProofPromise {
  /** Parts to be pulled n, [-], ≥ 1. */
  readonly count: number;
  /** Share of parts that shall hold F, p, [-], 0.5 < p < 1; 0.95 for a 5 % value. */
  readonly share: number;
  /** Confidence γ, [-], 0.5 ≤ γ < 1. */
  readonly confidence: number;
}

/** A time under load, and how much weaker the plastic is at its end than in a short pull. */
export interface LastingLoad {
  /** t, [h], > 0. */
  readonly hours: number;
  /** Creep factor c, [-], ≥ 1: strength is taken to fall as the creep modulus does. */
  readonly creep: Derived;
}

/** What shall be relied on, and how. */
export interface ProofQuestion extends ProofPromise {
  /** Load to rely on F, [N], > 0. */
  readonly load: number;
  /** Standard deviation of the logarithm within the set-up, taken as known, s, [-], > 0. */
  readonly scatter: Derived;
  /** Absent: for a short load. */
  readonly lasting?: LastingLoad;
}

/**
 * Load over the load to rely on, that n parts must all hold where the scatter is known.
 *
 *     L/F = exp(s·(z_p + z_n)),   z_n = z(1 − (1 − γ)^(1/n))
 *
 * With ln X ~ N(μ, s²) all n hold L with chance [1 − Φ((ln L − μ)/s)]ⁿ. The least μ that is not refuted at 1 − γ makes
 * this 1 − γ, so (ln L − μ)/s = z_n. The share p then holds exp(μ − z_p·s) = L·exp(−s·(z_n + z_p)), which is to be F.
 * With many parts the ratio goes to 1 just where the success run alone proves the share, and below 1 beyond.
 *
 * @param question - count n, share p, confidence γ [-] and deviation s [-]
 * @returns L/F [-], > 0
 * @source own-model lognormal with known deviation
 * @example 1 part, s 0.10, 0.95/0.95 give exp(0.329) = 1.390
 */
export function proofRatio({
  count,
  deviation,
  share,
  confidence,
}: ProofPromise & { readonly deviation: number }): number {
  return Math.exp(deviation * (normalQuantile(share) + normalQuantile(1 - provenShare(count, confidence))));
}

/** What pulling n parts at one load proves. */
export interface ProofPlan {
  /** Load to pull each part with, held shortly, [N]. */
  readonly proofLoad: Derived;
  /** Load that proves as much where it is held for the whole time under load, [N]; absent: no time was asked for. */
  readonly heldLoad?: Derived;
  /** Share that holds the proof load itself, whatever the scatter: the success run. */
  readonly shareAtProofLoad: Derived;
}

/**
 * What must be pulled, and held, to be allowed to rely on a load.
 *
 *     F_pl = F·exp(s·(z_p + z_n))          share at F_pl itself: (1 − γ)^(1/n)
 *     F_pl = F·c·exp(s·(z_p + z_n))        for a time under load, proved by a short pull
 *
 * Only if none breaks, and only for parts made and set alike. s is taken as known: where it is larger in truth, the load
 * relied on is too high. A short pull proves a short pull. What it says of a time under load rests on c, by which the
 * strength of the plastic is taken to fall until then; who would rather prove that too holds F_pl/c for the whole time.
 * Nothing is said of heat, unless the parts are pulled as warm as they will be.
 *
 * @param question - load F [N], parts n [-], scatter s [-], share p [-], confidence γ [-], time t [h] with c [-]
 * @returns proof loads [N] and the share that the run proves without a distribution [-]
 * @source own-model lognormal with known deviation; strength falls as the creep modulus
 * @source success-run
 */
export function proofPlan(question: ProofQuestion): ProofPlan {
  const { load, count, scatter, share, confidence, lasting } = question;
  const shareAtProofLoad: Derived = {
    symbol: 'R_h',
    value: provenShare(count, confidence),
    unit: '-',
    formula: '(1 − γ)^(1/n_t)',
    entries: [entry('γ', confidence, '-'), countEntry(count)],
    source: 'success-run',
    standing: 'published',
  };
  const weakestShare: Derived = {
    symbol: 'p_n',
    value: 1 - shareAtProofLoad.value,
    unit: '-',
    formula: '1 − R_h',
    entries: [entryFrom(shareAtProofLoad)],
    source: 'own-model',
    standing: 'published',
  };
  const pulled = (creep: Derived | undefined, hours = 0): Derived => ({
    symbol: 'F_pl',
    value: load * (creep?.value ?? 1) * proofRatio({ count, deviation: scatter.value, share, confidence }),
    unit: 'N',
    formula: creep ? 'F_r · c · exp(s_w · (z_p + z_n))' : 'F_r · exp(s_w · (z_p + z_n))',
    entries: [
      entry('F_r', load, 'N'),
      ...(creep ? [entryAs('c', entryFrom(creep)), entry('t', hours, 'h')] : []),
      entryFrom(scatter),
      entryFrom(normalQuantileWay('z_p', entry('p_s', share, '-'))),
      entryFrom(normalQuantileWay('z_n', entryFrom(weakestShare))),
    ],
    source: 'own-model',
    standing: 'estimate',
  });
  return lasting
    ? { proofLoad: pulled(lasting.creep, lasting.hours), heldLoad: pulled(undefined), shareAtProofLoad }
    : { proofLoad: pulled(undefined), shareAtProofLoad };
}
