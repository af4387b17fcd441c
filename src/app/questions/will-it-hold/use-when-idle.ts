import { useEffect, useState } from 'react';
import { whenIdle } from '../when-idle.ts';

/** What long work came to, and whether the inputs have moved on since. */
export interface Worked<T> {
  readonly result?: T;
  readonly isStale: boolean;
}

/**
 * The result of long work, done when the page is idle; the last one stays until then.
 *
 * @param work - kept between renders while its inputs are the same
 * @param isWanted - false: it is put off
 */
export function useWhenIdle<T>(work: () => T, isWanted: boolean): Worked<T> {
  const [done, setDone] = useState<{ readonly work: () => T; readonly result: T }>();
  useEffect(() => {
    if (!isWanted || done?.work === work) return undefined;
    return whenIdle(() => setDone({ work, result: work() }));
  }, [work, isWanted, done]);
  return done === undefined ? { isStale: true } : { result: done.result, isStale: done.work !== work };
}
