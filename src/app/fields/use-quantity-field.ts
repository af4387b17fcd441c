import { fieldText } from '../quantity/format.ts';
import type { NeedsEngine } from '../quantity/parse-plain.ts';
import { parseNow, parseQuantity } from '../quantity/parse-quantity.ts';
import type { ParsedQuantity, Refusal, TakenQuantity } from '../quantity/parsed-quantity.ts';
import type { QuantityDefinition } from '../quantity/quantity-definition.ts';
import { stepText } from './step-text.ts';
import type { Outcome } from './typed-state.ts';
import { type TypedField, useTypedField } from './use-typed-field.ts';

export interface QuantityFieldOptions {
  readonly definition: QuantityDefinition;
  readonly value: number | null;
  readonly onTake: (value: number, taken: TakenQuantity) => void;
  readonly onClear?: (() => void) | undefined;
  readonly hasProblem?: boolean;
}

export interface QuantityFieldBehaviour extends TypedField<Refusal> {
  /** Takes the value so many steps away; nothing happens beyond the limits. */
  readonly step: (steps: number) => void;
}

type Meant = TakenQuantity | null;
type Read = Outcome<Meant, Refusal>;

/** A bare number stays as typed; anything else is shown converted to the field's unit. */
function outcomeOf(text: string, parsed: ParsedQuantity, definition: QuantityDefinition): Read {
  if (parsed.kind === 'refused') return { kind: 'refused', refusal: parsed };
  const written = fieldText(parsed.value, definition);
  return {
    kind: 'taken',
    taken: { text: parsed.isBareNumber ? text.trim() : written, written, meant: parsed },
  };
}

function meantBy(value: number | null, definition: QuantityDefinition): Meant {
  if (value === null) return null;
  return {
    kind: 'quantity',
    value,
    typedUnit: definition.displayUnit,
    unitWasTyped: false,
    isBareNumber: true,
  };
}

/**
 * State and behaviour of a field for one quantity: read on leaving or Enter, never clamped or rounded,
 * the last valid value kept as the meant one while an error shows.
 */
export function useQuantityField(options: QuantityFieldOptions): QuantityFieldBehaviour {
  const { definition, value, onTake, onClear, hasProblem = false } = options;
  const read = (text: string): Read | Promise<Read> => {
    if (text.trim() === '' && onClear !== undefined) {
      return { kind: 'taken', taken: { text: '', written: '', meant: null } };
    }
    const now: ParsedQuantity | NeedsEngine = parseNow(text, definition);
    if (now.kind !== 'needs-engine') return outcomeOf(text, now, definition);
    return parseQuantity(text, definition).then((late) => outcomeOf(text, late, definition));
  };
  const field = useTypedField<Meant, Refusal>({
    written: value === null ? '' : fieldText(value, definition),
    meant: meantBy(value, definition),
    read,
    onTake: (meant) => (meant === null ? onClear?.() : onTake(meant.value, meant)),
    hasProblem,
  });
  const step = (steps: number) => {
    const next = stepText(field.text, steps, definition);
    if (next !== undefined) field.take(next);
  };
  return { ...field, step };
}
