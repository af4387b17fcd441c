import { type KeyboardEvent, useId } from 'react';
import type { ReadingsRefusal } from '../quantity/parse-readings.ts';
import { controlAria, FieldFrame, messageOf, useRefusedNotice } from './field-frame.tsx';
import type { ReadingsFieldProps } from './field-props.ts';
import css from './fields.module.css';
import { readingsWords } from './readings-words.ts';
import { useReadingsField } from './use-readings-field.ts';
import type { TypedField } from './use-typed-field.ts';
import { widthOf } from './width-of.ts';

const HOW_TO_TYPE = 'Several readings, with a blank or a semicolon between.';

/** Enter takes, as in every field; with Shift it begins a line. */
function pressed(event: KeyboardEvent, field: TypedField<ReadingsRefusal>): void {
  if (event.key === 'Enter' && !event.shiftKey) {
    event.preventDefault();
    field.leave();
  } else if (event.key === 'Escape' && field.restore()) event.stopPropagation();
}

/** A field for several readings of one quantity; each reading that is not taken is named by its place. */
export function ReadingsField(props: ReadingsFieldProps) {
  const {
    label,
    definition,
    readings,
    onTake,
    layout = 'row',
    note,
    problem,
    onRefused,
    noun,
    least,
    most,
  } = props;
  const id = useId();
  const field = useReadingsField({
    definition,
    readings,
    onTake,
    hasProblem: problem !== undefined,
    least,
    most,
  });
  const value = readings[0] ?? null;
  const refused =
    field.refusal && readingsWords(field.refusal, { definition, text: field.refusedText, value, noun });
  const message = messageOf(refused && { message: refused.message, repairs: [] }, problem);
  useRefusedNotice(field.refusal !== undefined, onRefused);
  const unit = props.unitShown ?? (definition.displayUnit === '-' ? '' : definition.displayUnit);
  const description = note === undefined ? HOW_TO_TYPE : `${HOW_TO_TYPE} ${note}`;
  return (
    <FieldFrame id={id} label={label} layout={layout} unit={unit} description={description} message={message}>
      <textarea
        {...controlAria({ id, label, layout, unit, hasMessage: message !== undefined })}
        className={css.control}
        rows={Math.max(1, field.text.split('\n').length)}
        autoComplete="off"
        spellCheck={false}
        style={{ inlineSize: widthOf(field.text, props.width) }}
        value={field.text}
        onChange={(event) => field.type(event.target.value)}
        onBlur={field.leave}
        onKeyDown={(event) => pressed(event, field)}
      />
    </FieldFrame>
  );
}
