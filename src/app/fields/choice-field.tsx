import { memo, useId } from 'react';
import { controlAria, FieldFrame, messageOf } from './field-frame.tsx';
import type { Choice, ChoiceFieldProps } from './field-props.ts';
import css from './fields.module.css';

interface OptionsProps {
  readonly choices: readonly Choice<string>[];
}

function Options({ choices }: OptionsProps) {
  return choices.map(({ value, label }) => (
    <option key={value} value={value}>
      {label}
    </option>
  ));
}

/** The options under their groups; long lists that hardly ever change. */
const GroupedOptions = memo(function GroupedOptions({ choices }: OptionsProps) {
  const groups = [...new Set(choices.map((choice) => choice.group))];
  return groups.map((group) => {
    const members = choices.filter((choice) => choice.group === group);
    return group === undefined ? (
      <Options key="" choices={members} />
    ) : (
      <optgroup key={group} label={group}>
        <Options choices={members} />
      </optgroup>
    );
  });
});

/** A native select in the look of a field. */
export function ChoiceField<Value extends string>(props: ChoiceFieldProps<Value>) {
  const { label, value, choices, onTake, layout = 'row', note = '', problem } = props;
  const id = useId();
  const message = messageOf(undefined, problem);
  const take = (picked: string) => {
    const choice = choices.find((one) => one.value === picked);
    if (choice !== undefined) onTake(choice.value);
  };
  return (
    <FieldFrame id={id} label={label} layout={layout} description={note} message={message}>
      <select
        {...controlAria({ id, label, layout, hasMessage: message !== undefined })}
        className={css.control}
        value={value}
        onChange={(event) => take(event.target.value)}
      >
        <GroupedOptions choices={choices} />
      </select>
    </FieldFrame>
  );
}
