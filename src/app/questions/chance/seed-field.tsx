import { type KeyboardEvent, useId, useState } from 'react';
import { controlAria, FieldFrame } from '../../fields/field-frame.tsx';
import fields from '../../fields/fields.module.css';

const GREATEST = 2 ** 32 - 1;
const DIGITS = 10;

export interface SeedFieldProps {
  readonly seed: number;
  readonly onTake: (seed: number) => void;
}

/** The number that the sampling starts from: the same one gives the same joints. */
export function SeedField({ seed, onTake }: SeedFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const text = typed?.trim();
  const isNumber = text === undefined || (/^\d{1,10}$/.test(text) && Number(text) <= GREATEST);
  const leave = () => {
    if (text === undefined || !isNumber) return;
    setTyped(undefined);
    if (Number(text) !== seed) onTake(Number(text));
  };
  const press = ({ key }: KeyboardEvent) => {
    if (key === 'Enter') leave();
    else if (key === 'Escape') setTyped(undefined);
  };
  const message = isNumber
    ? undefined
    : { message: `A seed is a whole number from 0 to ${GREATEST}.`, repairs: [] };
  return (
    <FieldFrame
      id={id}
      label="Seed"
      layout="row"
      description={`A whole number from 0 to ${GREATEST}; the same seed draws the same joints again.`}
      message={message}
    >
      <input
        {...controlAria({ id, label: 'Seed', layout: 'row', hasMessage: message !== undefined })}
        className={fields['control']}
        type="text"
        inputMode="numeric"
        autoComplete="off"
        size={DIGITS}
        value={typed ?? String(seed)}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={leave}
        onKeyDown={press}
      />
    </FieldFrame>
  );
}
