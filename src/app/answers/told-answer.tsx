import { lazy, Suspense } from 'react';
import { plainText, type Sentence } from '../../wording/sentence.ts';
import { DerivationRow } from '../derivation/derivation-slot.tsx';

const Told = lazy(() => import('../derivation/told.tsx').then((module) => ({ default: module.Told })));

/** A sentence of the answers: stands there at once, and its numbers open as soon as their derivations have been loaded. */
export const ToldAnswer = ({ sentence }: { readonly sentence: Sentence }) => (
  <Suspense fallback={plainText(sentence)}>
    <DerivationRow slot="answers">
      <Told sentence={sentence} />
    </DerivationRow>
  </Suspense>
);
