// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { whenIdle } from '../../../src/app/questions/when-idle.ts';
import { changesOf } from '../../../src/app/questions/will-it-hold/changes.ts';
import { endRows } from '../../../src/app/questions/will-it-hold/end-rows.ts';
import { StateStack } from '../../../src/app/questions/will-it-hold/state-stack.tsx';
import { WillItHold } from '../../../src/app/questions/will-it-hold/will-it-hold.tsx';
import type { Shown } from '../../../src/app/state/findings.ts';
import { holdOfShown, isHeld } from '../../../src/app/state/shown-hold.ts';
import type { Hold } from '../../../src/core/service/hold.ts';
import type { Sensitivity } from '../../../src/core/service/sensitivity.ts';
import { answerableJoint, assessed, type Changes, theInsert } from '../../support/joints.ts';

vi.setConfig({ testTimeout: 30_000 });

/** Over this gap the plastic cannot bear the clamp force that the pull asks for. */
const NO_TORQUE: Changes = { gap_mm: 1.4, loads: { pull_N: 110 } };

const given = (changes: Changes = {}) => {
  const joint = answerableJoint(changes);
  const shown: Shown = { insert: theInsert(), assessment: assessed(changes) };
  return { joint, shown };
};
const lifeOf = (changes: Changes = {}): Hold => {
  const { joint, shown } = given(changes);
  const hold = holdOfShown(joint, shown);
  if (hold === undefined) throw new Error('no torque is allowed');
  return hold;
};
const show = (changes: Changes = {}) =>
  render(
    <DerivationsProvider>
      <WillItHold {...given(changes)} />
    </DerivationsProvider>,
  );

describe('holdOfShown', () => {
  test('asks at the dial, and is worked out once for what is shown', () => {
    const { joint, shown } = given();
    const hold = holdOfShown(joint, shown);
    const { torque } = shown.assessment;
    expect(torque.kind === 'window' && hold?.torque).toBe(torque.kind === 'window' && torque.dial);
    expect(holdOfShown(joint, shown)).toBe(hold);
    expect(isHeld(shown, hold)).toBe(true);
  });
  test('asks at the most where no setting fits, and is not held then', () => {
    const { joint, shown } = given(NO_TORQUE);
    const hold = holdOfShown(joint, shown);
    expect(hold?.torque).toBe(shown.assessment.torque.most);
    expect(isHeld(shown, hold)).toBe(false);
  });
});

describe('a verdict that hangs on what is little known', () => {
  test('says that the joint would hold at the other end, and nothing of one that holds', () => {
    const { unmount } = show({ loads: { pull_N: 190 } });
    expect(screen.getByText(/^Dialled at .*it does not hold/)).toBeInTheDocument();
    expect(screen.getByText(/At the other end the joint would hold/)).toBeInTheDocument();
    unmount();
    show();
    expect(screen.queryByText(/At the other end/)).toBeNull();
  });
});

describe('endRows', () => {
  const rows = endRows(lifeOf(), answerableJoint().factors);
  test('have every mode and condition once, a cell a state', () => {
    const ends = rows.map(({ by }) => by);
    expect(new Set(ends).size).toBe(ends.length);
    expect(ends).toEqual(expect.arrayContaining(['knurl-shear', 'screw-yield', 'opens', 'slips']));
    for (const { cells } of rows) {
      expect(cells.map(({ state }) => state.id)).toEqual(['assembly', 'in-service', 'after']);
    }
  });
  test('begin with the most endangered in any state', () => {
    const least = rows.map((row) => row.least);
    expect(least).toEqual(least.toSorted((one, other) => one - other));
    expect(rows[0]?.by).toBe(lifeOf().worst.by);
  });
  test('ask nothing of the knurl while it is tightened on the insert', () => {
    const [assembly] = rows.find(({ by }) => by === 'knurl-shear')?.cells ?? [];
    expect(assembly?.state.id).toBe('assembly');
    expect(assembly?.margin?.margin).toBeUndefined();
  });
});

describe('WillItHold', () => {
  test('stands as a table of three states, one governs in each, every number with its way', async () => {
    show();
    const table = screen.getByRole('table', { name: /through the life of the joint/ });
    expect(within(table).getAllByRole('columnheader').slice(1)).toHaveLength(3);
    expect(within(table).getByRole('columnheader', { name: /After 1.year/ })).toBeInTheDocument();
    expect(within(table).getAllByText('governs')).toHaveLength(3);
    const slips = within(table).getByRole('row', { name: /^Joint slips/ });
    const [button] = within(slips).getAllByRole('button', { name: /warm and loaded.* held for .* asked/ });
    if (button === undefined) throw new Error('no margin against slipping');
    await userEvent.click(button);
    const derivation = within(table).getByRole('region', { name: /Joint slips/ });
    expect(derivation).toHaveTextContent('load across the screw that friction holds');
    expect(derivation).toHaveFocus();
  });
  test('gives clamp force left, load factor and force in the screw in each state', () => {
    show();
    for (const name of [/^Clamp force left/, /^Load factor/, /^Force in the screw/]) {
      const row = screen.getByRole('row', { name });
      expect(within(row).getAllByRole('button')).toHaveLength(3);
    }
  });
  test('says what to change first once the page is idle, and keeps to words', async () => {
    show();
    expect(screen.getByText(/being worked out/)).toBeInTheDocument();
    const heading = await screen.findByRole('heading', { name: 'What to change first' });
    const first = within(heading.parentElement ?? document.body).getAllByRole('listitem')[0];
    expect(first).toHaveTextContent(/: \d+\.\d+\s→\s\d+(\.\d+)?\s×$/);
    expect(screen.queryByRole('heading', { name: /lets it hold/ })).toBeNull();
  });
  test('opens the margins before and after a step below it, each at the number that was said', async () => {
    show();
    const heading = await screen.findByRole('heading', { name: 'What to change first' });
    const [first = document.body] = within(heading.parentElement ?? document.body).getAllByRole('listitem');
    const said = /: (?<before>[\d.]+)\s→\s(?<after>[\d.]+)\s×$/.exec(first.textContent)?.groups;
    for (const when of ['before', 'after']) {
      await userEvent.click(within(first).getByRole('button', { name: new RegExp(`margin ${when}`) }));
      const derivation = within(first).getByRole('region', { name: /^Derivation/ });
      expect(derivation).toHaveTextContent(`its factor included = ${said?.[when]}`);
    }
  });
  test('of a joint that fails says the smallest change, with the dial that goes with it', async () => {
    show(NO_TORQUE);
    expect(screen.getByText(/^No setting fits/)).toBeInTheDocument();
    const heading = await screen.findByRole('heading', { name: 'The smallest change that lets it hold' });
    const list = within(heading.parentElement ?? document.body).getAllByRole('listitem');
    expect(list.map(({ textContent }) => textContent)).toContainEqual(
      expect.stringMatching(/^The gap closed.*: holds .*\s×, dialled at .*\sN·m\.$/),
    );
  });
});

describe('StateStack', () => {
  test('gives one state after the other, the endangered first, what is not loaded in a sentence', () => {
    const hold = lifeOf();
    render(
      <DerivationsProvider>
        <StateStack hold={hold} factors={answerableJoint().factors} />
      </DerivationsProvider>,
    );
    const states = screen.getAllByRole('region');
    expect(states).toHaveLength(3);
    for (const [index, state] of states.entries()) {
      const [first] = within(state).getAllByRole('listitem');
      expect(first).toHaveTextContent('governs');
      expect(within(state).getByRole('heading')).toHaveTextContent(
        ['While tightening', 'In service', 'After 1'][index] ?? '',
      );
    }
    expect(states[0]).toHaveTextContent(/Not loaded then: .*Knurl shear/);
  });
});

describe('changesOf', () => {
  const step = (margin: number): Sensitivity => ({
    lever: 'wall-lines',
    unit: 'lines',
    step: 1,
    margin,
    gain: margin - 1.5,
    derivedMargin: () => lifeOf().torque,
  });
  test('leaves out what nobody sees, and puts the greatest harm first', () => {
    const { better, worse } = changesOf(1.5, [step(1.9), step(1.61), step(1.501), step(1.4), step(0.6)]);
    expect(better.map(({ margin }) => margin)).toEqual([1.9, 1.61]);
    expect(worse.map(({ margin }) => margin)).toEqual([0.6, 1.4]);
  });
});

describe('whenIdle', () => {
  test('works after a quiet time, once', () => {
    vi.useFakeTimers();
    const work = vi.fn<() => void>();
    whenIdle(work);
    vi.advanceTimersByTime(100);
    expect(work).not.toHaveBeenCalled();
    vi.advanceTimersByTime(3000);
    expect(work).toHaveBeenCalledTimes(1);
    vi.useRealTimers();
  });
  test('does not work when it is called off', () => {
    vi.useFakeTimers();
    const work = vi.fn<() => void>();
    whenIdle(work)();
    vi.advanceTimersByTime(3000);
    expect(work).not.toHaveBeenCalled();
    vi.useRealTimers();
  });
});
