import { lazy, Suspense } from 'react';
import { sentenceOfRejection } from '../../wording/rejections.ts';
import { plainText, type Sentence } from '../../wording/sentence.ts';
import { DerivationRow } from '../derivation/derivation-slot.tsx';
import type { ToldRejectionProps } from '../derivation/told-rejection.tsx';

const Told = lazy(() => import('../derivation/told.tsx').then((module) => ({ default: module.Told })));

const ToldRejection = lazy(() =>
  import('../derivation/told-rejection.tsx').then((module) => ({ default: module.ToldRejection })),
);

/** A sentence of the answers: stands there at once, and its numbers open as soon as their derivations have been loaded. */
export const ToldAnswer = ({ sentence }: { readonly sentence: Sentence }) => (
  <Suspense fallback={plainText(sentence)}>
    <DerivationRow slot="answers">
      <Told sentence={sentence} />
    </DerivationRow>
  </Suspense>
);

/** Why an insert is out, in the same way. */
export const RejectionAnswer = (props: ToldRejectionProps) => (
  <Suspense fallback={plainText(sentenceOfRejection(props.rejection))}>
    <DerivationRow slot="answers">
      <ToldRejection {...props} />
    </DerivationRow>
  </Suspense>
);
