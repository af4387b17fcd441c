// @vitest-environment jsdom
import { act, configure, render, screen, waitFor, within } from '@testing-library/react';
import userEvent, { type UserEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { App } from '../../../src/app/shell/app.tsx';
import { KEPT_KEY } from '../../../src/app/state/keep-joint.ts';
import type { Kept } from '../../../src/app/state/kept-joint.ts';
import type { JointDocument } from '../../../src/storage/document.ts';

// The whole page is drawn again after each edit, and typing key by key is slow on a busy computer.
vi.setConfig({ testTimeout: 60_000 });

const TALL_FIVE: JointDocument = { ...SENSOR_LID, chosenInsert: 'tall-five' };

// Asking each element of a large page whether it is hidden takes most of the time; nothing here depends on it.
configure({ defaultHidden: true });

beforeEach(() => localStorage.clear());

async function renderApp(kept: Kept = { kind: 'read', document: TALL_FIVE }): Promise<UserEvent> {
  render(<App kept={kept} />);
  await screen.findByText('Given', {}, { timeout: 30_000 });
  return userEvent.setup();
}

/** By its name, as a query by label would, which takes seconds on a page of this size. */
function named(name: string): HTMLElement {
  const label = [...document.querySelectorAll('label')].find(({ textContent }) => textContent === name);
  const element =
    document.querySelector<HTMLElement>(`[aria-label="${name}"]`) ??
    document.getElementById(label?.htmlFor ?? '');
  if (element === null) throw new Error(`nothing on the page is called ${name}`);
  return element;
}
const answers = () => named('Questions and answers');
const answerTo = (question: string) => {
  const item = within(answers()).getByText(question).closest('li');
  if (item === null) throw new Error(`no answer to ${question}`);
  return item;
};

async function put(user: UserEvent, name: string, text: string): Promise<void> {
  await user.clear(named(name));
  named(name).focus();
  await user.paste(text);
  await user.keyboard('{Enter}');
}

describe('the page', () => {
  test('begins with a demonstration joint on the first visit', async () => {
    await renderApp({ kind: 'nothing' });
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Sensor lid');
  });
  test('answers five questions, each a way to its section', async () => {
    await renderApp();
    for (const [question, target] of [
      ['Which insert?', '#insert'],
      ['What hole?', '#hole'],
      ['How tight?', '#tight'],
      ['Will it hold?', '#hold'],
      ['What did my tests say?', '#tests'],
    ] as const) {
      expect(within(answers()).getByRole('link', { name: question })).toHaveAttribute('href', target);
      expect(document.querySelector(target)).toBeInTheDocument();
    }
    expect(answerTo('Which insert?')).toHaveTextContent('M35.0 × 5.0');
    expect(answerTo('What hole?')).toHaveTextContent('⌀4.55 mm');
    expect(answerTo('How tight?')).toHaveTextContent('N·m');
    expect(answerTo('Will it hold?')).toHaveTextContent(/\d ×.* held, .* asked\./);
    expect(answerTo('What did my tests say?')).toHaveTextContent('none yet');
  });
  test('follows an edit at once, and goes back with undo', async () => {
    const user = await renderApp();
    const before = answerTo('Which insert?').textContent;
    await put(user, 'Pull on this joint', '45');
    expect(answerTo('Which insert?').textContent).not.toBe(before);
    await user.click(screen.getByText('Undo'));
    expect(answerTo('Which insert?').textContent).toBe(before);
    expect(named('Pull on this joint')).toHaveValue('70');
    // With nothing left to undo the press keeps the focus, and does nothing.
    expect(screen.getByText('Undo')).toHaveFocus();
    expect(screen.getByText('Undo')).toHaveAttribute('aria-disabled', 'true');
    await user.keyboard('{Enter}');
    expect(named('Pull on this joint')).toHaveValue('70');
  });
  test('answers for the insert whose reading was edited', async () => {
    const user = await renderApp({ kind: 'read', document: SENSOR_LID });
    const before = answerTo('Which insert?').textContent;
    expect(before).not.toContain('5.0 × 5.0');
    await put(user, 'Knurl diameter, mm', '4.7');
    expect(answerTo('Which insert?')).toHaveTextContent('M34.7 × 5.7');
  });
});

describe('a reading that cannot be', () => {
  test('is not taken; the last answers stay and are marked stale until it is put right', async () => {
    const user = await renderApp();
    await put(user, 'Knurl diameter, mm', '4.1');
    expect(named('Knurl diameter, mm')).toBeInvalid();
    expect(screen.getByRole('alert')).toHaveTextContent('Not taken.');
    await within(answers()).findByText(/^Stale: answers the last valid joint, knurl diameter 5\.0/);
    expect(answerTo('What hole?')).toHaveTextContent('⌀4.55 mm');
    await put(user, 'Knurl diameter, mm', '4.9');
    expect(answers()).not.toHaveTextContent('Stale');
    expect(answerTo('Which insert?')).toHaveTextContent('4.9 × 5.0');
  });
  test('is mended by one press where knurl and pilot are swapped', async () => {
    const user = await renderApp();
    await put(user, 'Knurl diameter, mm', '4.1');
    await user.click(screen.getByText('Swap them'));
    expect(screen.queryByRole('alert')).not.toBeInTheDocument();
    expect(answers()).not.toHaveTextContent('Stale');
    expect(named('Pilot diameter, mm')).toHaveValue('4.10');
  });
  test('is given up with Escape', async () => {
    const user = await renderApp();
    await put(user, 'Knurl diameter, mm', '4.1');
    await user.click(named('Knurl diameter, mm'));
    await user.keyboard('{Escape}');
    expect(screen.queryByRole('alert')).not.toBeInTheDocument();
    expect(answers()).not.toHaveTextContent('Stale');
    expect(screen.getByText('Undo')).toHaveAttribute('aria-disabled', 'true');
  });
});

describe('a use that endangers people', () => {
  test('stops the page: no answer, no drawing, no way to put it away', async () => {
    const user = await renderApp();
    expect(screen.getByText('The joint in section')).toBeInTheDocument();
    await user.selectOptions(named('Used for'), 'overhead');
    const stop = await screen.findByRole('alert');
    expect(stop).toHaveTextContent('Stop');
    expect(within(stop).queryByRole('button')).not.toBeInTheDocument();
    expect(within(answers()).getAllByText('withheld')).toHaveLength(5);
    expect(answers()).not.toHaveTextContent(/\d/);
    expect(screen.queryByText('The joint in section')).not.toBeInTheDocument();
    expect(stop.compareDocumentPosition(answers())).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
  });
  test('goes on where the use is general again', async () => {
    const user = await renderApp();
    await user.selectOptions(named('Used for'), 'overhead');
    await user.selectOptions(named('Used for'), 'general');
    expect(answerTo('What hole?')).toHaveTextContent('⌀4.55 mm');
  });
});

describe('another screw thread', () => {
  test('keeps the drawer and takes the clearance hole along', async () => {
    const user = await renderApp({ kind: 'read', document: SENSOR_LID });
    await user.selectOptions(named('Thread'), 'M4');
    expect(answerTo('Which insert?')).toHaveTextContent('M45.6 × 6.0');
    expect(named('Clearance hole ⌀')).toHaveValue('4.5');
    expect(document.querySelectorAll('[aria-label^="Edit M"]')).toHaveLength(7);
  });
});

describe('a kept joint that cannot be read', () => {
  test('is named with its reason, and can be saved whole', async () => {
    await renderApp({
      kind: 'set-aside',
      text: '{',
      refusals: [{ path: '', code: 'newer-version', facts: { version: 2, known: 1 } }],
      moved: true,
    });
    const [note] = screen.getAllByRole('status');
    if (!note) throw new Error('the page has a line for messages');
    await waitFor(() => expect(note).toHaveTextContent('could not be read'));
    expect(note).toHaveTextContent('version 2');
    expect(within(note).getByRole('button', { name: 'Save what was kept as a file' })).toBeEnabled();
  });
  test('is not written over when it could not be moved aside', async () => {
    localStorage.setItem('knurlwright joint', 'old');
    const refusals = [{ path: '', code: 'not-json' as const, facts: { reason: 'cut short' } }];
    const user = await renderApp({ kind: 'set-aside', text: 'old', refusals, moved: false });
    await put(user, 'Pull on this joint', '45');
    window.dispatchEvent(new Event('pagehide'));
    expect(localStorage.getItem('knurlwright joint')).toBe('old');
  });
});

describe('an edited joint', () => {
  test('is kept for the next visit', async () => {
    const user = await renderApp();
    await put(user, 'Pull on this joint', '45');
    window.dispatchEvent(new Event('pagehide'));
    expect(localStorage.getItem('knurlwright joint')).toContain('"pull_N":45');
  });
  test('is said to share its place with one of another window, once', async () => {
    const user = await renderApp();
    const told = () =>
      act(() => {
        window.dispatchEvent(new StorageEvent('storage', { key: KEPT_KEY, newValue: '{}' }));
      });
    told();
    expect(screen.getByText(/^Another window of this page keeps a joint/)).toBeInTheDocument();
    await user.click(screen.getByText('Put this note away'));
    told();
    expect(screen.queryByText(/^Another window/)).not.toBeInTheDocument();
  });
});
