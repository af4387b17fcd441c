import type { ChanceResult, DrawnFrom } from '../core/chance/chance-result.ts';
import type { Outcome } from '../core/chance/sample-chance.ts';
import type { FrictionRange } from '../core/screws/screw.ts';
import { decimalText, diameterNumber, NO_BREAK_SPACE, percentText, significantText } from './amount.ts';

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

/** A probability as a count of a thousand: 139, 1.3, 0.34. */
export function inThousand(probability: number): string {
  const count = probability * PER;
  if (count === 0) return '0';
  return count >= 10 ? decimalText(count, 0) : trimmedText(count);
}

/** Between which counts of a thousand it lies. */
export function spreadInThousand({ low, high }: { readonly low: number; readonly high: number }): string {
  if (low === 0) return `below ${inThousand(high)}`;
  // As many decimals as the width between both ends is worth.
  const decimals = Math.max(0, 1 - Math.floor(Math.log10((high - low) * PER)));
  return `${decimalText(low * PER, decimals)} to ${decimalText(high * PER, decimals)}`;
}

/** A probability in words: about 1 in 2,900. */
export function oneIn(probability: number): string {
  if (probability === 0) return 'none seen';
  if (probability === 1) return 'every one';
  const [count, all] = probability <= 1 / 2 ? ['about', probability] : ['all but', 1 - probability];
  return `${count} 1 in ${significantText(1 / all, DIGITS)}`;
}

const between = ({ low, high }: FrictionRange): string =>
  `${significantText(low, DIGITS)} to ${significantText(high, DIGITS)}`;
const millimetres = (deviation: number) => `${diameterNumber(deviation)}${NO_BREAK_SPACE}mm`;

/** What each joint is drawn from, one line a quantity. */
export function linesOfDrawnFrom(from: DrawnFrom, toolDeviation: number): readonly string[] {
  return [
    `Friction in the thread ${between(from.threadFriction)} and under the head ${between(from.headFriction)}, each for itself; 9 of 10 joints lie within, 1 of 20 beyond each end.`,
    ...(from.slipFriction
      ? [`Friction between the faces that must not slip ${between(from.slipFriction)}, likewise.`]
      : []),
    `The tool: ±${percentText(toolDeviation)} of what is dialled holds 95 of 100 settings.`,
    `The printed bore: ${diameterNumber(from.expectedBore)}${NO_BREAK_SPACE}mm with a standard deviation of ${millimetres(from.boreDeviation)}; the knurl: ${diameterNumber(from.knurlDiameter)}${NO_BREAK_SPACE}mm with one of ${millimetres(from.knurlDeviation)}, from your readings.`,
    'All plastic: one scatter between set-ups for the knurl, one for the printed part, one for a printed clamped part. It is an estimate of this program, itself uncertain, until coupons are pulled.',
    ...(from.preloadLeft
      ? [
          `Of the clamp force ${percentText(from.preloadLeft.low)} to ${percentText(from.preloadLeft.high)} is left, as little is known of creep; 9 of 10 joints lie within, and plastic that has crept more bears less.`,
        ]
      : []),
    `The insert’s thread: the scatter of its metal. The screw: minimum values of its standard, without scatter${from.preloadLeft ? '' : '; so is what relaxation leaves'}.`,
  ];
}

/** What was sampled, in a sentence. */
export const sentenceOfSampling = (samples: number, torque: string, isDial: boolean): string =>
  `${decimalText(samples, 0)} joints like this one, each with its own friction, bore and plastic, tightened at ${
    isDial
      ? `the dial, ${torque}`
      : `the most that leaves every part whole, ${torque}: no torque fits, so there is no dial`
  }.`;

/** The clamp force that the sampled joints reach. */
export const sentenceOfForces = (
  { low, median, high }: ChanceResult['clampForceQuantiles'],
  text: (force: number) => string,
): string => `Half of them clamp with more than ${text(median)}; 9 of 10 with ${text(low)} to ${text(high)}.`;

/** Why a sampling came to nothing. */
export const SAMPLING_FAULTS = {
  'worker-died': 'The sampling could not run in this browser, or was ended by it.',
  'calculation-failed': 'The sampling broke off with an error.',
} as const;
