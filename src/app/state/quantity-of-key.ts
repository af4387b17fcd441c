import { convert, fromCore, toCore } from '../../core/units/convert.ts';
import { CORE_UNIT, UNITS, type UnitSymbol } from '../../core/units/units.ts';
import { LIMITS, type LimitName } from '../../storage/limits.ts';
import type { QuantityDefinition } from '../quantity/quantity-definition.ts';

/** How a quantity of the document is asked for: the unit of its key, the unit shown, the step of an arrow key. */
export interface KeyQuantity {
  readonly limit: LimitName;
  /** Unit of the key in the document. */
  readonly unit: UnitSymbol;
  /** Unit beside the field; by default that of the key. */
  readonly shown?: UnitSymbol;
  readonly step: number;
  /** Where nearly all values lie, in the unit of the key. */
  readonly usual?: readonly [lo: number, hi: number];
  readonly isDiameter?: boolean;
}

/** Digits of a double that a conversion leaves intact. */
const EXACT_DIGITS = 15;
const clean = (value: number): number => Number(value.toPrecision(EXACT_DIGITS));

/** What a field asks for, with the door's own range in the core unit. */
export function definitionOf({
  limit,
  unit,
  shown = unit,
  step,
  usual,
  isDiameter,
}: KeyQuantity): QuantityDefinition {
  const { least, greatest } = LIMITS[limit];
  return {
    kind: UNITS[unit].kind,
    displayUnit: shown,
    min: clean(toCore(least, unit)),
    max: clean(toCore(greatest, unit)),
    step,
    ...(usual ? { usual: [toCore(usual[0], unit), toCore(usual[1], unit)] as const } : {}),
    ...(isDiameter ? { isDiameter } : {}),
  };
}

/** A value of the document in the core unit of its kind. */
export const fromDocument = (value: number, unit: UnitSymbol): number =>
  unit === CORE_UNIT[UNITS[unit].kind] ? value : clean(toCore(value, unit));

/** A core value in the unit of its key. */
export const toDocument = (value: number, unit: UnitSymbol): number =>
  unit === CORE_UNIT[UNITS[unit].kind] ? value : clean(fromCore(value, unit));

/** The longest unit in which a time under load is a whole number. */
export function durationUnit(hours: number): UnitSymbol {
  const units = ['year', 'month', 'week', 'day'] as const;
  const whole = units.find((unit) => {
    const count = clean(convert(hours, { from: 'h', to: unit }));
    return count >= 1 && Number.isInteger(count);
  });
  return whole ?? 'h';
}
