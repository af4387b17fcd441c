import type { UnitKind, UnitSymbol } from '../../core/units/units.ts';

/** What may have happened where a value misses its limits, with the value that would then be meant. */
export interface LikelyCause {
  readonly cause: 'inches-as-mm' | 'decimal-slip' | 'radius-as-diameter';
  /** Core unit. */
  readonly proposal: number;
}

/** A typed text that is not taken; values and limits in the core unit. */
export type Refusal = { readonly kind: 'refused' } & (
  | { readonly code: 'empty' }
  | { readonly code: 'not-a-number' }
  | { readonly code: 'not-understood'; readonly part: string }
  | { readonly code: 'not-allowed'; readonly part: string }
  | { readonly code: 'too-long'; readonly limit: number }
  | { readonly code: 'not-finite' }
  | { readonly code: 'unit-unknown'; readonly unit: string }
  | { readonly code: 'unit-missing' }
  | {
      readonly code: 'wrong-kind';
      readonly found: UnitKind | 'other';
      readonly wanted: UnitKind;
      readonly unit: UnitSymbol;
    }
  | {
      readonly code: 'ambiguous-separator';
      readonly typed: string;
      readonly asPoint: string;
      readonly asThousands: string;
    }
  | { readonly code: 'negative'; readonly value: number }
  | {
      readonly code: 'below-limit' | 'above-limit';
      readonly value: number;
      readonly limit: number;
      readonly inclusive: boolean;
      readonly likely?: LikelyCause;
    }
  | { readonly code: 'engine-missing' }
);

export type RefusalCode = Refusal['code'];

export interface TakenQuantity {
  readonly kind: 'quantity';
  /** Core unit, as exact as it was typed. */
  readonly value: number;
  /** The first unit typed, else the field's own. */
  readonly typedUnit: UnitSymbol;
  readonly unitWasTyped: boolean;
  /** Whether the text is one number alone, so that it may stay as typed. */
  readonly isBareNumber: boolean;
}

export type ParsedQuantity = TakenQuantity | Refusal;
