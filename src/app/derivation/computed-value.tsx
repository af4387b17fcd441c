import { type ReactNode, useContext, useId, useRef } from 'react';
import { createPortal } from 'react-dom';
import type { Derived } from '../../core/sources/derived.ts';
import { Derivation } from './derivation.tsx';
import { RowSlotContext, useDerivations } from './derivation-context.ts';
import styles from './value.module.css';

type Steps = Derived | readonly Derived[];

const stepsOf = (derived: ComputedValueProps['derived']): readonly Derived[] => {
  const steps = typeof derived === 'function' ? derived() : derived;
  return 'symbol' in steps ? [steps] : steps;
};

export interface ComputedValueProps {
  /**
   * The number; several, in the order of computing, where one alone would not explain it.
   * A function where there are many numbers of which few are asked for: called when this one is opened.
   */
  readonly derived: Steps | (() => Steps);
  /** What stands on the button, as formatted. */
  readonly text: ReactNode;
  /** The number in words with its unit, as "Hole to draw, 4.55 mm"; "open derivation" follows. */
  readonly label: string;
  /** Name of a DerivationSlot; by default the one of the row. Without either it opens right below. */
  readonly slot?: string;
  /** plain: no hairline beneath, for the large answers. */
  readonly look?: 'ruled' | 'plain';
  readonly className?: string;
}

/** A computed number: ink with a hairline beneath; pressing it opens its derivation in the row's slot. */
export function ComputedValue({ derived, text, label, slot, look = 'ruled', className }: ComputedValueProps) {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const { opened, toggle, close, places } = useDerivations();
  const rowSlot = useContext(RowSlotContext);
  const isOpen = opened === id;
  const name = slot ?? rowSlot;
  const place = name === null ? undefined : places.get(name);
  const derivation = isOpen && (
    <Derivation
      id={`${id}-derivation`}
      steps={stepsOf(derived)}
      label={label}
      onClose={() => {
        close(id);
        button.current?.focus();
      }}
    />
  );
  const classes = [styles['value'], look === 'ruled' ? styles['ruled'] : styles['plain'], className];
  return (
    <>
      <button
        ref={button}
        type="button"
        className={classes.filter(Boolean).join(' ')}
        aria-expanded={isOpen}
        aria-controls={isOpen ? `${id}-derivation` : undefined}
        aria-label={`${label}, open derivation`}
        onClick={() => toggle(id)}
      >
        {text}
      </button>
      {derivation && (place === undefined ? derivation : createPortal(derivation, place))}
    </>
  );
}
