import { memo } from 'react';
import { LIMITS } from '../../storage/limits.ts';
import { ReadingsField } from '../fields/readings-field.tsx';
import { READINGS, type ReadingKey } from '../state/quantities.ts';
import { definitionOf } from '../state/quantity-of-key.ts';
import { useSheetValue } from '../state/sheet-context.ts';
import { useDocumentField } from './use-document-field.ts';

interface ReadingsRowProps {
  /** Index in the drawer. */
  readonly insert: number;
  readonly reading: ReadingKey;
  readonly place: string;
  /** Whether a new reading makes the sheet answer for this insert. */
  readonly picks?: boolean;
}

const NONE: readonly number[] = [];

/** All readings of one feature of an insert, in one field. */
export const ReadingsRow = memo(function ReadingsRow(props: ReadingsRowProps) {
  const { insert, reading, place, picks = false } = props;
  const field = useDocumentField(`drawer.${insert}.${reading}`, place);
  const id = useSheetValue(({ journal }) => journal.present.drawer[insert]?.id);
  const readings = useSheetValue(({ journal }) => journal.present.drawer[insert]?.[reading]);
  if (id === undefined) return null;
  const isOptional = reading === 'knurledLength_mm';
  const along = picks ? [{ path: 'chosenInsert', value: id }] : [];
  return (
    <ReadingsField
      key={field.renewal}
      label={READINGS[reading].label}
      definition={definitionOf(READINGS[reading])}
      readings={readings ?? NONE}
      onTake={(readings) => field.take(readings.length === 0 && isOptional ? undefined : readings, ...along)}
      least={isOptional ? 0 : LIMITS.readings.least}
      most={LIMITS.readings.greatest}
      unitShown=""
      {...(isOptional ? { note: 'Empty: estimated from length and knurl diameter.' } : {})}
      problem={field.problem}
      onRefused={field.onRefused}
    />
  );
});
