import { UNITS, type UnitSymbol } from './units.ts';

/**
 * A typed value in the core unit of its kind.
 *
 *     core = (value − zero) · times / over
 *
 * The factors are exact by definition; the result is right to the last digits of a double.
 *
 * @param value - the number beside the unit [unit], any finite number
 * @param unit - symbol of the unit [-]
 * @returns the same quantity [mm, N, N·mm, °C, MPa, h, -, rad]
 * @example toCore(1, 'in') gives 25.4 mm
 */
export function toCore(value: number, unit: UnitSymbol): number {
  const { times, over, zero } = UNITS[unit];
  return ((value - zero) * times) / over;
}

/**
 * A core value in another unit of its kind, the inverse of `toCore`.
 *
 *     value = core · over / times + zero
 *
 * @param value - the quantity [mm, N, N·mm, °C, MPa, h, -, rad], any finite number
 * @param unit - symbol of the unit to show [-]
 * @returns the number beside the unit [unit]
 * @example fromCore(600, 'N·m') gives 0.6 N·m
 */
export function fromCore(value: number, unit: UnitSymbol): number {
  const { times, over, zero } = UNITS[unit];
  return (value * over) / times + zero;
}

/**
 * A value carried from one unit to another of the same kind.
 *
 *     to = fromCore(toCore(value))
 *
 * A pair of different kinds is a programmer's mistake and throws: typed text is checked at its door.
 *
 * @param value - the number beside the first unit [unit], any finite number
 * @param units - the unit it is in and the unit wanted, of one kind [-]
 * @returns the number beside the second unit [unit]
 * @example convert(8, { from: 'lbf·in', to: 'N·m' }) gives 0.9038786322 N·m
 */
export function convert(
  value: number,
  units: { readonly from: UnitSymbol; readonly to: UnitSymbol },
): number {
  const { from, to } = units;
  if (UNITS[from].kind !== UNITS[to].kind) throw new RangeError(`no conversion from ${from} to ${to}`);
  return from === to ? value : fromCore(toCore(value, from), to);
}
