import { type ComponentProps, lazy, Suspense } from 'react';
import styles from './answers.module.css';

const load = () => import('./hold-answer.tsx');
const HoldAnswer = lazy(() => load().then((module) => ({ default: module.HoldAnswer })));
const ShortHold = lazy(() => load().then((module) => ({ default: module.ShortHold })));

type HoldProps = ComponentProps<typeof HoldAnswer>;

/** The fourth answer; the life of the joint comes after the first load. */
export const LazyHoldAnswer = (props: HoldProps) => (
  <Suspense fallback={<div className={`${styles.big} ${styles.lesser}`} aria-busy="true" />}>
    <HoldAnswer {...props} />
  </Suspense>
);

export const LazyShortHold = (props: HoldProps) => (
  <Suspense fallback={null}>
    <ShortHold {...props} />
  </Suspense>
);
