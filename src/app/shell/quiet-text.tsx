import { type KeyboardEvent, useRef, useState } from 'react';
import styles from './quiet-text.module.css';

interface QuietTextProps {
  readonly label: string;
  readonly value: string;
  readonly greatest: number;
  readonly onTake: (text: string) => void;
  /** Several lines: the text breaks as running text does. */
  readonly lines?: boolean;
  readonly placeholder?: string;
}

/** A text of the sheet that becomes a field when it is pressed. */
export function QuietText({
  label,
  value,
  greatest,
  onTake,
  lines = false,
  placeholder = '',
}: QuietTextProps) {
  const [typed, setTyped] = useState<string | null>(null);
  // A key that closes the field puts the focus back on the text.
  const isBack = useRef(false);
  const close = (text: string | null) => {
    if (text !== null && text.trim() !== value) onTake(text.trim());
    setTyped(null);
  };
  if (typed === null) {
    return (
      <button
        ref={(element) => {
          if (isBack.current) element?.focus();
          isBack.current = false;
        }}
        type="button"
        className={value === '' ? `${styles.text} ${styles.empty}` : styles.text}
        onClick={() => setTyped(value)}
      >
        {value === '' ? placeholder : value}
        <span className="out-of-sight">, change</span>
      </button>
    );
  }
  const field = {
    className: styles.field,
    'aria-label': label,
    maxLength: greatest,
    value: typed,
    ref: (element: HTMLInputElement | HTMLTextAreaElement | null) => element?.focus(),
    onChange: (event: { readonly target: { readonly value: string } }) => setTyped(event.target.value),
    onBlur: () => close(typed),
    onKeyDown: (event: KeyboardEvent) => {
      if (event.key !== 'Escape' && event.key !== 'Enter') return;
      event.preventDefault();
      isBack.current = true;
      close(event.key === 'Enter' ? typed : null);
    },
  };
  return lines ? <textarea rows={3} {...field} /> : <input type="text" {...field} />;
}
