/** One value with what it was before and what was undone. */
export interface Journal<Value> {
  readonly past: readonly Value[];
  readonly present: Value;
  readonly future: readonly Value[];
  /** What the last entry changed and when, so that quick steps of one field undo together. */
  readonly last?: { readonly key: string; readonly at: number };
}

/** Steps kept for undo. */
const GREATEST_PAST = 200;
/** Changes of one field that follow each other within this time are one step, ms. */
const ONE_STEP = 1000;

export const journalOf = <Value>(present: Value): Journal<Value> => ({ past: [], present, future: [] });

/** The journal with a new present; changes of one key in quick succession undo as one. */
export function record<Value>(
  journal: Journal<Value>,
  present: Value,
  by: { readonly key: string; readonly at: number },
): Journal<Value> {
  const { last } = journal;
  const continues = last !== undefined && last.key === by.key && by.at - last.at < ONE_STEP;
  const past = continues ? journal.past : [...journal.past, journal.present].slice(-GREATEST_PAST);
  return { past, present, future: [], last: by };
}

export function undo<Value>({ past, present, future }: Journal<Value>): Journal<Value> {
  const before = past.at(-1);
  return before === undefined
    ? { past, present, future }
    : { past: past.slice(0, -1), present: before, future: [present, ...future] };
}

export function redo<Value>({ past, present, future }: Journal<Value>): Journal<Value> {
  const [after, ...later] = future;
  return after === undefined
    ? { past, present, future }
    : { past: [...past, present], present: after, future: later };
}
