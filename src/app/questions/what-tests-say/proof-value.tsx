import type { Derived } from '../../../core/sources/derived.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';

interface ProofValueProps {
  readonly of: Derived;
  readonly text: string;
  readonly what: string;
}

/** A number of the proof plan, named so that it is told from the same of other rows. */
export const ProofValue = ({ of, text, what }: ProofValueProps) => (
  <ComputedValue derived={of} text={text} label={`${what}, ${text}`} />
);
