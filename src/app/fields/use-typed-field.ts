import { useReducer, useRef, useState } from 'react';
import {
  initialTyped,
  type Outcome,
  type TypedAction,
  type TypedState,
  typedReducer,
} from './typed-state.ts';

export interface TypedFieldOptions<Meant, Refused> {
  /** The outside's value, as the field writes it and as it is meant. */
  readonly written: string;
  readonly meant: Meant;
  readonly read: (text: string) => Outcome<Meant, Refused> | Promise<Outcome<Meant, Refused>>;
  readonly onTake: (meant: Meant) => void;
  /** The joint objects to the value taken last: Escape then goes back to the one before. */
  readonly hasProblem: boolean;
}

export interface TypedField<Refused> {
  readonly text: string;
  readonly status: TypedState<unknown, Refused>['status'];
  readonly refusal: Refused | undefined;
  /** The text that was refused, which may have been typed over since. */
  readonly refusedText: string;
  readonly type: (text: string) => void;
  /** Reads the text and takes it, as a repair or a step does. */
  readonly take: (text: string) => void;
  /** Reads what was typed, on leaving or on Enter; the text taken last is not read again. */
  readonly leave: () => void;
  /** Back to the last taken text; false when there was nothing to go back to. */
  readonly restore: () => boolean;
}

/** The behaviour of a field that people type into, whatever it reads. */
export function useTypedField<Meant, Refused>(
  options: TypedFieldOptions<Meant, Refused>,
): TypedField<Refused> {
  const { written, meant, read, onTake, hasProblem } = options;
  const [state, dispatch] = useReducer(typedReducer<Meant, Refused>, undefined, () =>
    initialTyped<Meant, Refused>(written, meant),
  );
  // The text under way, ahead of the next rendering: a late answer to an older text is dropped.
  const asked = useRef<string | undefined>(undefined);
  if (written !== state.seen) dispatch({ type: 'given', written, meant });
  // A repair may leave the outside with the value it had: the text that was objected to gives way to it.
  const [hadProblem, setHadProblem] = useState(hasProblem);
  if (hadProblem !== hasProblem) {
    setHadProblem(hasProblem);
    const isMended = !hasProblem && state.status === 'settled' && state.last.written !== written;
    if (isMended) dispatch({ type: 'given', written, meant });
  }

  const answer = (text: string, outcome: Outcome<Meant, Refused>) => {
    if (asked.current !== text) return;
    asked.current = undefined;
    dispatch({ type: 'answered', asked: text, outcome });
    if (outcome.kind === 'taken') onTake(outcome.taken.meant);
  };

  const take = (wanted: string) => {
    asked.current = wanted;
    dispatch({ type: 'asked', text: wanted });
    const outcome = read(wanted);
    if (outcome instanceof Promise) void outcome.then((late) => answer(wanted, late));
    else answer(wanted, outcome);
  };

  const type = (typed: string) => {
    asked.current = undefined;
    dispatch({ type: 'typed', text: typed });
  };

  const leave = () => {
    if (state.text === state.last.text) dispatch({ type: 'restored' });
    else take(state.text);
  };

  const restore = () => {
    asked.current = undefined;
    if (state.status !== 'settled') {
      dispatch({ type: 'restored' });
      return true;
    }
    if (!hasProblem || state.before === undefined) return false;
    const back: TypedAction<Meant, Refused> = {
      type: 'answered',
      asked: state.before.text,
      outcome: { kind: 'taken', taken: state.before },
    };
    dispatch({ type: 'asked', text: state.before.text });
    dispatch(back);
    onTake(state.before.meant);
    return true;
  };

  const { text, status, refusal, refusedText = '' } = state;
  return { text, status, refusal, refusedText, type, take, leave, restore };
}
