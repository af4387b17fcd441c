import type { UnitSymbol } from '../../../core/units/units.ts';
import { niceTicks, tickTexts } from '../../charts/nice-ticks.ts';

/** Room beside the plot, px. */
export const SIDE = 14;
const NARROW = 600;
const WIDTH_OF_LETTER = 0.5;
const NAME_SIZE = 15;

export interface Tick {
  readonly x: number;
  readonly text: string;
}

/** A scale from 0 to the right. */
export interface Scale {
  readonly width: number;
  readonly greatest: number;
  readonly xOf: (value: number) => number;
  readonly ticks: readonly Tick[];
}

/** A scale from 0 to a value, with round figures on it. */
export function scaleTo(greatest: number, { width, unit }: { width: number; unit: UnitSymbol }): Scale {
  const xOf = (value: number) => SIDE + (value / greatest) * (width - 2 * SIDE);
  const values = niceTicks(greatest, width < NARROW ? 4 : 8);
  const texts = tickTexts(values, unit);
  const ticks = values.flatMap((value, index) =>
    value <= greatest ? [{ x: xOf(value), text: texts[index] ?? '' }] : [],
  );
  return { width, greatest, xOf, ticks };
}

/** A name over a place of the plot, moved inwards where it would leave it. */
export interface Name {
  readonly text: string;
  /** Left end, px. */
  readonly x: number;
  /** What the name belongs to, px. */
  readonly at: number;
}

export function nameOver(text: string, at: number, width: number): Name {
  const room = text.length * NAME_SIZE * WIDTH_OF_LETTER;
  return { text, at, x: Math.max(2, Math.min(at - room / 2, width - room - 2)) };
}
