import { memo } from 'react';
import { ChoiceField } from '../fields/choice-field.tsx';
import type { Choice, FieldLayout } from '../fields/field-props.ts';
import type { Edit } from '../state/edit.ts';
import { useDocumentField } from './use-document-field.ts';

interface DocumentChoiceProps<Value extends string> {
  readonly path: string;
  readonly place: string;
  readonly label: string;
  readonly choices: readonly Choice<Value>[];
  readonly layout?: FieldLayout;
  readonly note?: string;
  /** What stands in the document for each choice; by default the choice itself. */
  readonly write?: (choice: Value) => unknown;
  readonly read?: (value: unknown) => Value | undefined;
  /** What has to change along with a choice. */
  readonly along?: (choice: Value) => readonly Edit[];
}

function Chosen<Value extends string>(props: DocumentChoiceProps<Value>) {
  const { path, place, label, choices, layout = 'row', note, along } = props;
  const field = useDocumentField(path, place);
  const read = props.read ?? ((value) => choices.find((choice) => choice.value === value)?.value);
  const shown = read('waiting' in field ? field.waiting : field.value) ?? choices[0]?.value;
  if (shown === undefined) return null;
  const keep = { label: 'Keep what it was', apply: field.giveUp };
  return (
    <ChoiceField
      key={field.renewal}
      label={label}
      layout={layout}
      value={shown}
      choices={choices}
      onTake={(choice) =>
        field.take((props.write ?? ((one: Value) => one))(choice), ...(along?.(choice) ?? []))
      }
      {...(note === undefined ? {} : { note })}
      problem={field.problem && { repair: keep, ...field.problem }}
    />
  );
}

/** The field of one choice of the document; a choice that is not taken stays on display with its reason. */
export const DocumentChoice = memo(Chosen) as typeof Chosen;
