// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, test } from 'vitest';
import { LazyShortTests, LazyTestsAnswer } from '../../../src/app/answers/lazy-tests.tsx';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import WhatTestsSay from '../../../src/app/questions/what-tests-say/what-tests-say.tsx';
import { openDoor } from '../../../src/app/state/door.ts';
import { useFindings, useSheet } from '../../../src/app/state/sheet-context.ts';
import { SheetProvider } from '../../../src/app/state/sheet-provider.tsx';
import type { JointDocument, TestRecord } from '../../../src/storage/document.ts';
import { documentWithTests, testRecord } from '../../support/bench-tests.ts';

beforeAll(async () => {
  await openDoor();
  // The window of these tests has no dialogs of its own.
  HTMLDialogElement.prototype.showModal = function open(this: HTMLDialogElement) {
    this.setAttribute('open', '');
  };
  HTMLDialogElement.prototype.close = function close(this: HTMLDialogElement) {
    this.removeAttribute('open');
    this.dispatchEvent(new Event('close'));
  };
});

/** Tells whether the answers use the tests. */
function Told() {
  const { document } = useSheet();
  const { joint } = useFindings();
  return <output>{`${document.evidence} ${joint.tested === undefined ? 'estimated' : 'tested'}`}</output>;
}

function show(tests: readonly Partial<TestRecord>[], evidence: JointDocument['evidence'] = 'used') {
  const records = tests.map((one, index) =>
    testRecord({ id: `test-${index + 1}`, date: `2026-04-0${index + 1}`, ...one }),
  );
  render(
    <SheetProvider first={documentWithTests(records, {}, evidence)}>
      <DerivationsProvider>
        <ul aria-label="answer">
          <LazyTestsAnswer />
        </ul>
        <section aria-label="short">
          <LazyShortTests />
        </section>
        <WhatTestsSay />
        <Told />
      </DerivationsProvider>
    </SheetProvider>,
  );
  return userEvent.setup();
}
const answer = () => screen.getByLabelText('answer');
const section = () => screen.getByRole('region', { name: 'What did my tests say?' });
const THREE = [{ value: 77 }, { value: 81 }, { value: 84 }];

describe('what the tests say', () => {
  test('is the estimate, and what a coupon would change, while there is none', async () => {
    show([]);
    expect(await within(answer()).findByText('none yet')).toBeVisible();
    expect(section()).toHaveTextContent(/the bond factor stands at 0\.85 .* 19 of 20 joints with M3 .* hold/);
    expect(screen.queryByLabelText('The answers')).not.toBeInTheDocument();
  });
  test('moves the pull-out from the estimate to what was measured, with what 19 of 20 hold', async () => {
    show(THREE);
    const words =
      /Three tests moved the pull-out of M3 .* from [\d,]+\sN, our estimate, to [\d,]+\sN, measured; 19 of 20 hold/;
    expect(section()).toHaveTextContent(words);
    const moved = await within(answer()).findByRole('button', { name: /^Pull-out, from/ });
    const forces = /from ([\d,]+)\sN to ([\d,]+)\sN/.exec(moved.getAttribute('aria-label') ?? '');
    expect(section()).toHaveTextContent(`from ${forces?.[1]} N, our estimate, to ${forces?.[2]} N`);
    expect(screen.getByLabelText('short')).toHaveTextContent(`${forces?.[2]} N`);
    expect(answer()).toHaveTextContent('± measured by you');
  });
  test('leaves the tests out of the answers by the switch, and says so, but keeps what they say', async () => {
    const user = show(THREE);
    expect(screen.getByText('used tested')).toBeInTheDocument();
    const before = (await within(answer()).findByRole('button', { name: /^Pull-out/ })).textContent;
    await user.selectOptions(screen.getByLabelText('The answers'), 'leave them out');
    expect(screen.getByText('left-out estimated')).toBeInTheDocument();
    expect(section()).toHaveTextContent('The answers leave this out.');
    expect(within(answer()).getByRole('button', { name: /^Pull-out/ })).toHaveTextContent(before);
    expect(answer()).toHaveTextContent('the answers leave them out');
  });
  test('says that coupons that held say “at least”', () => {
    show([{ value: 60, kind: 'proof-pull', result: 'held' }]);
    expect(section()).toHaveTextContent('None of them broke.');
    expect(section()).not.toHaveTextContent('measured;');
    expect(within(section()).getByRole('row', { name: /^M3 .* 1, 1 held/ })).toBeVisible();
  });
  test('keeps other set-ups apart, by their bond factor', async () => {
    show([{ value: 33, setting: 'hammered' }]);
    expect(await within(answer()).findByText('nothing here')).toBeVisible();
    expect(answer()).toHaveTextContent('The tests are of other set-ups');
    expect(section()).toHaveTextContent('No coupon of this joint’s own set-up speaks');
    expect(within(section()).getByRole('heading', { name: 'PETG, hammered in' })).toBeVisible();
    expect(section()).toHaveTextContent(
      /One test moved the bond factor of M3 .* from 0\.28, our estimate, to/,
    );
    expect(screen.getByText('used estimated')).toBeInTheDocument();
  });
  test('says that tests say nothing where each is left out', () => {
    show([{ value: 0 }]);
    expect(section()).toHaveTextContent('None of the tests says anything of the bond yet.');
  });
  test('opens the derivation of a number of the table', async () => {
    const user = show(THREE);
    await user.click(
      screen.getByRole('button', { name: /^Bond factor, any insert, without tests, half hold/ }),
    );
    expect(screen.getByText(/bond factor of a heat-set insert/)).toBeVisible();
  });
  test('opens the numbers of its sentences: what moved, and how much higher the loads for a time are', async () => {
    const user = show(THREE);
    for (const [name, words] of [
      [/^19 of 20 hold with the tests, /, 'characteristic capacity'],
      [/^Half hold without tests, /, 'force that shears the knurl'],
      [/^times as high as for a short pull, /, 'creep exponent'],
    ] as const) {
      await user.click(within(section()).getByRole('button', { name }));
      const opened = within(section()).getByRole('region', { name: /^Derivation: / });
      expect(opened.getAttribute('aria-label')?.replace('Derivation: ', '')).toMatch(name);
      expect(opened).toHaveTextContent(words);
    }
  });
  test('gives the loads by the statistics in print, and names what takes more coupons', async () => {
    const user = show([...THREE, { value: 1.1, unit: 'N·m', kind: 'torque-out', result: 'insert-turned' }]);
    await user.click(screen.getByText('The loads as measured, by the statistics in print'));
    const pulls = await screen.findByRole('table', { name: /pulled out: 3 that gave way$/ });
    // (77 + 81 + 84)/3 · 9.80665 N = 791 N
    expect(within(pulls).getByRole('row', { name: /^mean/ })).toHaveTextContent('791 N');
    expect(within(pulls).getByRole('row', { name: /^95 % hold it/ })).toHaveTextContent(/\d+ N/);
    const turns = screen.getByRole('table', { name: /turned by torque: 1 that gave way$/ });
    expect(within(turns).getByRole('row', { name: /^the next holds it/ })).toHaveTextContent('takes two');
  });
  test('plans a proof: coupons, load and what the scale shows, and prints a sheet for the bench', async () => {
    const user = show([]);
    const typed = async (label: RegExp, text: string) => {
      const field = screen.getByLabelText(label);
      await user.clear(field);
      await user.type(field, `${text}{Enter}`);
    };
    await typed(/^Load to rely on/, '600');
    await user.selectOptions(screen.getByLabelText('It acts'), 'for a moment');
    // 600 N · 1.3895 = 834 N is 85.0 kg: beyond a scale of 50 kg
    const row = () => screen.getByRole('row', { name: /^1 coupon/ });
    expect(row()).toHaveTextContent('834 N');
    expect(row()).toHaveTextContent('beyond its end: lever 1.70');
    await typed(/^Lever ratio/, '2');
    expect(row()).toHaveTextContent('42.5 kg');
    await user.selectOptions(screen.getByLabelText('Coupons to be pulled'), '5');
    await user.click(screen.getByRole('button', { name: 'Test sheet to print' }));
    const sheet = screen.getByRole('dialog', { name: /^Proof pull/ });
    expect(sheet).toHaveTextContent('To rely on 600 N: pull each of 5');
    expect(sheet).toHaveTextContent('Hold it for 30 s, until the reading stands still');
    expect(within(sheet).getByRole('columnheader', { name: 'held for, s' })).toBeInTheDocument();
    expect(within(sheet).getAllByRole('row')).toHaveLength(6);
    await user.click(within(sheet).getByRole('button', { name: 'Close' }));
    expect(screen.queryByRole('dialog')).not.toBeInTheDocument();
  });
  test('raises the proof load for the joint’s time under load, or says what to hold for all of it', async () => {
    const user = show([]);
    const row = () => screen.getByRole('row', { name: /^3 coupons/ });
    const newtons = (text: string | null) => Number(/([\d,]+)\sN/.exec(text ?? '')?.[1]?.replace(',', ''));
    const lasting = newtons(row().textContent);
    expect(section()).toHaveTextContent(/Or prove it outright: hold \d+ N on each for all of/);
    const held = newtons(/hold ([\d,]+\sN) on each/.exec(section().textContent)?.[1] ?? '');
    await user.selectOptions(screen.getByLabelText('It acts'), 'for a moment');
    const short = newtons(row().textContent);
    expect(lasting).toBeGreaterThan(1.2 * short);
    expect(held).toBe(short);
    expect(section()).toHaveTextContent('A short pull proves a short pull, and nothing for months');
  });
  test('says which scatter the proof takes: assumed, or that of like coupons', () => {
    show([]);
    expect(section()).toHaveTextContent(/The scatter within a set-up is taken as 0\.100, an estimate/);
  });
  test('takes the scatter of the set-up’s tests while they are used, and the estimate while they are left out', async () => {
    const user = show([{ value: 70 }, { value: 81 }, { value: 95 }]);
    // ln 4.24850, 4.39445, 4.55388 about 4.39894; squares 0.046654: √(0.086654/6) = 0.120
    expect(section()).toHaveTextContent(/The scatter is taken as 0\.120: that of this set-up’s like coupons/);
    await user.selectOptions(screen.getByLabelText('The answers'), 'leave them out');
    expect(section()).toHaveTextContent(/The scatter within a set-up is taken as 0\.100, an estimate/);
  });
  test('takes no load of nothing to rely on', async () => {
    const user = show([]);
    const field = screen.getByLabelText(/^Load to rely on/);
    await user.clear(field);
    await user.type(field, '0{Enter}');
    expect(screen.getByRole('alert')).toHaveTextContent(/Not taken/);
  });
});
