import { type ReactNode, useEffect, useEffectEvent } from 'react';
import type { FieldCommonProps, FieldLayout, Repair } from './field-props.ts';
import css from './fields.module.css';

/** What stands under a field that is not taken. */
export interface FieldMessage {
  readonly message: string;
  readonly repairs: readonly Repair[];
}

interface FieldFrameProps {
  /** The id of the control; the label, description and message hang on it. */
  readonly id: string;
  readonly label: string;
  readonly layout: FieldLayout;
  readonly unit?: string;
  readonly description: string;
  readonly message: FieldMessage | undefined;
  readonly children: ReactNode;
}

const descriptionId = (id: string) => `${id}-description`;
const messageId = (id: string) => `${id}-message`;

/** The attributes that tie a control to its label, description and message. */
export function controlAria(field: {
  readonly id: string;
  readonly label: string;
  readonly layout: FieldLayout;
  readonly unit?: string;
  readonly hasMessage: boolean;
}) {
  const { id, label, layout, unit = '', hasMessage } = field;
  const described = hasMessage ? `${messageId(id)} ${descriptionId(id)}` : descriptionId(id);
  return {
    id,
    'aria-describedby': described,
    ...(hasMessage ? { 'aria-invalid': true } : {}),
    ...(layout === 'bare' ? { 'aria-label': unit === '' ? label : `${label}, ${unit}` } : {}),
  };
}

/** What an error says: the parser's refusal before an objection of the joint, for the value is older than the text. */
export function messageOf(
  refused: FieldMessage | undefined,
  problem: FieldCommonProps['problem'],
): FieldMessage | undefined {
  if (refused !== undefined) return refused;
  if (problem === undefined) return undefined;
  return { message: problem.message, repairs: problem.repair === undefined ? [] : [problem.repair] };
}

/** Tells the outside while a refusal shows, and takes it back when the field goes. */
export function useRefusedNotice(isRefused: boolean, onRefused: FieldCommonProps['onRefused']): void {
  const tell = useEffectEvent((refused: boolean) => onRefused?.(refused));
  useEffect(() => {
    if (!isRefused) return undefined;
    tell(true);
    return () => tell(false);
  }, [isRefused]);
}

/** The message and its one-press repairs; a press puts the focus back into the field. */
function Message({
  id,
  message: { message, repairs },
}: {
  readonly id: string;
  readonly message: FieldMessage;
}) {
  const press = (repair: Repair) => {
    repair.apply();
    document.getElementById(id)?.focus();
  };
  return (
    <p className={css.message} id={messageId(id)} role="alert">
      <b>Not taken.</b> {message}
      {repairs.map((repair) => (
        <button key={repair.label} type="button" className={css.repair} onClick={() => press(repair)}>
          {repair.label}
        </button>
      ))}
    </p>
  );
}

/** Label, control, unit, description and message in one of the two layouts. */
export function FieldFrame({
  id,
  label,
  layout,
  unit = '',
  description,
  message,
  children,
}: FieldFrameProps) {
  return (
    <div
      className={layout === 'row' ? css.row : css.bare}
      data-refused={message === undefined ? undefined : ''}
    >
      {layout === 'row' && (
        <label className={css.label} htmlFor={id}>
          {label}
        </label>
      )}
      <span className={css.value}>
        {children}
        {layout === 'row' && unit !== '' && <span className={css.unit}>{unit}</span>}
      </span>
      <span className={css.description} id={descriptionId(id)}>
        {description}
      </span>
      {message !== undefined && <Message id={id} message={message} />}
    </div>
  );
}
