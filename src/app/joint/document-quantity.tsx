import { memo, useMemo } from 'react';
import type { UnitSymbol } from '../../core/units/units.ts';
import type { FieldLayout } from '../fields/field-props.ts';
import { QuantityField } from '../fields/quantity-field.tsx';
import type { Edit } from '../state/edit.ts';
import type { NamedQuantity } from '../state/quantities.ts';
import { definitionOf, fromDocument, toDocument } from '../state/quantity-of-key.ts';
import { useDocumentField } from './use-document-field.ts';

interface DocumentQuantityProps {
  readonly quantity: NamedQuantity;
  /** Where the field stands, to tell two fields of one value apart. */
  readonly place: string;
  readonly layout?: FieldLayout;
  readonly shown?: UnitSymbol;
  /** Given: an empty field takes the key out. */
  readonly optional?: boolean;
  readonly unitShown?: string;
  readonly width?: number;
  /** Goes into the document along with each value. */
  readonly along?: readonly Edit[];
}

const NONE: readonly Edit[] = [];

/** The field of one number of the document. */
export const DocumentQuantity = memo(function DocumentQuantity({
  quantity,
  place,
  layout = 'row',
  shown,
  optional = false,
  unitShown,
  width,
  along = NONE,
}: DocumentQuantityProps) {
  const { renewal, value, take, problem, onRefused } = useDocumentField(quantity.path, place);
  const definition = useMemo(
    () => definitionOf(shown === undefined ? quantity : { ...quantity, shown }),
    [quantity, shown],
  );
  return (
    <QuantityField
      key={renewal}
      label={quantity.label}
      layout={layout}
      definition={definition}
      value={typeof value === 'number' ? fromDocument(value, quantity.unit) : null}
      onTake={(taken) => take(toDocument(taken, quantity.unit), ...along)}
      {...(optional ? { onClear: () => take(undefined) } : {})}
      {...(quantity.noun === undefined ? {} : { noun: quantity.noun })}
      {...(quantity.note === undefined ? {} : { note: quantity.note })}
      {...(unitShown === undefined ? {} : { unitShown })}
      {...(width === undefined ? {} : { width })}
      problem={problem}
      onRefused={onRefused}
    />
  );
});
