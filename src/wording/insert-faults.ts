import type { InsertFault } from '../core/inserts/insert-faults.ts';
import { lengthText } from './amount.ts';

export interface FaultWords {
  /** What is wrong, with its numbers. */
  readonly wrong: string;
  /** What has most likely happened, or what to do. */
  readonly cause: string;
}

const FEATURES = {
  knurlDiameter: 'A knurl diameter',
  pilotDiameter: 'A pilot diameter',
  length: 'A length',
} as const;

/** What is wrong with the readings of an insert taken together, and its likely cause. */
export function wordsOfInsertFault(fault: InsertFault): FaultWords {
  switch (fault.code) {
    case 'looks-like-inches':
      return {
        wrong: `${FEATURES[fault.feature]} of ${lengthTextOfInch(fault.value)} is too small for this thread.`,
        cause: `Was it read in inches? Then it is ${lengthText(fault.inMillimetres)}.`,
      };
    case 'pilot-not-below-knurl':
      return {
        wrong: `A pilot of ${lengthText(fault.pilotDiameter)} is not thinner than the knurl of ${lengthText(fault.knurlDiameter)}.`,
        cause: 'Are the two swapped?',
      };
    case 'length-and-knurl-swapped':
      return {
        wrong: `A knurl of ${lengthText(fault.knurlDiameter)} leaves no brass round the thread.`,
        cause: `Are knurl and length swapped? The length is given as ${lengthText(fault.length)}.`,
      };
    case 'no-brass-left':
      return {
        wrong: `A knurl of ${lengthText(fault.knurlDiameter)} leaves no brass round the thread; at least ${lengthText(fault.least)} is needed.`,
        cause: 'Is the thread the right one?',
      };
    case 'knurl-too-wide':
      return {
        wrong: `A knurl of ${lengthText(fault.knurlDiameter)} is wider than any insert of this thread; ${lengthText(fault.greatest)} is the most taken.`,
        cause: 'Is the thread the right one, or a decimal point missing?',
      };
    case 'pilot-below-thread':
      return {
        wrong: `A pilot of ${lengthText(fault.pilotDiameter)} is thinner than the thread of ${lengthText(fault.threadDiameter)} inside it.`,
        cause: 'Was the bore measured instead of the outside of the plain end?',
      };
    case 'no-bite':
      return {
        wrong: `A bore of ${lengthText(fault.bore)} lets a knurl of ${lengthText(fault.knurlDiameter)} fall through without biting.`,
        cause: 'Take a smaller fit over the pilot, or measure the pilot again.',
      };
    case 'too-long':
      return {
        wrong: `A length of ${lengthText(fault.length)} is more than five thread diameters, ${lengthText(fault.greatest)}.`,
        cause: 'Was the screw measured, or is the thread another one?',
      };
    case 'too-short':
      return {
        wrong: `A length of ${lengthText(fault.length)} is too short to estimate how much of it is knurled; from ${lengthText(fault.least)} on it can be.`,
        cause: 'Measure the knurled length and enter it.',
      };
    case 'knurled-longer-than-insert':
      return {
        wrong: `A knurled length of ${lengthText(fault.knurledLength)} is more than the whole insert of ${lengthText(fault.length)}.`,
        cause: 'Are the two swapped?',
      };
  }
}

/** A reading in inches keeps its third decimal. */
const lengthTextOfInch = (value: number): string => `${Number(value.toFixed(3))}\u00a0mm`;

export function sentenceOfInsertFault(fault: InsertFault): string {
  const { wrong, cause } = wordsOfInsertFault(fault);
  return `${wrong} ${cause}`;
}
