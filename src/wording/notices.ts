import type { Notice, NoticeCode } from '../core/joint/assessment.ts';
import {
  chanceText,
  durationText,
  forceText,
  lengthText,
  percentText,
  temperatureText,
  torqueText,
} from './amount.ts';
import { SEAT_NAMES } from './names.ts';

type Facts = Notice['facts'];
type Show = (value: number) => string;

/** A part of a sentence that stands only when its fact is known: known(facts, 'boss', lengthText, (t) => ` of ${t}`). */
function known(facts: Facts, key: string, show: Show, phrase: (shown: string) => string): string {
  const value = facts[key];
  return typeof value === 'number' ? phrase(show(value)) : '';
}
const word = (facts: Facts, key: string, otherwise: string): string => String(facts[key] ?? otherwise);
const seatWord = (facts: Facts, key: string): string => {
  const seat = String(facts[key] ?? '');
  return Object.entries(SEAT_NAMES).find(([kind]) => kind === seat)?.[1] ?? 'elsewhere';
};

/** What is not enough, how much it is, and how much practice asks for. */
const belowPractice = (facts: Facts, show: Show): string =>
  known(facts, 'actual', show, (actual) => ` It is ${actual}`) +
  known(facts, 'asked', show, (asked) => `; practice asks for ${asked}`) +
  (typeof facts['actual'] === 'number' ? '.' : '');

const WORDS = {
  'hole-outside-fit-range': (facts) =>
    `The hole${known(facts, 'drawn', lengthText, (drawn) => ` of ${drawn}`)} lies outside of the diameters that the printer’s behaviour was measured on${known(facts, 'least', lengthText, (least) => `, ${least} to ${known(facts, 'greatest', lengthText, String)}`)}. Print a gauge before you trust it.`,
  'hole-rarely-fits': (facts) =>
    `${known(facts, 'chance', chanceText, (chance) => `Only ${chance} printed bores will fit. `)}Measure one printed hole, and the answer narrows.`,
  'above-service-temperature': (facts) =>
    `${word(facts, 'material', 'The plastic')} is not meant for${known(facts, 'serviceTemperature', temperatureText, (t) => ` ${t}`)} over a long time${known(facts, 'greatest', temperatureText, (t) => `: ${t} is its usual limit`)}. The strengths are reduced for it, but creep may go faster than counted.`,
  'countersunk-wedges-printed-part': () =>
    'A countersunk head wedges the printed part apart. Use a head with a flat face, or a washer.',
  'printed-part-on-insert-ring': (facts) =>
    `A printed part sits on the insert’s narrow brass ring${known(facts, 'yieldForce', forceText, (force) => ` and yields there at ${force}`)}. It then comes to rest on the plastic too, so the limits of that seat count as well.`,
  'seat-overruled': (facts) =>
    `You say that the part bears ${seatWord(facts, 'kind')}; the sizes alone would put it ${seatWord(facts, 'fromGeometry')}.`,
  'infill-below-practice': (facts) =>
    `The infill round the insert is thin.${belowPractice(facts, percentText)} Raise it with a local modifier, not in the whole part.`,
  'wall-below-practice': (facts) => `The wall round the hole is thin.${belowPractice(facts, lengthText)}`,
  'boss-below-practice': (facts) =>
    `The boss is narrow.${belowPractice(facts, lengthText)} A narrow boss may bulge or crack as the insert goes in.`,
  'floor-below-practice': (facts) =>
    `The floor under the hole is thin.${belowPractice(facts, lengthText)} The melt or the screw’s tip may push through it.`,
  'cold-setting-may-split': () =>
    'An insert that goes in cold spreads the bore and leaves the boss under stress. It may crack at once or days later; a hot iron avoids that.',
  'short-insert': (facts) =>
    `The insert${known(facts, 'length', lengthText, (length) => ` of ${length}`)} is short for its diameter. A small error of its seat takes a large share of its hold.`,
  'elastomer-host': (facts) =>
    `${word(facts, 'material', 'This plastic')} is rubbery: it lets the knurl go by stretching, and clamp force does not stay in it. Take the numbers as an upper end.`,
  'tightened-by-hand': (facts) =>
    `By hand the torque is felt, not set${known(facts, 'deviation', percentText, (share) => `, and lies within ±${share}`)}. Turn until the head seats, then only a little more.`,
  'bond-untested': (facts) =>
    `How well the plastic holds the knurl is an estimate${known(
      facts,
      'median',
      (value) => value.toFixed(2),
      (bond) => `, bond factor ${bond}`,
    )}. One pulled coupon of your own makes it yours.`,
  'insert-proud-of-clearance': (facts) =>
    `The insert is set flush to${known(facts, 'proud', lengthText, (proud) => ` ${proud}`)} proud at most. Higher, and the part stands on brass with a gap round it.`,
  'readings-scatter': (facts) =>
    `The readings of the ${word(facts, 'feature', 'insert')} differ by more than the caliper explains${known(facts, 'spread', lengthText, (spread) => `: ${spread} between the least and the most`)}. Measure again, or sort the drawer.`,
  'knurled-length-estimated': (facts) =>
    `The knurled length was not measured${known(facts, 'knurledLength', lengthText, (length) => ` and is taken as ${length}`)}. Measure it: the hold grows with it.`,
  'threadlocker-cracks-host': (facts) =>
    `Anaerobic threadlocker cracks ${word(facts, 'material', 'this plastic')}. Lock the screw by other means.`,
  'dial-above-breaking-torque': (facts) =>
    `The dial${known(facts, 'dial', torqueText, (dial) => ` of ${dial}`)} is above the smallest torque at which such a screw may break${known(facts, 'breaking', torqueText, (torque) => `, ${torque}`)}. Use a setting below it.`,
  'strengths-low-confidence': (facts) =>
    `Little is known of ${word(facts, 'material', 'this plastic')} as printed. Pull a coupon before you rely on these numbers.`,
  'no-load-given': (facts) =>
    `No load is given, so the least torque only seats the joint${known(facts, 'duration', durationText, (time) => ` for ${time}`)}. Enter the pull that it must carry.`,
  'insert-across-layers': () =>
    'The insert’s axis lies across the build, so its pull works along the layers and its hole is printed on its side. Such a hole sags: calibrate it apart.',
} as const satisfies Record<NoticeCode, (facts: Facts) => string>;

/** Something to know about the joint that does not refuse an answer. */
export const sentenceOfNotice = (notice: Notice): string => WORDS[notice.code](notice.facts);
