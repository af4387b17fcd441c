import { useEffect, useReducer, useRef, useState } from 'react';
import type { ChanceClient } from '../../../workers/chance-client.ts';
import { askSampling } from './ask-sampling.ts';
import { NOT_BEGUN, nextState, type Question, type SamplingState } from './sampling-state.ts';

/** An edit is often followed by another one: it waits this long, ms. */
const WAIT = 600;
/** A page that is never idle does not put it off for longer than this, ms. */
const LONGEST_WAIT = 2000;

/** Runs something when the page has nothing else to do; the answer takes it back. */
function whenIdle(run: () => void): () => void {
  if (typeof requestIdleCallback === 'undefined') {
    const timer = setTimeout(run, 0);
    return () => clearTimeout(timer);
  }
  const handle = requestIdleCallback(run, { timeout: LONGEST_WAIT });
  return () => cancelIdleCallback(handle);
}

/** Questions that ask the same stay one object. */
function useSame(question: Question): Question {
  const [kept, setKept] = useState(question);
  if (kept === question || JSON.stringify(kept) === JSON.stringify(question)) return kept;
  setKept(question);
  return question;
}

export interface Sampling {
  readonly state: SamplingState;
  /** The question that is asked now; what was found may answer an older one. */
  readonly asked: Question;
  readonly cancel: () => void;
  readonly again: () => void;
}

/** Has a joint sampled in the worker: once the page is idle and the section has been seen, again after each edit. */
export function useSampling(client: ChanceClient, question: Question, isSeen: boolean): Sampling {
  const asked = useSame(question);
  const [state, dispatch] = useReducer(nextState, NOT_BEGUN);
  const [wanted, setWanted] = useState<{ readonly at: Question }>();
  const running = useRef<AbortController>(null);
  useEffect(() => {
    if (!isSeen) return undefined;
    const controller = new AbortController();
    const { signal } = controller;
    running.current = controller;
    dispatch({ kind: 'waits' });
    let takeBack = () => {};
    const start = async () => {
      dispatch({ kind: 'starts' });
      const onProgress = (share: number) => {
        if (!signal.aborted) dispatch({ kind: 'advances', share });
      };
      const outcome = await askSampling(client, asked, { signal, onProgress });
      if (!signal.aborted) dispatch({ kind: 'ends', question: asked, outcome });
    };
    const timer = setTimeout(
      () => {
        takeBack = whenIdle(() => void start());
      },
      // What was asked for by hand is wanted at once.
      wanted?.at === asked ? 0 : WAIT,
    );
    const withdraw = () => {
      clearTimeout(timer);
      takeBack();
    };
    signal.addEventListener('abort', withdraw, { once: true });
    return () => controller.abort();
  }, [client, asked, isSeen, wanted]);
  return {
    state,
    asked,
    cancel: () => {
      running.current?.abort();
      dispatch({ kind: 'ends', question: asked, outcome: { kind: 'cancelled' } });
    },
    again: () => setWanted({ at: asked }),
  };
}
