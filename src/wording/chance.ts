import type { Chance, ChanceResult } from '../core/chance/chance-result.ts';
import type { DrawnFrom, DrawnRange } from '../core/chance/drawn-from.ts';
import type { Outcome } from '../core/chance/sample-chance.ts';
import type { Derived } from '../core/sources/derived.ts';
import { fromCore } from '../core/units/convert.ts';
import {
  decimalText,
  diameterNumber,
  forceText,
  NO_BREAK_SPACE,
  percentText,
  significantText,
} from './amount.ts';
import { type Figure, figure, type Sentence, said } from './sentence.ts';

/** What becomes of a joint, as a sentence without its full stop. */
export const OUTCOME_WORDS = {
  'pulls-out': 'The insert is pulled out, or its wall splits',
  turns: 'The insert turns in the plastic',
  strips: 'A thread strips',
  'screw-yields': 'The screw yields',
  crushes: 'The part is crushed where it bears',
  loose: 'The joint is loose, at once or at the end of its time',
} as const satisfies Record<Outcome, string>;

const PER = 1000;
/** Digits of a count in a thousand that a sampling of a million is good for. */
const DIGITS = 2;

/** Two digits that mean something, without the noughts that mean nothing: 0.1, 0.34. */
const trimmedText = (count: number): string => String(Number(significantText(count, DIGITS)));

/** A count of a thousand: 139, 1.3, 0.34. */
function countText(count: number): string {
  if (count === 0) return '0';
  return count >= 10 ? decimalText(count, 0) : trimmedText(count);
}

/** A probability as a count of a thousand. */
export const inThousand = (probability: number): string => countText(probability * PER);

/** Between which counts of a thousand it lies. */
export function spreadInThousand({ low, high }: { readonly low: Derived; readonly high: Derived }): Sentence {
  if (low.value === 0) return said`below ${figure(high, countText(high.value))}`;
  // As many decimals as the width between both ends is worth.
  const decimals = Math.max(0, 1 - Math.floor(Math.log10(high.value - low.value)));
  const end = (of: Derived) => figure(of, decimalText(of.value, decimals));
  return said`${end(low)} to ${end(high)}`;
}

/** A chance in words: about 1 in 2,900. */
export function oneIn(
  { count, samples }: Pick<Chance, 'count' | 'samples'>,
  among: (counts: 'happens' | 'does-not') => Derived,
): Sentence {
  if (count === 0) return said`none seen`;
  if (count === samples) return said`every one`;
  const one = (of: Derived) => figure(of, significantText(of.value, DIGITS));
  return count <= samples / 2
    ? said`about 1 in ${one(among('happens'))}`
    : said`all but 1 in ${one(among('does-not'))}`;
}

/** The ends of a range, "0.10 to 0.24". */
const between = ({ low, high }: DrawnRange, text = (value: number) => significantText(value, DIGITS)) =>
  said`${figure(low, text(low.value))} to ${figure(high, text(high.value))}`;

const millimetres = (of: Derived, what: string): Figure =>
  figure(of, `${diameterNumber(of.value)}${NO_BREAK_SPACE}mm`, what);

/** What each joint is drawn from, one line a quantity. */
export function linesOfDrawnFrom(from: DrawnFrom, toolDeviation: number): readonly Sentence[] {
  const { slipFriction, preloadLeft } = from;
  const tool = figure(
    from.toolDeviation,
    `${significantText(fromCore(from.toolDeviation.value, '%'), DIGITS)}${NO_BREAK_SPACE}%`,
  );
  return [
    said`Friction in the thread ${between(from.threadFriction)} and under the head ${between(from.headFriction)}, each for itself; 9 of 10 joints lie within, 1 of 20 beyond each end.`,
    ...(slipFriction
      ? [said`Friction between the faces that must not slip ${between(slipFriction)}, likewise.`]
      : []),
    said`The tool: ±${percentText(toolDeviation)} of what is dialled holds 95 of 100 settings, a standard deviation of ${tool}.`,
    said`The printed bore: ${millimetres(from.expectedBore, 'Bore to be expected')} with a standard deviation of ${millimetres(from.boreDeviation, 'Standard deviation of the bore')}; the knurl: ${millimetres(from.knurlDiameter, 'Knurl diameter')} with one of ${millimetres(from.knurlDeviation, 'Standard deviation of the knurl')}, from your readings.`,
    said`All plastic: one scatter between set-ups for the knurl, one for the printed part, one for a printed clamped part. It is an estimate of this program, itself uncertain, until coupons are pulled.`,
    ...(preloadLeft
      ? [
          said`Of the clamp force ${between(preloadLeft, percentText)} is left, as little is known of creep; 9 of 10 joints lie within, and plastic that has crept more bears less.`,
        ]
      : []),
    said`The insert’s thread: the scatter of its metal. The screw: minimum values of its standard, without scatter${preloadLeft ? '' : '; so is what relaxation leaves'}.`,
  ];
}

/** What was sampled, in a sentence. */
export const sentenceOfSampling = (samples: number, torque: Figure, isDial: boolean): Sentence =>
  said`${decimalText(samples, 0)} joints like this one, each with its own friction, bore and plastic, tightened at ${
    isDial
      ? said`the dial, ${torque}`
      : said`the most that leaves every part whole, ${torque}: no torque fits, so there is no dial`
  }.`;

/** The clamp force that the sampled joints reach. */
export function sentenceOfForces({ low, median, high }: ChanceResult['clampForceQuantiles']): Sentence {
  const force = (of: Derived, what: string) => figure(of, forceText(of.value), what);
  return said`Half of them clamp with more than ${force(median, 'Clamp force that half stay below')}; 9 of 10 with ${force(low, 'Clamp force that 5 of 100 stay below')} to ${force(high, 'Clamp force that 95 of 100 stay below')}.`;
}

/** Why a sampling came to nothing. */
export const SAMPLING_FAULTS = {
  'worker-died': 'The sampling could not run in this browser, or was ended by it.',
  'calculation-failed': 'The sampling broke off with an error.',
} as const;
