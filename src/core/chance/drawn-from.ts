import { boreScatter, expectedBore } from '../joint/bore-steps.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import type { Tightening } from '../joint/tightening.ts';
import { normalQuantileWay } from '../numerics/quantile-ways.ts';
import type { FrictionCondition, FrictionRange } from '../screws/screw.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { CreepScatter } from './creep-scatter.ts';
import { TOOL_SHARE, toolScatter } from './scatter.ts';

/** Both ends of a range. */
export interface DrawnRange {
  readonly low: Derived;
  readonly high: Derived;
}

/** The ranges that joints are drawn from, for whoever reads the result: 9 of 10 lie within. Lengths in mm. */
export interface DrawnFrom {
  readonly threadFriction: DrawnRange;
  readonly headFriction: DrawnRange;
  /** Absent without a load across the screw. */
  readonly slipFriction?: DrawnRange;
  /** Standard deviation of the tool, relative, [-]. */
  readonly toolDeviation: Derived;
  /** Share of the clamp force that is left; absent where creep is known well enough, or takes nothing. */
  readonly preloadLeft?: DrawnRange;
  readonly expectedBore: Derived;
  readonly boreDeviation: Derived;
  readonly knurlDiameter: Derived;
  readonly knurlDeviation: Derived;
}

/** What a joint's ranges come from. */
interface Ranges {
  readonly joint: AnswerableJoint;
  readonly tightening: Tightening;
  readonly slipFriction: FrictionRange;
  readonly lost: CreepScatter['lost'];
}

/**
 * The ranges that the joints of a sampling are drawn from, each end with where it comes from.
 *
 * Friction: the ends of the condition of the screw. Bore and knurl: mean and standard deviation.
 *
 * @param ranges - joint, its tightening, friction between the faces, what of the clamp force is lost
 * @returns ranges, means and deviations
 * @source own-model what scatters and how
 */
export function drawnFrom({ joint, tightening, slipFriction, lost }: Ranges): DrawnFrom {
  const { conversion, bore, found, left } = tightening;
  const { friction } = joint.screw;
  const { knurlDiameter } = found.insert;
  return {
    threadFriction: rangeOfCondition({ low: 'μ_Gl', high: 'μ_Gh' }, conversion.threadFriction, friction),
    headFriction: rangeOfCondition({ low: 'μ_Kl', high: 'μ_Kh' }, conversion.headFriction, friction),
    ...(joint.loads.shear > 0
      ? { slipFriction: rangeOfCondition({ low: 'μ_sl', high: 'μ_sh' }, slipFriction, friction) }
      : {}),
    toolDeviation: deviationOfTool(joint.tool.deviation),
    ...(lost.deviation > 0 ? { preloadLeft: rangeLeft(left.from) } : {}),
    expectedBore: expectedBore(joint, bore),
    boreDeviation: boreScatter(joint, { drawn: entryFrom(bore.drawn) }),
    knurlDiameter: knurlDiameter.estimate,
    knurlDeviation: knurlDiameter.standardUncertainty,
  };
}

/** Ends of a range as the table of friction conditions has them. */
function rangeOfCondition(
  symbols: { readonly low: string; readonly high: string },
  { low, high }: FrictionRange,
  { source, standing }: FrictionCondition,
): DrawnRange {
  const end = (name: string, value: number): Derived => ({
    symbol: name,
    value,
    unit: '-',
    formula: name,
    entries: [],
    source,
    standing,
  });
  return { low: end(symbols.low, low), high: end(symbols.high, high) };
}

const deviationOfTool = (deviation: number): Derived => ({
  symbol: 's_δ',
  value: toolScatter(deviation),
  unit: '-',
  formula: 'δ/z_j',
  entries: [entry('δ', deviation, '-'), entryFrom(normalQuantileWay('z_j', TOOL_SHARE))],
  source: 'iso-6789',
  standing: 'estimate',
});

/** Shares that are left after a loss: a lognormal loss through both ends of what is known gives them back. */
function rangeLeft(left: Derived): DrawnRange {
  const { low, high } = left.range ?? { low: left.value, high: left.value };
  const end = (symbol: string, value: number, of: 'least' | 'most'): Derived => ({
    symbol,
    value,
    unit: '-',
    formula: `${of} that is left, at the ends of what is known of the plastics`,
    entries: [entryFrom(left)],
    source: 'own-model',
    standing: 'estimate',
  });
  return {
    low: end('R_l', low, 'least'),
    high: end('R_u', high, 'most'),
  };
}
