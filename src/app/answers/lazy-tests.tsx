import { lazy, Suspense } from 'react';
import styles from './answers.module.css';

const load = () => import('./tests-answer.tsx');
const TestsAnswer = lazy(() => load().then((module) => ({ default: module.TestsAnswer })));
const ShortTests = lazy(() => load().then((module) => ({ default: module.ShortTests })));

/** The fifth answer; what the tests say comes after the first load. */
export const LazyTestsAnswer = () => (
  <Suspense fallback={<div className={`${styles.big} ${styles.lesser}`} aria-busy="true" />}>
    <TestsAnswer />
  </Suspense>
);

export const LazyShortTests = () => (
  <Suspense fallback={null}>
    <ShortTests />
  </Suspense>
);
