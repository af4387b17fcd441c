import { fromCore } from '../../core/units/convert.ts';
import type { UnitSymbol } from '../../core/units/units.ts';
import { valueText } from '../quantity/format.ts';

/** Decimals that the ticks of a scale need, all alike: those of their step. */
export const tickTexts = (ticks: readonly number[], unit: UnitSymbol): readonly string[] =>
  ticks.map((tick) => valueText(tick, unit, { step: fromCore((ticks[1] ?? 1) - (ticks[0] ?? 0), unit) }));

const STEPS = [1, 2, 5, 10];

/** Round numbers from 0 to at least the greatest value, with at most so many steps. */
export function niceTicks(greatest: number, most: number): readonly number[] {
  if (!(greatest > 0)) return [0, 1];
  const raw = greatest / most;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = (STEPS.find((candidate) => candidate * power >= raw * (1 - 1e-9)) ?? 10) * power;
  const count = Math.ceil(greatest / step - 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => Number((index * step).toPrecision(12)));
}
