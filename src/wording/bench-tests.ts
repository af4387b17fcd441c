import type { TEST_KINDS, TEST_RESULTS, TEST_SETTINGS } from '../storage/document.ts';

type Kind = (typeof TEST_KINDS)[number];
type Result = (typeof TEST_RESULTS)[number];
type Setting = (typeof TEST_SETTINGS)[number];

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
    'boss-split',
    'layers-parted',
    'screw-broke',
    'thread-stripped',
    'held',
  ],
  'torque-out': ['insert-turned', 'boss-split', 'layers-parted', 'screw-broke', 'thread-stripped', 'held'],
};
