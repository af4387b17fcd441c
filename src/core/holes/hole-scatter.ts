import { type LineBelief, lineAfter } from './hole-line.ts';

/** Degrees of freedom with which the repeatability is believed before any reading (estimate). */
export const SCATTER_FREEDOM = 4;
/** Scatters whose density is below exp(−30) of the greatest are left out. */
const NEGLIGIBLE = 30;
/** Finest step of ln σ, and the first one in such steps. */
const FINEST = 2 ** -10;
const FIRST_STRIDE = 2 ** 9;
/** So many scatters must lie within exp(−2) of the greatest density, about two deviations each side. */
const ENOUGH = 8;

/** One hole on the line: x = ln(D/4 mm), y its error and how surely it was measured, mm. */
export interface LinePoint {
  readonly x: number;
  readonly y: number;
  readonly standardUncertainty: number;
}

/** The line for one scatter from hole to hole, σ. */
interface GivenScatter {
  readonly scatter: number;
  readonly belief: LineBelief;
  readonly logDensity: number;
}

/** The line with its scatter summed over. */
export interface LineWithScatter {
  readonly line: LineBelief;
  /** 1/√E[σ⁻²]: what the scatter counts for in the spread of the next hole, mm. */
  readonly scatter: number;
}

/**
 * The line and the scatter from hole to hole together, by sums over the scatter.
 *
 *     y = a + b·x + ε        ε ~ N(0, σ² + u²), u of each reading        4·s0²/σ² ~ χ² with 4 degrees of freedom
 *     p(σ | y) ∝ σ⁻⁴ · exp(−4·s0²/(2σ²)) · p(y | σ) on even steps of ln σ
 *
 * For each σ the line is exact (lineAfter); mean and covariance of the line are those of the mixture.
 *
 * @param prior - line before the points
 * @param priorScatter - repeatability before them s0 [mm], > 0
 * @param points - at least one
 * @returns line and scatter after them
 * @source own-model prior of the scatter
 */
export function lineWithScatter(
  prior: LineBelief,
  priorScatter: number,
  points: readonly LinePoint[],
): LineWithScatter {
  const parts = scatterLattice(prior, priorScatter, points);
  const greatest = greatestOf(parts);
  const weighted = parts.map((part) => ({ ...part, share: Math.exp(part.logDensity - greatest) }));
  const total = weighted.reduce((sum, { share }) => sum + share, 0);
  const meanOf = (f: (part: GivenScatter) => number): number =>
    weighted.reduce((sum, part) => sum + part.share * f(part), 0) / total;
  const offset = meanOf(({ belief }) => belief.offset);
  const slope = meanOf(({ belief }) => belief.slope);
  return {
    line: {
      offset,
      slope,
      offsetVariance: meanOf(({ belief: b }) => b.offsetVariance + (b.offset - offset) ** 2),
      slopeVariance: meanOf(({ belief: b }) => b.slopeVariance + (b.slope - slope) ** 2),
      covariance: meanOf(({ belief: b }) => b.covariance + (b.offset - offset) * (b.slope - slope)),
    },
    scatter: 1 / Math.sqrt(meanOf(({ scatter }) => scatter ** -2)),
  };
}

const greatestOf = (parts: readonly GivenScatter[]): number =>
  parts.reduce((most, { logDensity }) => Math.max(most, logDensity), -Infinity);

function givenScatter(
  prior: LineBelief,
  priorScatter: number,
  points: readonly LinePoint[],
  scatter: number,
): GivenScatter {
  let logWeights = 0;
  const weighted = points.map(({ x, y, standardUncertainty }) => {
    const variance = scatter ** 2 + standardUncertainty ** 2;
    logWeights -= Math.log(variance);
    return { x, y, weight: 1 / variance };
  });
  const { belief, misfit } = lineAfter(prior, weighted);
  const logPrior = -SCATTER_FREEDOM * (Math.log(scatter) + (priorScatter / scatter) ** 2 / 2);
  return { scatter, belief, logDensity: logPrior + (logWeights - misfit) / 2 };
}

/** Ends of ln σ beyond which no readings can take it, generously. */
function limitsOf(prior: LineBelief, priorScatter: number, points: readonly LinePoint[]) {
  const farthest = points.reduce(
    (most, { x, y }) => Math.max(most, Math.abs(y - prior.offset - prior.slope * x)),
    priorScatter,
  );
  return {
    low: Math.log(priorScatter / Math.sqrt(SCATTER_FREEDOM + points.length)) - 1.5,
    high: Math.log(farthest) + NEGLIGIBLE / SCATTER_FREEDOM,
  };
}

/** Scatters with even steps of ln σ where their density counts, fine enough to be summed. */
function scatterLattice(
  prior: LineBelief,
  priorScatter: number,
  points: readonly LinePoint[],
): readonly GivenScatter[] {
  const { low, high } = limitsOf(prior, priorScatter, points);
  const known = new Map<number, GivenScatter>();
  const at = (place: number): GivenScatter => {
    const before = known.get(place);
    if (before !== undefined) return before;
    const given = givenScatter(prior, priorScatter, points, Math.exp(low + place * FINEST));
    known.set(place, given);
    return given;
  };
  const count = Math.ceil((high - low) / (FIRST_STRIDE * FINEST));
  let places = Array.from({ length: count + 1 }, (_, index) => index * FIRST_STRIDE);
  for (let stride = FIRST_STRIDE; ; stride /= 2) {
    const greatest = greatestOf(places.map(at));
    places = places.filter((place) => at(place).logDensity > greatest - NEGLIGIBLE);
    const near = places.filter((place) => at(place).logDensity > greatest - 2).length;
    if (near >= ENOUGH || stride === 1) return places.map(at);
    places = [...new Set(places.flatMap((place) => [place - stride / 2, place, place + stride / 2]))];
  }
}
