import { memo } from 'react';
import { insertDimensions } from '../../core/inserts/insert-dimensions.ts';
import { lengthNumber, lengthText } from '../../wording/amount.ts';
import { ComputedValue } from '../derivation/computed-value.tsx';
import { QuantityField } from '../fields/quantity-field.tsx';
import { READINGS, type ReadingKey } from '../state/quantities.ts';
import { definitionOf } from '../state/quantity-of-key.ts';
import { useFindingsValue, useSheetValue } from '../state/sheet-context.ts';
import { useDocumentField } from './use-document-field.ts';

const DIMENSION_OF = {
  knurlDiameter_mm: 'knurlDiameter',
  pilotDiameter_mm: 'pilotDiameter',
  length_mm: 'length',
  knurledLength_mm: 'knurledLength',
} as const satisfies Record<ReadingKey, string>;

const DEFINITIONS = {
  knurlDiameter_mm: definitionOf(READINGS.knurlDiameter_mm),
  pilotDiameter_mm: definitionOf(READINGS.pilotDiameter_mm),
  length_mm: definitionOf(READINGS.length_mm),
  knurledLength_mm: definitionOf(READINGS.knurledLength_mm),
} as const satisfies Record<ReadingKey, unknown>;

interface MeasuredControlProps {
  /** Index in the drawer. */
  readonly insert: number;
  readonly reading: ReadingKey;
  readonly place: string;
  readonly slot?: string;
}

/**
 * A measured length on a drawing: the reading itself where there is one, as a field; the mean of several, or the
 * estimate in place of none, as a number that opens its derivation.
 */
export const MeasuredControl = memo(function MeasuredControl(props: MeasuredControlProps) {
  const { insert, reading, place } = props;
  const field = useDocumentField(`drawer.${insert}.${reading}`, place);
  const id = useSheetValue(({ journal }) => journal.present.drawer[insert]?.id);
  const readings = useSheetValue(({ journal }) => journal.present.drawer[insert]?.[reading]);
  if (id === undefined) return null;
  const [only, ...more] = readings ?? [];
  if (only === undefined || more.length > 0) return <Estimated {...props} />;
  return (
    <QuantityField
      key={field.renewal}
      label={READINGS[reading].label}
      layout="bare"
      definition={DEFINITIONS[reading]}
      value={only}
      onTake={(value) => field.take([value], { path: 'chosenInsert', value: id })}
      problem={field.problem}
      onRefused={field.onRefused}
    />
  );
});

function Estimated({ insert, reading, slot }: MeasuredControlProps) {
  const measured = useFindingsValue(({ drawer }) => drawer[insert]);
  if (measured === undefined) return null;
  const { estimate, standardUncertainty } = insertDimensions(measured)[DIMENSION_OF[reading]];
  return (
    <ComputedValue
      derived={[estimate, standardUncertainty]}
      text={lengthNumber(estimate.value)}
      label={`${READINGS[reading].label}, ${lengthText(estimate.value)}`}
      {...(slot === undefined ? {} : { slot })}
    />
  );
}
