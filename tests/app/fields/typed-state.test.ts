import { describe, expect, test } from 'vitest';
import {
  initialTyped,
  type TypedAction,
  type TypedState,
  typedReducer,
} from '../../../src/app/fields/typed-state.ts';

type State = TypedState<number, string>;
type Action = TypedAction<number, string>;

const reduced = (state: State, ...actions: Action[]): State =>
  actions.reduce(typedReducer<number, string>, state);
const start: State = initialTyped('4.25', 4.25);
const taken = (text: string, written: string, meant: number): Action[] => [
  { type: 'asked', text },
  { type: 'answered', asked: text, outcome: { kind: 'taken', taken: { text, written, meant } } },
];
const refused = (text: string): Action[] => [
  { type: 'asked', text },
  { type: 'answered', asked: text, outcome: { kind: 'refused', refusal: 'no' } },
];

describe('typedReducer', () => {
  test('keeps the last taken value while another text is typed and refused', () => {
    const state = reduced(start, { type: 'typed', text: '4.2x' }, ...refused('4.2x'));
    expect(state).toMatchObject({ text: '4.2x', status: 'refused', refusal: 'no', refusedText: '4.2x' });
    expect(state.last.meant).toBe(4.25);
  });

  test('shows the refusal until the next reading, though the text is being mended', () => {
    const mending = reduced(start, ...refused('4.2x'), { type: 'typed', text: '4.2' });
    expect(mending).toMatchObject({ text: '4.2', status: 'typing', refusal: 'no', refusedText: '4.2x' });
    const mended = reduced(mending, ...taken('4.2', '4.20', 4.2));
    expect(mended).toEqual({
      text: '4.2',
      status: 'settled',
      last: { text: '4.2', written: '4.20', meant: 4.2 },
      before: start.last,
      seen: '4.25',
    });
  });

  test('restores the last taken text as it was typed, and drops the refusal', () => {
    const state = reduced(start, ...taken('4,3', '4.30', 4.3), ...refused('thick'), { type: 'restored' });
    expect(state).toMatchObject({ text: '4,3', status: 'settled' });
    expect(state).not.toHaveProperty('refusal');
  });

  test('drops an answer to a text that has been typed over', () => {
    const typed = reduced(start, { type: 'asked', text: '2*2' }, { type: 'typed', text: '2*3' });
    const late: Action = { ...taken('2*2', '4.00', 4)[1] } as Action;
    expect(reduced(typed, late)).toEqual(typed);
  });

  test('leaves the typed text alone when the outside answers with the value taken from it', () => {
    const state = reduced(start, ...taken('4,3', '4.30', 4.3), {
      type: 'given',
      written: '4.30',
      meant: 4.3,
    });
    expect(state).toMatchObject({ text: '4,3', seen: '4.30' });
  });

  test('follows another value from outside, out of a refusal too', () => {
    const state = reduced(start, ...refused('thick'), { type: 'given', written: '5.10', meant: 5.1 });
    expect(state).toEqual(initialTyped('5.10', 5.1));
  });
});
