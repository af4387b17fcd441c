import { fieldText } from '../quantity/format.ts';
import { parseReadings, type ReadingsRefusal } from '../quantity/parse-readings.ts';
import type { QuantityDefinition } from '../quantity/quantity-definition.ts';
import type { Outcome } from './typed-state.ts';
import { type TypedField, useTypedField } from './use-typed-field.ts';

export interface ReadingsFieldOptions {
  readonly definition: QuantityDefinition;
  readonly readings: readonly number[];
  readonly onTake: (readings: readonly number[]) => void;
  readonly hasProblem: boolean;
  readonly least?: number | undefined;
  readonly most?: number | undefined;
}

/** Readings as the field writes them: 4.24; 4.26; 4.25. */
export function readingsText(readings: readonly number[], definition: QuantityDefinition): string {
  return readings.map((reading) => fieldText(reading, definition)).join('; ');
}

/** State and behaviour of a field for several readings of one quantity. */
export function useReadingsField(options: ReadingsFieldOptions): TypedField<ReadingsRefusal> {
  const { definition, readings, onTake, hasProblem, least, most } = options;
  const read = (text: string): Outcome<readonly number[], ReadingsRefusal> => {
    const count = { ...(least === undefined ? {} : { least }), ...(most === undefined ? {} : { most }) };
    const parsed = parseReadings(text, definition, count);
    if (parsed.kind === 'refused') return { kind: 'refused', refusal: parsed };
    const meant = parsed.readings.map((reading) => reading.value);
    const written = readingsText(meant, definition);
    const hasForeignUnit = parsed.readings.some((reading) => reading.typedUnit !== definition.displayUnit);
    return { kind: 'taken', taken: { text: hasForeignUnit ? written : text.trim(), written, meant } };
  };
  return useTypedField<readonly number[], ReadingsRefusal>({
    written: readingsText(readings, definition),
    meant: readings,
    read,
    onTake,
    hasProblem,
  });
}
