import type { PlotPoint } from '../../core/evidence/probability-plot.ts';
import { logarithmsOf, momentsOf } from '../../core/evidence/sample.ts';
import { niceTicks } from './nice-ticks.ts';

export interface ProbabilityLines {
  readonly normal: readonly Pick<PlotPoint, 'value' | 'score'>[];
  readonly lognormal: readonly Pick<PlotPoint, 'value' | 'score'>[];
  /** Of the axis of values, round, from below the least to above the greatest drawn. */
  readonly ticks: readonly number[];
}

const ENDS = 2;
const SAMPLES = 24;
const STEPS = 5;

/** Where the values of a normal and of a lognormal scatter with the sample's own moments would lie. */
export function probabilityLines(points: readonly PlotPoint[]): ProbabilityLines {
  const values = points.map(({ value }) => value);
  const plain = momentsOf(values);
  const logs = momentsOf(logarithmsOf(values));
  const scores = Array.from({ length: SAMPLES + 1 }, (_, index) => ENDS * ((2 * index) / SAMPLES - 1));
  const normal = scores.map((score) => ({ score, value: plain.mean + (plain.deviation ?? 0) * score }));
  const lognormal = scores.map((score) => ({
    score,
    value: Math.exp(logs.mean + (logs.deviation ?? 0) * score),
  }));
  const drawn = [...normal, ...lognormal].map(({ value }) => value);
  const least = Math.max(0, Math.min(...drawn));
  const step = niceTicks(Math.max(...drawn) - least, STEPS)[1] ?? 1;
  const from = Math.floor(least / step);
  const to = Math.ceil(Math.max(...drawn) / step);
  const ticks = Array.from({ length: to - from + 1 }, (_, index) => (from + index) * step);
  return { normal, lognormal, ticks };
}
