import { toCore } from '../../core/units/convert.ts';
import { MILLIMETRES_PER_INCH, UNITS, type UnitSymbol } from '../../core/units/units.ts';
import type { LikelyCause, ParsedQuantity, TakenQuantity } from './parsed-quantity.ts';
import type { QuantityDefinition } from './quantity-definition.ts';

/** What may have happened, found by trying which slip leads into the usual range. */
function likelyCause(taken: TakenQuantity, definition: QuantityDefinition): LikelyCause | undefined {
  if (definition.usual === undefined) return undefined;
  const [lo, hi] = definition.usual;
  const isUsual = (value: number) => lo <= value && value <= hi;
  const isLength = definition.kind === 'length';
  const slips = [
    isLength && !taken.unitWasTyped && taken.typedUnit === 'mm'
      ? { cause: 'inches-as-mm' as const, proposal: taken.value * MILLIMETRES_PER_INCH }
      : undefined,
    definition.isDiameter === true
      ? { cause: 'radius-as-diameter' as const, proposal: taken.value * 2 }
      : undefined,
    { cause: 'decimal-slip' as const, proposal: taken.value / 10 },
    { cause: 'decimal-slip' as const, proposal: taken.value / 100 },
  ];
  return slips.find((slip) => slip !== undefined && isUsual(slip.proposal));
}

/** Holds a quantity against the limits of its field. Nothing is clamped: it is taken as it is, or refused. */
export function checkLimits(taken: TakenQuantity, definition: QuantityDefinition): ParsedQuantity {
  const { value } = taken;
  const { min, max, minInclusive = true, maxInclusive = true } = definition;
  if (!Number.isFinite(value)) return { kind: 'refused', code: 'not-finite' };
  if (min !== undefined && min >= 0 && value < 0) return { kind: 'refused', code: 'negative', value };
  const likely = likelyCause(taken, definition);
  const cause = likely === undefined ? {} : { likely };
  if (min !== undefined && (minInclusive ? value < min : value <= min)) {
    return { kind: 'refused', code: 'below-limit', value, limit: min, inclusive: minInclusive, ...cause };
  }
  if (max !== undefined && (maxInclusive ? value > max : value >= max)) {
    return { kind: 'refused', code: 'above-limit', value, limit: max, inclusive: maxInclusive, ...cause };
  }
  return taken;
}

/** A number with the unit it was typed in, as the quantity of a field or the reason why not. */
export function settle(
  typed: {
    readonly value: number;
    readonly unit: UnitSymbol;
    readonly unitWasTyped: boolean;
    readonly isBareNumber: boolean;
  },
  definition: QuantityDefinition,
): ParsedQuantity {
  const { kind } = UNITS[typed.unit];
  if (kind !== definition.kind) {
    return { kind: 'refused', code: 'wrong-kind', found: kind, wanted: definition.kind, unit: typed.unit };
  }
  const { unit: typedUnit, unitWasTyped, isBareNumber } = typed;
  const value = toCore(typed.value, typedUnit);
  return checkLimits({ kind: 'quantity', value, typedUnit, unitWasTyped, isBareNumber }, definition);
}
