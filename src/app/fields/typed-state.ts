/** A text that was taken, with what it meant and what the outside will say when it agrees. */
export interface TakenText<Meant> {
  /** As it stands in the field. */
  readonly text: string;
  /** As the field would write the meant value by itself. */
  readonly written: string;
  readonly meant: Meant;
}

export type Outcome<Meant, Refused> =
  | { readonly kind: 'taken'; readonly taken: TakenText<Meant> }
  | { readonly kind: 'refused'; readonly refusal: Refused };

/** The typed text and the meant value, apart: the last taken one stays while an error shows. */
export interface TypedState<Meant, Refused> {
  readonly text: string;
  readonly status: 'settled' | 'typing' | 'pending' | 'refused';
  /** Shows from the reading that failed until the next reading. */
  readonly refusal?: Refused;
  readonly refusedText?: string;
  readonly last: TakenText<Meant>;
  /** What was taken before the last one: the way back out of a problem of the joint. */
  readonly before?: TakenText<Meant>;
  /** The outside's value as it was last seen. */
  readonly seen: string;
}

export type TypedAction<Meant, Refused> =
  | { readonly type: 'typed'; readonly text: string }
  | { readonly type: 'asked'; readonly text: string }
  | { readonly type: 'answered'; readonly asked: string; readonly outcome: Outcome<Meant, Refused> }
  | { readonly type: 'restored' }
  | { readonly type: 'given'; readonly written: string; readonly meant: Meant };

export function initialTyped<Meant, Refused>(written: string, meant: Meant): TypedState<Meant, Refused> {
  return { text: written, status: 'settled', last: { text: written, written, meant }, seen: written };
}

type Kept<Meant, Refused> = Pick<TypedState<Meant, Refused>, 'last' | 'seen'> & {
  readonly before?: TakenText<Meant>;
};

/** What outlives a change of the text. */
function kept<Meant, Refused>(state: TypedState<Meant, Refused>): Kept<Meant, Refused> {
  const { last, before, seen } = state;
  return before === undefined ? { last, seen } : { last, before, seen };
}

function answered<Meant, Refused>(
  state: TypedState<Meant, Refused>,
  action: { readonly asked: string; readonly outcome: Outcome<Meant, Refused> },
): TypedState<Meant, Refused> {
  // An answer to a text that has been changed since is no longer of interest.
  if (state.status !== 'pending' || state.text !== action.asked) return state;
  const { outcome } = action;
  if (outcome.kind === 'refused')
    return { ...state, status: 'refused', refusal: outcome.refusal, refusedText: state.text };
  const { taken } = outcome;
  const before = taken.written === state.last.written ? state.before : state.last;
  return {
    text: taken.text,
    status: 'settled',
    last: taken,
    ...(before === undefined ? {} : { before }),
    seen: state.seen,
  };
}

/** The outside's value changed: the field follows, unless it is only the echo of what was taken here. */
function given<Meant, Refused>(
  state: TypedState<Meant, Refused>,
  action: { readonly written: string; readonly meant: Meant },
): TypedState<Meant, Refused> {
  if (action.written === state.last.written) return { ...state, seen: action.written };
  return initialTyped(action.written, action.meant);
}

export function typedReducer<Meant, Refused>(
  state: TypedState<Meant, Refused>,
  action: TypedAction<Meant, Refused>,
): TypedState<Meant, Refused> {
  switch (action.type) {
    case 'typed':
      return { ...state, text: action.text, status: 'typing' };
    case 'asked':
      return { ...state, text: action.text, status: 'pending' };
    case 'answered':
      return answered(state, action);
    case 'restored':
      return { ...kept(state), text: state.last.text, status: 'settled' };
    case 'given':
      return given(state, action);
  }
}
