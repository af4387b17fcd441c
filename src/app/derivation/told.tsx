import { Fragment } from 'react';
import { capitalised } from '../../wording/amount.ts';
import type { Figure, Sentence } from '../../wording/sentence.ts';
import { meaningOf } from '../../wording/symbols.ts';
import { ComputedValue } from './computed-value.tsx';
import { type Run, unbrokenRuns } from './unbroken-runs.ts';
import styles from './value.module.css';

interface ToldProps {
  readonly sentence: Sentence;
  /** Put before what a number is, where a page says the same of several things. */
  readonly of?: string;
}

const nameOf = ({ what, derived }: Figure): string =>
  what ?? capitalised(meaningOf(typeof derived === 'function' ? derived() : derived));

/** A sentence whose computed numbers open; where they open is for the row around it to say. */
export const Told = ({ sentence, of }: ToldProps) =>
  unbrokenRuns(sentence).map((words, place) => {
    // A sentence is a fixed sequence: its places are its keys.
    const key = String(place);
    return typeof words === 'string' ? (
      <Fragment key={key}>{words}</Fragment>
    ) : (
      <Unbroken key={key} run={words} of={of === undefined ? '' : `${of}, `} />
    );
  });

function Unbroken({ run, of }: { readonly run: Run; readonly of: string }) {
  const parts = run.map((part, place) =>
    typeof part === 'string' ? (
      part
    ) : (
      <ComputedValue
        key={String(place)}
        derived={part.derived}
        text={part.text}
        label={`${of}${nameOf(part)}, ${part.text}`}
      />
    ),
  );
  return run.length === 1 ? parts : <span className={styles['unbroken']}>{parts}</span>;
}
