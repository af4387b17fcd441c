import { type KeyboardEvent, useId, useMemo } from 'react';
import { unitText } from '../quantity/format.ts';
import { controlAria, FieldFrame, messageOf, useRefusedNotice } from './field-frame.tsx';
import type { QuantityFieldProps } from './field-props.ts';
import css from './fields.module.css';
import { type QuantityFieldBehaviour, useQuantityField } from './use-quantity-field.ts';
import { widthOf } from './width-of.ts';
import { rangeWords, refusalWords } from './words.ts';

const COARSE_STEPS = 10;

/** Steps an arrow or page key stands for. */
const STEP_KEYS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowDown: -1,
  PageUp: COARSE_STEPS,
  PageDown: -COARSE_STEPS,
};

function pressed(event: KeyboardEvent, field: QuantityFieldBehaviour): void {
  if (event.altKey || event.ctrlKey || event.metaKey) return;
  const steps = STEP_KEYS[event.key];
  if (steps !== undefined) {
    event.preventDefault();
    field.step(steps);
  } else if (event.key === 'Enter') field.leave();
  else if (event.key === 'Escape' && field.restore()) event.stopPropagation();
}

/** The words of a refused text, its repairs bound to the field. */
function refusedMessage(field: QuantityFieldBehaviour, props: QuantityFieldProps) {
  if (field.refusal === undefined) return undefined;
  const { definition, value, noun } = props;
  const { message, repairs } = refusalWords(field.refusal, {
    definition,
    text: field.refusedText,
    value,
    noun,
  });
  return { message, repairs: repairs.map(({ label, text }) => ({ label, apply: () => field.take(text) })) };
}

/** A field for one quantity, with its unit, its allowed range and the reason when a text is not taken. */
export function QuantityField(props: QuantityFieldProps) {
  const { label, definition, value, onTake, onClear, layout = 'row', note, problem, onRefused } = props;
  const id = useId();
  const field = useQuantityField({ definition, value, onTake, onClear, hasProblem: problem !== undefined });
  const message = messageOf(refusedMessage(field, props), problem);
  useRefusedNotice(field.refusal !== undefined, onRefused);
  const unit = props.unitShown ?? unitText(definition.displayUnit, field.text.trim());
  const range = useMemo(() => rangeWords(definition), [definition]);
  const description = `${range}${note === undefined ? '' : ` ${note}`}`;
  return (
    <FieldFrame id={id} label={label} layout={layout} unit={unit} description={description} message={message}>
      <input
        {...controlAria({ id, label, layout, unit, hasMessage: message !== undefined })}
        className={css.control}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        spellCheck={false}
        enterKeyHint="done"
        style={{ inlineSize: widthOf(field.text, props.width) }}
        value={field.text}
        onChange={(event) => field.type(event.target.value)}
        onBlur={field.leave}
        onKeyDown={(event) => pressed(event, field)}
      />
    </FieldFrame>
  );
}
