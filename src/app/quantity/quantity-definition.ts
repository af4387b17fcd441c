import type { UnitKind, UnitSymbol } from '../../core/units/units.ts';

/** What a field asks for. Limits and the usual range are in the core unit, the step in the unit shown. */
export interface QuantityDefinition {
  readonly kind: UnitKind;
  /** The unit shown beside the field; a number typed without a unit is in it. */
  readonly displayUnit: UnitSymbol;
  readonly min?: number;
  readonly max?: number;
  /** Whether the limit itself may be typed; true when absent. */
  readonly minInclusive?: boolean;
  readonly maxInclusive?: boolean;
  /** Where nearly all values of this field lie; only guesses at the cause of a refusal use it. */
  readonly usual?: readonly [lo: number, hi: number];
  /** What an arrow key adds, in the display unit; it also sets the decimals shown. */
  readonly step: number;
  readonly isDiameter?: boolean;
}
