import type { TestFault } from '../core/bench/test-fault.ts';
import type {
  FORCE_UNITS,
  TEST_KINDS,
  TEST_RESULTS,
  TEST_SETTINGS,
  TORQUE_UNITS,
} from '../storage/workshop-schema.ts';
import { decimalText, lengthText, NO_BREAK_SPACE } from './amount.ts';
import { figure, type Sentence, said } from './sentence.ts';

type Kind = (typeof TEST_KINDS)[number];
type Result = (typeof TEST_RESULTS)[number];
type Setting = (typeof TEST_SETTINGS)[number];
type Unit = (typeof FORCE_UNITS | typeof TORQUE_UNITS)[number];

/** What was done to a coupon. */
export const TEST_KIND_NAMES = {
  'pull-out': 'Pulled out',
  'proof-pull': 'Proof pull',
  'jack-out-torque': 'Jacked out by torque',
  'torque-out': 'Turned by torque',
} as const satisfies Record<Kind, string>;

/** How a test ended, in the words of a bench. */
export const TEST_RESULT_NAMES = {
  'insert-out-clean': 'insert out, clean',
  'insert-out-with-plastic': 'insert out, with plastic',
  'insert-turned': 'insert turned',
  'boss-split': 'boss split',
  'layers-parted': 'layers parted',
  'screw-broke': 'screw broke',
  'thread-stripped': 'thread stripped',
  held: 'held',
} as const satisfies Record<Result, string>;

export const TEST_SETTING_NAMES = {
  'heat-set': 'set with a hot iron',
  'cold-pressed': 'pressed in cold',
  hammered: 'hammered in',
  'screwed-in': 'screwed in',
  nut: 'a nut instead',
} as const satisfies Record<Setting, string>;

/** A unit as it stands on the instrument: a hanging scale says kg. */
export const testUnitText = (unit: Unit): string => (unit === 'kgf' ? 'kg' : unit);

/** A reading with no more digits than were written; one that was converted has two. */
export function readingText({ value, unit }: { readonly value: number; readonly unit: Unit }): string {
  const decimals = [0, 1].find((digits) => Number(value.toFixed(digits)) === value) ?? 2;
  return `${decimalText(value, decimals)}${NO_BREAK_SPACE}${testUnitText(unit)}`;
}

/** That the unit of a reading is in doubt, and which would be usual. */
export const sentenceOfUnitInstead = (test: Parameters<typeof readingText>[0], instead: Unit): string =>
  `${readingText(test)} is far from what such an insert bears; ${readingText({ ...test, unit: instead })} would be usual.`;

/** How a test of a kind can end; the first is the usual one. */
export const RESULTS_OF_KIND: Readonly<Record<Kind, readonly Result[]>> = {
  'pull-out': [
    'insert-out-with-plastic',
    'insert-out-clean',
    'boss-split',
    'layers-parted',
    'screw-broke',
    'thread-stripped',
    'held',
  ],
  'proof-pull': [
    'held',
    'insert-out-with-plastic',
    'insert-out-clean',
    'boss-split',
    'layers-parted',
    'screw-broke',
    'thread-stripped',
  ],
  'jack-out-torque': [
    'insert-out-with-plastic',
    'insert-out-clean',
    'insert-turned',
    'boss-split',
    'layers-parted',
    'screw-broke',
    'thread-stripped',
    'held',
  ],
  'torque-out': ['insert-turned', 'boss-split', 'layers-parted', 'screw-broke', 'thread-stripped', 'held'],
};

/** Why a test says nothing in the answers. */
export const sentenceOfTestFault = (fault: TestFault): Sentence =>
  fault.code === 'bore-leaves-no-bite'
    ? said`A bore of ${lengthText(fault.bore)} leaves the knurl of ${figure(fault.knurl, lengthText(fault.knurl.value))} nothing to bite into.`
    : [wordsOfTestFault(fault)];

/** The faults whose facts are all given. */
function wordsOfTestFault(fault: Exclude<TestFault, { readonly code: 'bore-leaves-no-bite' }>): string {
  switch (fault.code) {
    case 'no-reading':
      return 'It has no reading yet.';
    case 'reading-below-zero':
      return 'Its reading is below zero. Enter what the instrument showed, without a sign.';
    case 'no-such-lever':
      return `A lever ratio of ${decimalText(fault.ratio, Number.isInteger(fault.ratio) ? 0 : 3)} is none that a lever has: ${decimalText(fault.least, 2)} to ${decimalText(fault.greatest, 0)}, and 1 without a lever.`;
    case 'unknown-material':
      return `Its material, “${fault.material}”, is none of the tables. Choose what the coupon was printed in.`;
    case 'printer-gone':
      return `Its printer, “${fault.printer}”, is not among yours. Put it back, or choose the one that printed the coupon.`;
    case 'not-in-drawer':
      return `Its insert, “${fault.insert}”, is not in the drawer. Put it back, or choose the one that was tested.`;
    case 'unit-of-other-kind':
      return fault.wanted === 'torque'
        ? 'A torque was to be measured, and the unit is one of force.'
        : 'A force was to be measured, and the unit is one of torque.';
    case 'above-instrument':
      return 'The reading is above the greatest that the instrument shows. Was a digit too many typed?';
    case 'below-step':
      return 'The reading is smaller than one step of the instrument. Look at its resolution.';
    case 'screw-of-other-thread':
      return `An insert ${fault.insert} was jacked out, and this joint’s screw is ${fault.screw}: nothing is known of the friction of the one that pulled it. Pull it instead, or log it with a joint of its thread.`;
    case 'above-screw':
      return `The screw itself, ${fault.screw}, breaks long before. Look at the unit, the point and the lever ratio.`;
    case 'result-of-other-kind':
      return 'Such a test cannot end like this: an insert turns by torque and comes out by a pull.';
    case 'does-not-melt':
      return `${fault.material} does not melt: an insert in it has no bond to speak of.`;
    case 'far-from-model':
      return fault.load > fault.model
        ? 'The reading is many times what such an insert can bear. Look at the unit and the lever ratio.'
        : 'The reading is next to nothing for such an insert. Look at the unit and the lever ratio.';
    case 'duplicate':
      return `It is the same as ${fault.of.replace('-', ' ')} in everything. Take one of them out, or give each the number of its coupon.`;
  }
}
