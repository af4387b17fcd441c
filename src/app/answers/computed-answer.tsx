import { lazy, Suspense } from 'react';
import type { ComputedValueProps } from '../derivation/computed-value.tsx';

const ComputedValue = lazy(() =>
  import('../derivation/computed-value.tsx').then((module) => ({ default: module.ComputedValue })),
);

/** A number of the answers: stands there at once, and opens its derivation as soon as that has been loaded. */
export function ComputedAnswer(props: Omit<ComputedValueProps, 'slot'>) {
  return (
    <Suspense fallback={<span>{props.text}</span>}>
      <ComputedValue {...props} slot="answers" />
    </Suspense>
  );
}
