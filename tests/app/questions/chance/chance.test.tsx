// @vitest-environment jsdom
import { act, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { DerivationsProvider } from '../../../../src/app/derivation/derivations-provider.tsx';
import ChanceQuestion from '../../../../src/app/questions/chance/chance.tsx';
import { settingOf } from '../../../../src/app/questions/chance/curve-shapes.ts';
import { chanceModel } from '../../../../src/core/chance/chance-model.ts';
import { chanceOverTorque } from '../../../../src/core/chance/chance-over-torque.ts';
import { seededGenerator } from '../../../../src/core/chance/generator.ts';
import type { Request, ToWorker } from '../../../../src/workers/protocol.ts';
import { sampled } from '../../../core/chance/only.ts';
import { answerableJoint, assessed, type Changes, theInsert } from '../../../support/joints.ts';
import { fakeClient } from './fake-client.ts';

vi.setConfig({ testTimeout: 30_000 });
beforeEach(() => {
  vi.useFakeTimers({ shouldAdvanceTime: true });
  return () => vi.useRealTimers();
});

/** Longer than an edit waits. */
const AFTER_EDITS = 700;
const pass = (time: number) => act(() => vi.advanceTimersByTimeAsync(time));

function show(changes: Changes = {}) {
  const client = fakeClient();
  const of = (given: Changes) => (
    <DerivationsProvider>
      <ChanceQuestion
        joint={answerableJoint(given)}
        insert={theInsert()}
        assessment={assessed(given)}
        client={client}
      />
    </DerivationsProvider>
  );
  const { rerender } = render(of(changes));
  return { client, edit: (given: Changes) => rerender(of(given)) };
}

type Client = ReturnType<typeof fakeClient>;

const isRequest = (message: ToWorker | undefined): message is Request => message?.kind === 'request';

/** The request sent last; none is a fault of the test. */
function lastRequest(client: Client): Request {
  const request = client.worker().sent.filter(isRequest).at(-1);
  if (request === undefined) throw new Error('nothing was asked');
  return request;
}

/** Lets the worker answer the request sent last from a small sampling. */
async function answer(client: Client, changes: Changes = {}) {
  const { id, name, input } = lastRequest(client);
  const torque = 'torque' in input ? input.torque : 1;
  const model = chanceModel(answerableJoint(changes), theInsert(), torque);
  const output =
    name === 'chance'
      ? ({ kind: 'answered', answer: sampled(model, 4000, input.seed) } as const)
      : ({
          kind: 'answered',
          answer: chanceOverTorque(model, input.torques, {
            generator: seededGenerator(input.seed),
            count: 2000,
          }),
        } as const);
  await act(async () => client.worker().say({ kind: 'done', id, output }));
}

async function answerAll(client: Client, changes: Changes = {}) {
  await pass(AFTER_EDITS);
  await act(async () => client.worker().say({ kind: 'ready' }));
  await answer(client, changes);
  await answer(client, changes);
}

/** The dial; none is a fault of the test. */
function dialOf(torque: ReturnType<typeof assessed>['torque']): number {
  if (torque.kind === 'window') return torque.dial.value;
  throw new Error('no torque fits');
}

const overGap: Changes = { gap_mm: 0.4, clamped: { material: 'petg' } };

describe('How sure?', () => {
  test('asks for a million joints at the dial once edits have ended, and for none before', async () => {
    const { client } = show();
    expect(client.started()).toBe(0);
    await pass(AFTER_EDITS);
    await act(async () => client.worker().say({ kind: 'ready' }));
    const { torque } = assessed();
    expect(torque.kind).toBe('window');
    expect(lastRequest(client)).toMatchObject({ name: 'chance', input: { samples: 1_000_000, seed: 1 } });
    expect(lastRequest(client).input).toMatchObject({ torque: dialOf(torque) });
  });
  test('says every outcome as a count of a thousand with what the sampling leaves open', async () => {
    const { client } = show(overGap);
    await answerAll(client, overGap);
    const table = screen.getByRole('table', { name: 'What becomes of 1,000 joints' });
    const pulled = within(table).getByRole('row', { name: /pulled out/ });
    const { torque } = assessed(overGap);
    const result = sampled(chanceModel(answerableJoint(overGap), theInsert(), settingOf(torque)), 4000, 1);
    const probability = result.outcomes['pulls-out'].probability;
    const [count, spread, words] = within(pulled)
      .getAllByRole('cell')
      .map((cell) => cell.textContent);
    expect(Math.abs(Number(count) - 1000 * probability)).toBeLessThanOrEqual(0.5);
    expect(spread).toMatch(/^[\d.]+ to [\d.]+$/);
    expect(words).toMatch(/^(about|all but) 1 in [\d,.]+$/);
  });
  test('opens each number as a calculation: counts, ends, words, forces, ranges', async () => {
    const { client } = show(overGap);
    await answerAll(client, overGap);
    const press = async (name: RegExp) => {
      const button = screen.getByRole('button', { name });
      await userEvent.click(button);
      const region = screen.getByRole('region', { name: /^Derivation: / });
      const { textContent } = region;
      await userEvent.keyboard('{Escape}');
      expect(screen.queryByRole('region', { name: /^Derivation: / })).toBeNull();
      return textContent;
    };
    const pulled = '^The insert is pulled out, or its wall splits, ';
    expect(await press(new RegExp(`${pulled}.* of 1,000`))).toContain('joints drawn4,000');
    expect(await press(new RegExp(`${pulled}Lower end of the count`))).toContain('lower end of the count');
    expect(await press(new RegExp(`${pulled}Joints among which`))).toContain(
      'joints among which there is one',
    );
    expect(await press(/^Clamp force that half stay below/)).toContain('joints below that step');
    expect(await press(/^Upper end of the friction in the thread/)).toContain('0.24');
    expect(await press(/^Standard deviation of the bore/)).toContain('scatter from hole to hole');
    expect(await press(/^Most torque: nothing gives way/)).toContain('N·m');
  });
  test('shows both charts as tables once they are asked for, with numbers that open', async () => {
    const { client } = show(overGap);
    await answerAll(client, overGap);
    expect(screen.queryByRole('table', { name: 'Joints in 1,000 by force' })).toBeNull();
    await userEvent.click(screen.getByText('The charts as tables'));
    const forces = screen.getByRole('table', { name: 'Joints in 1,000 by force' });
    expect(within(forces).getAllByRole('button').length).toBe(2 * 16);
    const loose = screen.getAllByRole('button', { name: /N·m, loose, [\d.,]+ of 1,000/ });
    expect(loose.length).toBe(15);
    await userEvent.click(loose[3] ?? document.body);
    expect(screen.getByRole('region', { name: /N·m, loose/ }).textContent).toContain('joints drawn2,000');
  });
  test('says what tightening does not load', async () => {
    const { client } = show();
    await answerAll(client);
    const row = screen.getByRole('row', { name: /pulled out/ });
    expect(row.textContent).toContain('tightening loads nothing of that');
  });
  test('samples at the most where no torque fits, and says so', async () => {
    const closed: Changes = { gap_mm: 0.4, tool: { kind: 'hand' }, loads: { pull_N: 90 } };
    const { torque } = assessed(closed);
    expect(torque.kind).toBe('refused');
    const { client } = show(closed);
    await pass(AFTER_EDITS);
    await act(async () => client.worker().say({ kind: 'ready' }));
    expect(lastRequest(client).input).toMatchObject({ torque: torque.most.value });
    await answer(client, closed);
    await answer(client, closed);
    expect(screen.getByText(/no torque fits, so there is no dial/)).toBeInTheDocument();
  });
  test('shows the share done, and takes the sampling back when it is cancelled', async () => {
    const { client } = show();
    await pass(AFTER_EDITS);
    await act(async () => client.worker().say({ kind: 'ready' }));
    const { id } = lastRequest(client);
    await act(async () => client.worker().say({ kind: 'progress', id, share: 0.6 }));
    // 600,000 of 1,200,000 joints, those of the curve included.
    expect(screen.getByText(/^50\s%\sdone$/)).toBeInTheDocument();
    await userEvent.click(screen.getByRole('button', { name: 'Cancel' }));
    expect(client.worker().sent.at(-1)).toEqual({ kind: 'cancel', id });
    expect(screen.getByRole('status').textContent).toBe('Cancelled: nothing was sampled.');
    await userEvent.click(screen.getByRole('button', { name: 'Sample after all' }));
    await pass(5);
    expect(lastRequest(client).id).toBeGreaterThan(id);
  });
  test('keeps the old result, marked as stale, until an edited joint is sampled', async () => {
    const { client, edit } = show();
    await answerAll(client);
    const asked = lastRequest(client).id;
    const stiffer: Changes = { loads: { pull_N: 97 } };
    edit(stiffer);
    expect(screen.getByText(/^Stale/)).toBeInTheDocument();
    expect(lastRequest(client).id).toBe(asked);
    await pass(AFTER_EDITS);
    await answer(client, stiffer);
    await answer(client, stiffer);
    expect(screen.queryByText(/^Stale/)).toBeNull();
    expect(screen.getByRole('table', { name: 'What becomes of 1,000 joints' })).toBeInTheDocument();
  });
  test('tells that the worker died, and starts another one when it is asked to', async () => {
    const { client } = show();
    await pass(AFTER_EDITS);
    await act(async () => client.worker().die('out of memory'));
    expect(screen.getByRole('status').textContent).toContain('out of memory');
    await userEvent.click(screen.getByRole('button', { name: 'Try again' }));
    await pass(5);
    expect(client.started()).toBe(2);
  });
  test('samples from another seed, and refuses what is none', async () => {
    const { client } = show();
    await answerAll(client);
    const field = screen.getByRole('textbox', { name: 'Seed' });
    await userEvent.clear(field);
    await userEvent.type(field, '4294967296{Enter}');
    expect(field).toHaveAttribute('aria-invalid', 'true');
    await userEvent.clear(field);
    await userEvent.type(field, '77{Enter}');
    await pass(AFTER_EDITS);
    expect(lastRequest(client).input.seed).toBe(77);
  });
});
