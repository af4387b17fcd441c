/** Quiet that must follow an edit before long work begins, ms. */
const QUIET = 250;
/** The work begins after so long in any case, ms. */
const LATEST = 2000;

/** Does work when the page has nothing else to do; the returned function calls it off. */
export function whenIdle(work: () => void): () => void {
  let idle: number | undefined;
  const timer = setTimeout(() => {
    if (typeof requestIdleCallback === 'undefined') work();
    else idle = requestIdleCallback(work, { timeout: LATEST });
  }, QUIET);
  return () => {
    clearTimeout(timer);
    if (idle !== undefined) cancelIdleCallback(idle);
  };
}
