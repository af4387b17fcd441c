import { Fragment } from 'react';
import { capitalised } from '../../wording/amount.ts';
import type { Figure, Sentence } from '../../wording/sentence.ts';
import { meaningOf } from '../../wording/symbols.ts';
import { ComputedValue } from './computed-value.tsx';

interface ToldProps {
  readonly sentence: Sentence;
  /** Put before what a number is, where a page says the same of several things. */
  readonly of?: string;
}

const nameOf = ({ what, derived }: Figure): string =>
  what ?? capitalised(meaningOf(typeof derived === 'function' ? derived() : derived));

/** A sentence whose computed numbers open; where they open is for the row around it to say. */
export const Told = ({ sentence, of }: ToldProps) => (
  <>
    {sentence.map((part, place) => {
      // A sentence is a fixed sequence: its places are its keys.
      const key = String(place);
      return typeof part === 'string' ? (
        <Fragment key={key}>{part}</Fragment>
      ) : (
        <ComputedValue
          key={key}
          derived={part.derived}
          text={part.text}
          label={`${of === undefined ? '' : `${of}, `}${nameOf(part)}, ${part.text}`}
        />
      );
    })}
  </>
);
