import type { Derived } from '../../core/sources/derived.ts';

export interface DerivationProps {
  readonly id?: string;
  /** In the order of computing. */
  readonly steps: readonly Derived[];
  readonly label: string;
  /** Absent: it stands open and cannot be closed. */
  readonly onClose?: () => void;
}

/** The way to one number: formula, values put in, result, meaning of the symbols, source and standing. */
export function Derivation({ steps, label }: DerivationProps) {
  return <section aria-label={`Derivation: ${label}`} data-steps={steps.length} />;
}
