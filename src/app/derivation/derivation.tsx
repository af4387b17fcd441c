import { useEffect, useRef } from 'react';
import type { Derived } from '../../core/sources/derived.ts';
import styles from './derivation.module.css';
import { DerivationStep } from './derivation-step.tsx';
import { useEscape } from './use-escape.ts';

export interface DerivationProps {
  readonly id?: string;
  /** In the order of computing. */
  readonly steps: readonly Derived[];
  readonly label: string;
  /** Absent: it stands open and cannot be closed. */
  readonly onClose?: () => void;
}

/** The way to one number: formula, values put in, result, meaning of the symbols, source and standing. */
export function Derivation({ id, steps, label, onClose }: DerivationProps) {
  const region = useRef<HTMLElement>(null);
  const closable = onClose !== undefined;
  useEffect(() => {
    if (closable) region.current?.focus();
  }, [closable]);
  useEscape(region, onClose);
  return (
    <section
      ref={region}
      id={id}
      className={styles['derivation']}
      aria-label={`Derivation: ${label}`}
      tabIndex={closable ? -1 : undefined}
    >
      {steps.map((step) => (
        <DerivationStep key={`${step.symbol}-${step.formula}`} derived={step} />
      ))}
      {closable && (
        <button type="button" className={styles['close']} onClick={onClose}>
          Close
        </button>
      )}
    </section>
  );
}
