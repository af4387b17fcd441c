import type { Lever, LeverId } from '../core/service/lever.ts';
import type { Remedy } from '../core/service/remedies.ts';
import type { Sensitivity } from '../core/service/sensitivity.ts';
import type { Derived } from '../core/sources/derived.ts';
import { capitalised, countWord, decimalText, factorText, NO_BREAK_SPACE, torqueText } from './amount.ts';
import { figure, type Sentence, said } from './sentence.ts';

type Unit = Lever['unit'];

/** Sizes of moves as they are said; a change is made or not, and has none. */
const SIZES = {
  lines: (size) => countWord(size),
  '%': (size) => `${decimalText(size, Number.isInteger(size) ? 0 : 1)}${NO_BREAK_SPACE}%`,
  mm: (size) => `${decimalText(size, 1)}${NO_BREAK_SPACE}mm`,
  K: (size) => `${decimalText(size, 0)}${NO_BREAK_SPACE}K`,
  times: (size) => countWord(size),
  change: () => '',
} as const satisfies Record<Unit, (size: number) => string>;

const isOne = (size: string): boolean => size === countWord(1);

/** A move in words, by its size and whether it goes up. */
const MOVES = {
  'wall-lines': (size, up) => `${size} ${up ? 'more' : 'fewer'} wall line${isOne(size) ? '' : 's'}`,
  infill: (size, up) => `infill ${up ? 'denser' : 'lighter'} by ${size} of solid`,
  'insert-length': (size, up) => `an insert ${size} ${up ? 'longer' : 'shorter'}`,
  'knurl-diameter': (size, up) => `a knurl ${size} ${up ? 'wider' : 'narrower'}`,
  pull: (size, up) => `${size} ${up ? 'more' : 'less'} pull`,
  shear: (size, up) => `${size} ${up ? 'more' : 'less'} load across the screw`,
  temperature: (size, up) => `${size} ${up ? 'warmer' : 'cooler'} in service`,
  duration: (_, up) => (up ? 'twice the time under load' : 'half the time under load'),
  retightening: (size, up) => `${size} ${up ? 'more' : 'fewer'} re-tightening${isOne(size) ? '' : 's'}`,
  washer: () => 'a plain washer under the head',
  sleeve: () => 'a metal spacer through the clamped part',
  'close-gap': () => 'the gap closed and the insert flush',
  'oiled-thread': () => 'oil on the thread',
  'torque-driver': () => 'a torque driver instead of tightening by feel',
  'stronger-screw': () => 'a screw of a higher property class',
  'far-side': () => 'the insert set from behind, against a shoulder',
  'bigger-thread': () => 'the next larger thread, with its insert',
} as const satisfies Record<LeverId, (size: string, up: boolean) => string>;

/** A move of one input in words: "one more wall line". */
export function nameOfMove(lever: LeverId, unit: Unit, move: number): string {
  // A time is multiplied, everything else is added.
  const up = lever === 'duration' ? move > 1 : move > 0;
  return MOVES[lever](SIZES[unit](Math.abs(move)), up);
}

/** The sign of times is said once of two factors. */
const withoutSign = (factor: string): string => factor.replace(/\u00a0×$/u, '');

/** A step and what it does to the smallest margin: "One more wall line: 1.82 → 2.1 ×". */
export function sentenceOfSensitivity(given: Derived, move: Sensitivity): Sentence {
  const name = capitalised(nameOfMove(move.lever, move.unit, move.step));
  const before = figure(given, withoutSign(factorText(given.value)), `${name}, smallest margin before`);
  const after = figure(move.derivedMargin, factorText(move.margin), `${name}, smallest margin after`);
  return said`${name}: ${before}${NO_BREAK_SPACE}→${NO_BREAK_SPACE}${after}`;
}

/** A change that lets the joint hold, with what is dialled then. */
export function sentenceOfRemedy(remedy: Remedy): Sentence {
  const name = capitalised(nameOfMove(remedy.lever, remedy.unit, remedy.move));
  const margin = figure(remedy.derivedMargin, factorText(remedy.margin), `${name}, smallest margin`);
  const dial = figure(remedy.derivedDial, torqueText(remedy.dial), `${name}, torque to dial`);
  return said`${name}: holds ${margin}, dialled at ${dial}.`;
}
