import type { Difference, Made, Respect } from '../core/bench/made-alike.ts';
import type { ComparedBy } from '../core/bench/ways.ts';
import type { Derived } from '../core/sources/derived.ts';
import { fromCore } from '../core/units/convert.ts';
import {
  decimalText,
  diameterNumber,
  lengthNumber,
  NO_BREAK_SPACE,
  percentText,
  significantText,
  temperatureText,
} from './amount.ts';
import { TEST_SETTING_NAMES } from './bench-tests.ts';
import { AXIS_NAMES } from './names.ts';
import { figure, type Sentence, said } from './sentence.ts';

/** What coupons are compared by, as a choice. */
export const COMPARED_BY_NAMES = {
  batch: 'what was varied',
  setting: 'way of setting',
  bore: 'bore before setting',
  'iron-temperature': 'iron temperature',
  'setting-time': 'setting speed',
} as const satisfies Record<ComparedBy, string>;

const RESPECT_NAMES = {
  batch: 'what was varied',
  setting: 'way of setting',
  bore: 'bore',
  'iron-temperature': 'iron',
  'setting-time': 'time to set',
  printer: 'printer',
  axis: 'pull',
  'wall-lines': 'wall lines',
  infill: 'infill',
} as const satisfies Record<Respect, string>;

/** What coupons do not say, where a choice finds nothing to compare. */
export const NOTHING_TO_COMPARE = {
  batch: 'No two groups of like coupons differ in what was varied: name it in the log.',
  setting:
    'No two groups of like coupons were set in different ways. Same insert, test, printer, material and direction of the layers make them alike.',
  bore: 'No two groups of like coupons had different bores: measure each bore before setting, and enter it in the log.',
  'iron-temperature':
    'No two groups of like coupons were set with a different iron temperature: enter it in the log.',
  'setting-time':
    'No two groups of like coupons took a different time from touch to flush: enter it in the log.',
} as const satisfies Record<ComparedBy, string>;

/** What names mean that only the document knows. */
export interface NamesOfWays {
  /** Of a printer, by its id. */
  readonly printer: (id: string) => string;
}

const UNKNOWN = 'not written down';

/** How coupons were made in one respect, alone in its place. */
export function textOfMade(made: Made, names: NamesOfWays): string {
  switch (made.of) {
    case 'batch':
      return made.name ?? 'as usual';
    case 'setting':
      return TEST_SETTING_NAMES[made.setting];
    case 'bore':
      return made.bore === undefined ? UNKNOWN : boreText(made.bore);
    case 'iron-temperature':
      return made.temperature === undefined ? UNKNOWN : temperatureText(made.temperature);
    case 'setting-time':
      return made.time === undefined ? UNKNOWN : secondsText(made.time);
    case 'printer':
      return made.printer === undefined ? UNKNOWN : names.printer(made.printer);
    case 'axis':
      return AXIS_NAMES[made.axis];
    case 'wall-lines':
      return made.count === undefined ? UNKNOWN : decimalText(made.count, 0);
    case 'infill':
      return made.share === undefined ? UNKNOWN : percentText(made.share);
  }
}

/**
 * The name of a way, with what it is: "bore 4.4 mm", "iron at 230 °C", "4 s, 1.3 mm/s".
 *
 * @param length - of the insert [mm]: how deep it went in the time
 */
export function nameOfWay(made: Made, names: NamesOfWays, length: number): string {
  const text = textOfMade(made, names);
  switch (made.of) {
    case 'bore':
      return `bore ${text}`;
    case 'iron-temperature':
      return `iron at ${text}`;
    case 'setting-time':
      return made.time === undefined ? text : `${text}, ${speedText(length, made.time)}`;
    default:
      return text;
  }
}

/** What else differs, as a sentence; an empty one where nothing does. */
export function sentenceOfDifferences(differences: readonly Difference[], names: NamesOfWays): string {
  if (differences.length === 0) return '';
  const parts = differences.map(({ of, first, second }) => {
    const [one, other] = [first, second].map((all) => listed(all.map((made) => textOfMade(made, names))));
    return one === other
      ? `${RESPECT_NAMES[of]} (${one} among both)`
      : `${RESPECT_NAMES[of]} (${one} against ${other})`;
  });
  return `Different too: ${listed(parts)}. That may be what moves the ratio.`;
}

/** What differs among coupons that are put over their size, as a sentence. */
export function sentenceOfVaried(differences: readonly Difference[], names: NamesOfWays): string {
  const parts = differences.map(
    ({ of, first }) => `${RESPECT_NAMES[of]} (${listed(first.map((made) => textOfMade(made, names)))})`,
  );
  if (parts.length === 0) return '';
  return `Different among these coupons too: ${listed(parts)}.`;
}

/** What the number of coupons to make rests on, where none tells the scatter. */
export const sentenceOfAssumedScatter = (scatter: Derived): Sentence =>
  said`Where two coupons of neither way tell the scatter, it is taken as ${figure(scatter, decimalText(scatter.value, 2))} for the number to make.`;

const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

type Span = { readonly least: number; readonly greatest: number };

const span = ({ least, greatest }: Span, number: (value: number) => string): string =>
  number(least) === number(greatest)
    ? `${number(least)}${NO_BREAK_SPACE}mm`
    : `${number(least)} to ${number(greatest)}${NO_BREAK_SPACE}mm`;

/** Readings that count as one size: one of them, or both ends. */
export const spanText = (ends: Span): string => span(ends, lengthNumber);
const boreText = (ends: Span): string => span(ends, diameterNumber);

const secondsText = (hours: number): string =>
  `${significantText(fromCore(hours, 's'), 2).replace(/\.0$/, '')}${NO_BREAK_SPACE}s`;

/** A depth over the time that it took; no more digits than a stop-watch gives. */
const speedText = (depth: number, hours: number): string =>
  `${significantText(depth / fromCore(hours, 's'), 2)}${NO_BREAK_SPACE}mm/s`;
