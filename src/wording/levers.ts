import type { Lever, LeverId } from '../core/service/lever.ts';
import type { Remedy } from '../core/service/remedies.ts';
import type { Sensitivity } from '../core/service/sensitivity.ts';
import { capitalised, countWord, decimalText, factorText, NO_BREAK_SPACE, torqueText } from './amount.ts';

type Unit = Lever['unit'];

/** Sizes of moves as they are said; a change is made or not, and has none. */
const SIZES = {
  lines: (size) => countWord(size),
  '%': (size) => `${decimalText(size, 0)}${NO_BREAK_SPACE}%`,
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

/** From one factor to another, the sign of times said once: "1.82 → 2.1 ×". */
const changeText = (before: number, after: number): string =>
  [factorText(before).replace(/\u00a0×$/u, ''), '→', factorText(after)].join(NO_BREAK_SPACE);

/** A step and what it does to the smallest margin: "One more wall line: 1.82 → 2.1 ×". */
export function sentenceOfSensitivity(given: number, { lever, unit, step, margin }: Sensitivity): string {
  return `${capitalised(nameOfMove(lever, unit, step))}: ${changeText(given, margin)}`;
}

/** A change that lets the joint hold, with what is dialled then. */
export function sentenceOfRemedy({ lever, unit, move, margin, dial }: Remedy): string {
  return `${capitalised(nameOfMove(lever, unit, move))}: holds ${factorText(margin)}, dialled at ${torqueText(dial)}.`;
}
