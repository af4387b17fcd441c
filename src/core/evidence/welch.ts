import { studentProbability, studentQuantile } from '../numerics/student-t.ts';

/** Mean of a group, the variance of that mean, and the degrees of freedom it is known with. */
export interface GroupMean {
  readonly mean: number;
  /** s²/n. */
  readonly variance: number;
  /** n − 1. */
  readonly degrees: number;
}

/** Comparison of two means that need not scatter alike. */
export interface WelchComparison {
  readonly difference: number;
  /** Standard deviation of the difference. */
  readonly deviation: number;
  readonly t: number;
  readonly degrees: number;
  /** Two-sided chance of so large a t if the means were equal. */
  readonly chance: number;
}

/**
 * Degrees of freedom of a sum of variances, each known with its own.
 *
 *     ν = (v1 + v2)²/(v1²/ν1 + v2²/ν2)
 *
 * @param parts - variances v, at least one > 0, with degrees of freedom ν [-], ≥ 1
 * @returns ν [-]
 * @source welch-1947 with Satterthwaite
 */
export function satterthwaiteDegrees(parts: readonly Omit<GroupMean, 'mean'>[]): number {
  // Over the largest, so that the fourth power of a small standard deviation is not lost.
  const most = Math.max(...parts.map(({ variance }) => variance));
  const total = parts.reduce((sum, { variance }) => sum + variance / most, 0);
  const below = parts.reduce((sum, { variance, degrees }) => sum + (variance / most) ** 2 / degrees, 0);
  return total ** 2 / below;
}

/**
 * Welch's comparison of two means.
 *
 *     t = (m1 − m2)/√(v1 + v2)        ν by Satterthwaite        p = 2·F(−|t|)
 *
 * @param one - mean m1 and its variance v1
 * @param other - mean m2 and its variance v2, not both variances 0
 * @returns difference, its standard deviation, t, ν and p
 * @source welch-1947
 */
export function welchComparison(one: GroupMean, other: GroupMean): WelchComparison {
  const difference = one.mean - other.mean;
  const deviation = Math.sqrt(one.variance + other.variance);
  const t = difference / deviation;
  const degrees = satterthwaiteDegrees([one, other]);
  return { difference, deviation, t, degrees, chance: 2 * studentProbability(-Math.abs(t), degrees) };
}

/** Half the confidence interval of the difference. */
export const halfInterval = ({ deviation, degrees }: WelchComparison, confidence: number): number =>
  deviation * studentQuantile((1 + confidence) / 2, degrees);

/** Fieller's interval with what it is made of, [-]. */
export interface FiellerInterval {
  /** Degrees of freedom ν at the ratio met. */
  readonly degrees: number;
  /** g, below 1. */
  readonly blur: number;
  /** (t/m2)·√(v1·(1 − g) + R²·v2). */
  readonly half: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Fieller's interval of the ratio of two means.
 *
 *     [R ± (t/m2)·√(v1·(1 − g) + R²·v2)]/(1 − g)        R = m1/m2        g = t²·v2/m2²
 *
 * The ratios whose distance m1 − R·m2 from zero is not told apart from scatter; ν by Satterthwaite at the ratio met.
 *
 * @param one - mean m1 above the line
 * @param other - mean m2 below the line, > 0
 * @param confidence - two-sided [-], 0 < confidence < 1
 * @returns ends and what they are made of [-]; undefined where g ≥ 1, the mean below is not told apart from zero
 * @source fieller-1954
 */
export function fiellerEnds(
  one: GroupMean,
  other: GroupMean,
  confidence: number,
): FiellerInterval | undefined {
  const ratio = one.mean / other.mean;
  const scaled = { variance: ratio ** 2 * other.variance, degrees: other.degrees };
  const degrees = satterthwaiteDegrees([one, scaled]);
  const t = studentQuantile((1 + confidence) / 2, degrees);
  const blur = (t ** 2 * other.variance) / other.mean ** 2;
  if (blur >= 1) return undefined;
  const half = (t / other.mean) * Math.sqrt(one.variance * (1 - blur) + scaled.variance);
  return { degrees, blur, half, low: (ratio - half) / (1 - blur), high: (ratio + half) / (1 - blur) };
}
