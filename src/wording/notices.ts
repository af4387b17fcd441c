import type { SettingMethod } from '../core/inserts/insert.ts';
import type { Notice, NoticeCode } from '../core/joint/assessment.ts';
import { fromCore } from '../core/units/convert.ts';
import {
  capitalised,
  countWord,
  decimalText,
  durationText,
  forceText,
  lengthText,
  NO_BREAK_SPACE,
  percentText,
  temperatureText,
  torqueText,
} from './amount.ts';
import { SEAT_NAMES, SETTING_NAMES } from './names.ts';
import { type Figure, figure, plainText, type Sentence, said } from './sentence.ts';

type Facts = Notice['facts'];

const word = (facts: Facts, key: string): string => {
  const fact = facts[key];
  return typeof fact === 'string' ? fact : '';
};
const number = (facts: Facts, key: string): number => Number(facts[key] ?? 0);

/** A fact as it is said; one that was computed opens. */
const told =
  (textOf: (value: number) => string) =>
  (facts: Facts, key: string): string | Figure => {
    const fact = facts[key];
    return typeof fact === 'object' ? figure(fact, textOf(fact.value)) : textOf(Number(fact ?? 0));
  };
const length = told(lengthText);
const degrees = told(temperatureText);
const torque = told(torqueText);
const force = told(forceText);
const duration = told(durationText);
/** The fact is already a count of a hundred. */
const percent = told((count) => `${decimalText(count, 0)}${NO_BREAK_SPACE}%`);
const share = told(percentText);
/** A share as a count of a hundred, its sign said later. */
const inHundred = told((part) => decimalText(fromCore(part, '%'), 0));

/** From the least to the most share. */
const shares = (facts: Facts): Sentence => said`${inHundred(facts, 'least')} to ${share(facts, 'most')}`;

/** A code of the core as people say it. */
const named = (names: Readonly<Record<string, string>>, facts: Facts, key: string): string =>
  names[word(facts, key)] ?? word(facts, key);
const setting: Readonly<Record<SettingMethod, string>> = SETTING_NAMES;

const WORDS = {
  'hole-outside-fit-range': (facts) =>
    said`A hole of ${length(facts, 'drawn')} lies outside of ${length(facts, 'least')} to ${length(facts, 'greatest')}, the diameters that the printer’s behaviour was measured on. Print a gauge before you trust it.`,
  'gauge-was-compensated': (facts) =>
    said`The gauge of ${word(facts, 'printer')} was printed with the slicer enlarging its holes, and this joint is drawn without that. Its readings do not apply; the hole is that of an unknown printer.`,
  'printer-of-other-material': (facts) =>
    said`${word(facts, 'printer')} was read in ${word(facts, 'read')}, and this part is ${word(facts, 'material')}: it may shrink otherwise. Read a gauge of the same material.`,
  'printer-of-other-layers': (facts) =>
    said`${word(facts, 'printer')} was read at layers of ${length(facts, 'read')}, and this part has ${length(facts, 'layerHeight')}.`,
  'few-holes-read': (facts) =>
    said`${number(facts, 'count') === 1 ? 'One hole was' : 'Two holes were'} read on your printer; from ${countWord(number(facts, 'enough'))} on the answer is yours more than ours.`,
  'hole-rarely-fits': (facts) =>
    said`Only ${inHundred(facts, 'chance')} in 100 printed bores are expected to fit. Measure a printed hole of your own, and the answer narrows.`,
  'above-service-temperature': (facts) =>
    said`${degrees(facts, 'temperature')} is above the usual limit of ${word(facts, 'material')}, ${degrees(facts, 'greatest')}. The strengths are reduced for it, but creep may go faster than counted.`,
  'countersunk-wedges-printed-part': (facts) =>
    said`A countersunk head wedges the clamped part (${word(facts, 'material')}) apart. Use a head with a flat face.`,
  'printed-part-on-insert-ring': (facts) =>
    said`The clamped part (${word(facts, 'material')}) sits on the insert’s narrow brass ring. Once it yields there it comes to rest on the plastic too, and the screw begins to pull at the insert.`,
  'seat-overruled': (facts) =>
    said`You say that the part bears ${named(SEAT_NAMES, facts, 'chosen')}; the sizes alone would put it ${named(SEAT_NAMES, facts, 'geometry')}.`,
  'infill-below-practice': (facts) =>
    said`The infill is ${percent(facts, 'percent')}; practice asks for ${percent(facts, 'practice')} round an insert. Raise it with a local modifier, not in the whole part.`,
  'wall-below-practice': (facts) =>
    said`The wall round the hole is ${length(facts, 'wall')}; practice asks for ${length(facts, 'practice')}. More lines are the cheapest strength.`,
  'boss-below-practice': (facts) =>
    said`The boss is ${length(facts, 'given')} wide; practice asks for ${length(facts, 'least')}. A narrow boss may bulge or crack as the insert goes in.`,
  'floor-below-practice': (facts) =>
    said`The floor under the hole is ${length(facts, 'floor')}; practice asks for ${length(facts, 'practice')}. The melt or the screw’s tip may push through it.`,
  'cold-setting-may-split': (facts) =>
    said`An insert that is ${named(setting, facts, 'setting')} spreads the bore and leaves the boss under stress. It may crack at once or days later; a hot iron avoids that.`,
  'short-insert': (facts) =>
    said`An insert of ${length(facts, 'length')} is short for ${word(facts, 'thread')}, where ${length(facts, 'least')} is the least in use. A small error of its seat takes a large share of its hold.`,
  'elastomer-host': (facts) =>
    said`${word(facts, 'material')} is rubbery: it lets the knurl go by stretching, and clamp force does not stay in it. Take the numbers as an upper end.`,
  'tightened-by-hand': (facts) =>
    said`By hand the torque is felt, not set, and may be ${percent(facts, 'percent')} off either way. Turn until the head seats, then only a little more.`,
  'bond-untested': (facts) =>
    said`How well the plastic holds a knurl that is ${named(setting, facts, 'setting')} is an estimate. One pulled coupon of your own turns it into yours.`,
  'bond-tested': (facts) => {
    const count = number(facts, 'coupons');
    const tests = count === 1 ? 'One test' : `${capitalised(countWord(count))} tests`;
    const ofOthers =
      word(facts, 'own') === 'pulled' ? '' : count === 1 ? ' of another size' : ' of other sizes';
    const [before, after] = [force(facts, 'before'), force(facts, 'after')];
    const held = number(facts, 'broke') === 0;
    const moved =
      plainText([before]) === plainText([after])
        ? said`left knurl shear at ${after}, where our estimate was`
        : said`moved knurl shear from ${before}, our estimate, to ${after}, ${held ? 'shown at least' : 'measured'}`;
    const more = held ? ' No bond gave way: it may hold more.' : '';
    return said`${tests}${ofOthers} ${moved}; 19 of 20 hold ${force(facts, 'characteristic')}.${more}`;
  },
  'readings-scatter': (facts) =>
    said`Readings of one feature differ by ${length(facts, 'spread')}, more than a caliper of ±${length(facts, 'permissibleError')} explains. Measure again, or sort the drawer.`,
  'knurled-length-estimated': (facts) =>
    said`The knurled length was not measured and is taken as ${length(facts, 'knurledLength')}. Measure it: the hold grows with it.`,
  'threadlocker-cracks-host': (facts) =>
    said`Anaerobic threadlocker cracks ${word(facts, 'material')}. Lock the screw by other means.`,
  'dial-above-breaking-torque': (facts) =>
    said`The dial of ${torque(facts, 'dial')} is above ${torque(facts, 'breaking')}, the smallest torque at which such a screw may break. Use a setting below it.`,
  'strengths-low-confidence': (facts) =>
    said`Little is known of ${word(facts, 'material')} as printed. Pull a coupon before you rely on these numbers.`,
  'window-hangs-on-little-known': (facts) =>
    said`Little is known of ${word(facts, 'material')} over time and in the warmth. At the careful end of it no torque fits, at the other end one would.`,
  'most-torque-by-time': (facts) =>
    said`At once the joint would bear ${torque(facts, 'atOnce')}. Under a lasting force plastic bears less: ${torque(facts, 'most')} is the most that still holds after ${duration(facts, 'hours')}.`,
  'creep-little-known': (facts) =>
    said`${word(facts, 'material')}: creep is poorly known. ${shares(facts)} of the clamp force is left after ${duration(facts, 'hours')}; the careful end is used.`,
  'warmth-little-known': (facts) =>
    said`${word(facts, 'material')}: strength at ${degrees(facts, 'temperature')} is poorly known. ${shares(facts)} of that at 23${NO_BREAK_SPACE}°C is left; the careful end is used.`,
  'creep-extrapolated': (facts) =>
    said`Creep was measured up to ${decimalText(number(facts, 'known'), 0)}${NO_BREAK_SPACE}hours and is carried on to ${duration(facts, 'hours')}. Check the torque again after a month.`,
  vibration: (facts) =>
    word(facts, 'locking') === 'fluid'
      ? said`Shaking turns screws loose. The fluid holds the thread only while clamp force is left: mark the head and look at it.`
      : said`Shaking turns screws loose, and a torque alone does not stop it. Lock the screw mechanically, mark the head and look at it.`,
  'breaking-torque-unknown': (facts) =>
    said`No standard gives a breaking torque for class ${word(facts, 'propertyClass')}; the yield limit stands alone.`,
  'setting-above-breaking-torque': (facts) =>
    said`Your setting of ${torque(facts, 'setting')} is impossible here: a screw ${word(facts, 'screw')} of this class may break at ${torque(facts, 'breaking')}.`,
  'no-load-given': () =>
    said`No load is given, so the least torque is nothing and the margins say little. Enter the pull that this joint must carry.`,
  'insert-across-layers': () =>
    said`The insert lies across the build, so its hole is printed on its side and sags. Such holes are calibrated apart.`,
} as const satisfies Record<NoticeCode, (facts: Facts) => Sentence>;

/** Something to know about the joint that does not refuse an answer. */
export const sentenceOfNotice = (notice: Notice): Sentence => WORDS[notice.code](notice.facts);
