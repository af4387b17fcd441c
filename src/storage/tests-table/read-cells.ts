import type { TestRecord } from '../document.ts';
import { LIMITS, type LimitName } from '../limits.ts';
import { FORCE_UNITS, TEST_KINDS, TEST_RESULTS, TEST_SETTINGS, TORQUE_UNITS } from '../workshop-schema.ts';

/** Why a cell is not taken. */
export type CellFault =
  | { readonly code: 'no-number'; readonly text: string }
  | { readonly code: 'ambiguous-number'; readonly text: string }
  | {
      readonly code: 'out-of-range';
      readonly text: string;
      readonly least: number;
      readonly greatest: number;
    }
  | { readonly code: 'unknown-unit'; readonly text: string }
  | { readonly code: 'no-date'; readonly text: string }
  | { readonly code: 'ambiguous-date'; readonly text: string }
  | { readonly code: 'too-long'; readonly characters: number; readonly greatest: number }
  | { readonly code: 'unknown-word'; readonly text: string; readonly choices: string };

export type Cell<Value> =
  | { readonly kind: 'read'; readonly value: Value }
  | { readonly kind: 'refused'; readonly fault: CellFault };

const read = <Value>(value: Value): Cell<Value> => ({ kind: 'read', value });
const refused = (fault: CellFault): Cell<never> => ({ kind: 'refused', fault });

type Unit = TestRecord['unit'];

/** Spellings of units on benches, without dots, blanks and case; a torque is never only a force. */
const UNIT_SPELLINGS: Readonly<Record<string, Unit>> = {
  kg: 'kgf',
  kgf: 'kgf',
  kp: 'kgf',
  n: 'N',
  lb: 'lbf',
  lbs: 'lbf',
  lbf: 'lbf',
  nm: 'N·m',
  cnm: 'cN·m',
  // A newton centimetre is a hundredth of a newton metre.
  ncm: 'cN·m',
  inlb: 'in·lb',
  inlbs: 'in·lb',
  inlbf: 'in·lb',
  lbin: 'in·lb',
  lbfin: 'in·lb',
  kgcm: 'kgf·cm',
  kgfcm: 'kgf·cm',
};

/** Signs of a product; a stroke would part the units, and N/m is no torque. */
const SIGNS_IN_UNITS = /[\s.·⋅*×\-_]/g;

/** A unit as benches write it. */
export function readUnit(text: string): Cell<Unit> {
  const spelling = text.toLowerCase().replace(SIGNS_IN_UNITS, '');
  const unit = Object.hasOwn(UNIT_SPELLINGS, spelling) ? UNIT_SPELLINGS[spelling] : undefined;
  return unit === undefined ? refused({ code: 'unknown-unit', text }) : read(unit);
}

const THOUSANDS_OR_DECIMALS = /^[+-]?\d{1,3}[.,]\d{3}$/;
/** With an exponent as spreadsheets write one, its sign always there. */
const PLAIN = /^[+-]?\d+(?:[.,]\d+)?(?:e[+-]\d{1,3})?$/i;
/** 1.234,5 and 1,234.5: the last sign parts the decimals. */
const GROUPED = /^[+-]?\d{1,3}(?:([.,])\d{3})+(?!\1)[.,]\d+$/;

/** Blanks and marks between thousands; a blank elsewhere parts two numbers. */
const BETWEEN_THOUSANDS = /(?<=\d)[\s\u00a0\u202f'’](?=\d{3}(?!\d))/g;

/** A number with a decimal point or comma; 1,250 may be either and is asked about, 0,250 is not. */
export function readNumber(typed: string): Cell<number> {
  const text = typed.trim().replace(BETWEEN_THOUSANDS, '');
  if (THOUSANDS_OR_DECIMALS.test(text) && text.includes(',') && !/^[+-]?0/.test(text)) {
    return refused({ code: 'ambiguous-number', text: typed });
  }
  if (PLAIN.test(text)) return read(Number(text.replace(',', '.')));
  if (GROUPED.test(text)) {
    const decimals = text.lastIndexOf(
      text.includes('.') && text.lastIndexOf('.') > text.lastIndexOf(',') ? '.' : ',',
    );
    return read(Number(`${text.slice(0, decimals).replace(/[.,]/g, '')}.${text.slice(decimals + 1)}`));
  }
  return refused({ code: 'no-number', text: typed });
}

/** A number that the document takes at a key. */
export function readWithin(limit: LimitName, text: string): Cell<number> {
  const number = readNumber(text);
  return number.kind === 'refused' ? number : within(limit, number.value, text);
}

function within(limit: LimitName, value: number, text: string): Cell<number> {
  const { least, greatest } = LIMITS[limit];
  return value < least || value > greatest
    ? refused({ code: 'out-of-range', text, least, greatest })
    : read(value);
}

const LEADING_NUMBER = /^([+-]?\d[\d.,\s\u00a0\u202f'’]*(?:e[+-]\d{1,3})?)(?<=\d)\s*(\D*)$/i;

/** A reading with or without its unit: "41,5", "41.5 kg". */
export function readReading(text: string): Cell<{ readonly value: number; readonly unit?: Unit }> {
  const parts = LEADING_NUMBER.exec(text.trim());
  if (!parts) return refused({ code: 'no-number', text });
  const value = readWithin('asWritten', parts[1] ?? '');
  if (value.kind === 'refused') return value;
  const written = (parts[2] ?? '').trim();
  if (written === '') return read({ value: value.value });
  const unit = readUnit(written);
  return unit.kind === 'refused' ? unit : read({ value: value.value, unit: unit.value });
}

const ISO_DATE = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const DOTTED_DATE = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/;
const SLASHED_DATE = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/;

/** A day: 2026-03-09, 9.3.2026, or with slashes where only one order makes a date. */
export function readDate(text: string): Cell<string> {
  const trimmed = text.trim();
  const iso = ISO_DATE.exec(trimmed);
  if (iso) return dayOf(text, iso[1], iso[2], iso[3]);
  const dotted = DOTTED_DATE.exec(trimmed);
  if (dotted) return dayOf(text, dotted[3], dotted[2], dotted[1]);
  const slashed = SLASHED_DATE.exec(trimmed);
  if (!slashed) return refused({ code: 'no-date', text });
  const [, first = '', second = '', year] = slashed;
  if (Number(first) <= 12 && Number(second) <= 12 && first !== second) {
    return refused({ code: 'ambiguous-date', text });
  }
  return Number(first) > 12 ? dayOf(text, year, second, first) : dayOf(text, year, first, second);
}

function dayOf(text: string, year = '', month = '', day = ''): Cell<string> {
  const iso = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  const date = new Date(`${iso}T00:00:00Z`);
  const isDay = !Number.isNaN(date.getTime()) && date.toISOString().startsWith(iso);
  return isDay ? read(iso) : refused({ code: 'no-date', text });
}

const folded = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-');

function readWord<Word extends string>(
  words: readonly Word[],
  names: Readonly<Record<Word, string>>,
  text: string,
): Cell<Word> {
  const wanted = folded(text);
  const word = words.find((one) => one === wanted || folded(names[one]) === wanted);
  return word === undefined ? refused({ code: 'unknown-word', text, choices: words.join(', ') }) : read(word);
}

/** Words of a test's kind, result and setting: the keys of the document, or the names a page gives them. */
export interface TestWords {
  readonly kinds: Readonly<Record<TestRecord['kind'], string>>;
  readonly results: Readonly<Record<TestRecord['result'], string>>;
  readonly settings: Readonly<Record<TestRecord['setting'], string>>;
}

export const readKind = (words: TestWords, text: string) => readWord(TEST_KINDS, words.kinds, text);
export const readResult = (words: TestWords, text: string) => readWord(TEST_RESULTS, words.results, text);
export const readSetting = (words: TestWords, text: string) => readWord(TEST_SETTINGS, words.settings, text);

/** The axis of an insert as the document says it. */
export const readAxis = (text: string) => readWord(AXES, AXIS_NAMES, text);
const AXES = ['along-build', 'across-build'] as const;
const AXIS_NAMES = { 'along-build': 'vertical', 'across-build': 'horizontal' } as const;

/** A whole number that the document takes at a key. */
export function readCount(limit: LimitName, text: string): Cell<number> {
  const number = readWithin(limit, text);
  return number.kind === 'read' && !Number.isInteger(number.value)
    ? refused({ code: 'no-number', text })
    : number;
}

/** Words that the document takes up to a length; longer ones are not cut, they would be others. */
export const readText = (text: string, greatest: number): Cell<string> =>
  text.length > greatest ? refused({ code: 'too-long', characters: text.length, greatest }) : read(text);

export const isForce = (unit: Unit): boolean => FORCE_UNITS.some((one) => one === unit);
export const UNITS_OF_TESTS: readonly Unit[] = [...FORCE_UNITS, ...TORQUE_UNITS];
