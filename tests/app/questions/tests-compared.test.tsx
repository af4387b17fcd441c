// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, test } from 'vitest';
import { TestsAnswer } from '../../../src/app/answers/tests-answer.tsx';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import WhatTestsSay from '../../../src/app/questions/what-tests-say/what-tests-say.tsx';
import { openDoor } from '../../../src/app/state/door.ts';
import { SheetProvider } from '../../../src/app/state/sheet-provider.tsx';
import type { TestRecord } from '../../../src/storage/document.ts';
import { documentWithTests, testRecord } from '../../support/bench-tests.ts';
import { insertRecord } from '../../support/joints.ts';

beforeAll(openDoor);

const DRAWER = [
  insertRecord({ id: 'usual' }),
  insertRecord({ id: 'short', length_mm: [4.1] }),
  insertRecord({ id: 'long', length_mm: [7.4] }),
];

function show(tests: readonly Partial<TestRecord>[]) {
  const records = tests.map((one, index) => testRecord({ id: `test-${index + 1}`, ...one }));
  render(
    <SheetProvider first={documentWithTests(records, { drawer: DRAWER })}>
      <DerivationsProvider>
        <section aria-label="answer">
          <TestsAnswer />
        </section>
        <WhatTestsSay />
      </DerivationsProvider>
    </SheetProvider>,
  );
  return userEvent.setup();
}
const pulls = (values: readonly number[], changes: Partial<TestRecord> = {}) =>
  values.map((value) => ({ value, ...changes }));
const table = (name: RegExp) => screen.getByRole('table', { name });
/** A row by what its name begins with; a blank stands for one that does not break as well. */
const row = (begin: string) =>
  screen.getByRole('row', { name: (name) => name.replaceAll('\u00a0', ' ').startsWith(begin) });

describe('one way against another', () => {
  test('puts one batch over the other, with what it takes to see a tenth and a fifth', () => {
    show([...pulls([77, 81, 84]), ...pulls([92, 97, 101], { batch: 'iron at 260 °C' })]);
    expect(screen.getByLabelText('Compare by')).toHaveDisplayValue('what was varied');
    expect(table(/^Strength over that of “as usual”, 3 coupons/)).toBeVisible();
    // (92 · 97 · 101)^(1/3) over (77 · 81 · 84)^(1/3) = 96.60/80.62 (hand calculation)
    expect(row('iron at 260 °C, 3 1.20')).toBeVisible();
    expect(screen.getByText('All else that the log holds is the same in both.')).toBeVisible();
  });
  test('opens on what there is to compare, and says what is missing for the rest', async () => {
    const user = show([...pulls([101, 107]), ...pulls([33, 36], { setting: 'hammered' })]);
    expect(screen.getByLabelText('Compare by')).toHaveDisplayValue('way of setting');
    expect(row('hammered in, 2 0.33')).toBeVisible();
    await user.selectOptions(screen.getByLabelText('Compare by'), 'bore before setting: nothing yet');
    expect(screen.getByText(/measure each bore before setting/)).toBeVisible();
    expect(screen.queryByRole('table', { name: /^Strength over/ })).not.toBeInTheDocument();
  });
  test('puts one hole over another, and names what else differs', () => {
    show([
      ...pulls([101, 107], { bore_mm: 4.41 }),
      ...pulls([88, 93], { bore_mm: 4.6, ironTemperature_degC: 260 }),
      { value: 99, result: 'held', bore_mm: 4.41 },
    ]);
    expect(row('bore 4.60 mm, 2 0.87')).toBeVisible();
    expect(
      screen.getByText(
        /^Different too: iron \(260\s°C against not written down\)\. That may be what moves the ratio\.$/,
      ),
    ).toBeVisible();
    expect(screen.getByText(/^Not among the values: 1 coupon that held/)).toBeVisible();
  });
  test('puts each of several ways over the one that is chosen', async () => {
    const user = show([
      ...pulls([101, 107], { ironTemperature_degC: 230 }),
      ...pulls([98, 95], { ironTemperature_degC: 250 }),
      ...pulls([90], { ironTemperature_degC: 270 }),
    ]);
    expect(row('iron at 250 °C, 2 0.93')).toBeVisible();
    expect(row('iron at 270 °C, 1 takes two of each')).toBeVisible();
    await user.selectOptions(screen.getByLabelText('Over'), '1');
    expect(row('iron at 230 °C, 2 1.08')).toBeVisible();
  });
  test('tells a speed by its time and depth: 5.3 mm in 4 s', () => {
    show([...pulls([101, 107], { settingTime_s: 4 }), ...pulls([91, 99], { settingTime_s: 2 })]);
    expect(row('4 s, 1.3 mm/s, 2')).toBeVisible();
  });
  test('opens each number with its derivation', async () => {
    const user = show([...pulls([77, 81, 84]), ...pulls([92, 97, 101], { batch: 'wet' })]);
    await user.click(screen.getByRole('button', { name: /^wet, 3, coupons each to see 10/ }));
    expect(screen.getByRole('region', { name: /^Derivation: wet, 3, coupons each to see 10/ })).toBeVisible();
    await user.click(screen.getByRole('button', { name: /^wet, 3, upper end of the ratio/ }));
    expect(screen.getByRole('region', { name: /^Derivation: wet, 3, upper end/ })).toBeVisible();
  });
  test('opens the scatter that is taken where no coupon tells it', async () => {
    const user = show([...pulls([81]), ...pulls([97], { batch: 'wet' })]);
    await user.click(screen.getByRole('button', { name: /logarithms of the values, 0\.10,/ }));
    const opened = screen.getByRole('region', { name: /^Derivation: .*0\.10/ });
    expect(opened).toHaveTextContent('scatter within a set-up before any test');
  });
  test('is not asked before there is a test', () => {
    show([]);
    expect(screen.queryByLabelText('Compare by')).not.toBeInTheDocument();
  });
});

describe('strength over length and diameter', () => {
  const OPEN = 'Strength over length and diameter, by regression';
  const SIZES = [
    ...pulls([74, 79], { insert: 'short' }),
    ...pulls([101, 107]),
    ...pulls([161, 152], { insert: 'long' }),
  ];
  test('is a line with its interval, and says whether the model’s law fits', async () => {
    const user = show(SIZES);
    await user.click(screen.getByText(OPEN));
    const fit = await screen.findByRole('table', {
      name: /^Pulled out, knurl diameter 4\.93\smm: 6 coupons/,
    });
    expect(within(fit).getByRole('row', { name: /^more for each mm of knurled length/ })).toHaveTextContent(
      /\d+\sN\/mm.*\d+\sN\/mm to \d+\sN\/mm/,
    );
    expect(within(fit).getByRole('row', { name: /^power of the knurled length/ })).toHaveTextContent(/1$/);
    expect(
      screen.getByText(/^The model lets strength grow in proportion to the knurled length/),
    ).toBeVisible();
  });
  test('opens the power of the model with the formula that has it', async () => {
    const user = show(SIZES);
    await user.click(screen.getByText(OPEN));
    await user.click(
      await screen.findByRole('button', { name: /power of the knurled length, in the model, 1,/ }),
    );
    expect(screen.getByRole('region', { name: /^Derivation: .*in the model/ })).toHaveTextContent(/power of/);
    await user.click(screen.getByRole('button', { name: /Power of the knurled length in the model, 1,/ }));
    expect(screen.getByRole('region', { name: /^Derivation: .*Power of .* in the model/ })).toBeVisible();
  });
  test('has its picture as a table, each number with its derivation', async () => {
    const user = show(SIZES);
    await user.click(screen.getByText(OPEN));
    // The bond factor has such a table too: this one comes last.
    await screen.findByText(/^The model lets strength grow/);
    await user.click(screen.getAllByText('The picture as a table').at(-1) ?? document.body);
    const sizes = screen.getByRole('table', { name: /^Sizes that were tested/ });
    // 5.3 − 0.28 · 4.93 = 3.92 mm; 101 and 107 kg are 990 and 1049 N
    const usual = within(sizes).getByRole('row', { name: /^4\.93\smm × 3\.92\smm/, hidden: true });
    expect(usual).toHaveTextContent(/990\sN, 1,050\sN/);
    await user.click(within(usual).getByRole('button', { name: /upper end of the next/ }));
    expect(screen.getByRole('region', { name: /upper end of the next/ })).toBeInTheDocument();
    await user.click(within(usual).getByRole('button', { name: /test \d+, measured, 990/ }));
    expect(screen.getByRole('region', { name: /measured, 990/ })).toHaveTextContent(
      'reading of the instrument',
    );
  });
  test('says why there is none, and what would make one', async () => {
    const user = show(pulls([101, 107, 99]));
    await user.click(screen.getByText(OPEN));
    expect(await screen.findByText(/^All of these coupons have about one knurled length\./)).toBeVisible();
    await user.selectOptions(screen.getByLabelText('Strength over'), 'length and diameter');
    expect(screen.getByText('Three coupons gave way here; a regression takes four.')).toBeVisible();
  });
  test('has nothing to say of coupons that only held', async () => {
    const user = show([{ value: 80, result: 'held' }]);
    await user.click(screen.getByText(OPEN));
    expect(await screen.findByText(/^No coupon of this set-up gave way/)).toBeVisible();
  });
});

describe('the loads by the statistics in print', () => {
  const OPEN = 'The loads as measured, by the statistics in print';
  test('open the ends of the coefficient of variation as a calculation', async () => {
    const user = show(pulls([77, 81, 84]));
    await user.click(screen.getByText(OPEN));
    await user.click(await screen.findByRole('button', { name: /coefficient of variation, lower end/ }));
    expect(screen.getByRole('region', { name: /^Derivation: .* lower end/ })).toBeVisible();
  });
  test('tell how far out the farthest value lies, and where each stands on the plot', async () => {
    const user = show(pulls([77, 81, 84]));
    await user.click(screen.getByText(OPEN));
    // mean 80.67, s 3.51: |77 − 80.67|/3.51 = 1.04 (hand); limit of 3 values 1.15 (Grubbs 1969, 1.154 one-sided 2.5 %)
    const farthest = await screen.findByRole('row', { name: /^farthest value/ });
    expect(farthest).toHaveTextContent(/1\.04; 1\.15/);
    await user.click(screen.getByText('Probability plot, as a table'));
    await user.click(screen.getByRole('button', { name: /share below, 19\s%/ }));
    expect(screen.getByRole('region', { name: /^Derivation: .*share below/ })).toBeVisible();
    // 77 kg are 755 N.
    await user.click(screen.getByRole('button', { name: /^755\sN, measured/ }));
    expect(screen.getByRole('region', { name: /^Derivation: 755/ })).toHaveTextContent(
      'reading of the instrument',
    );
  });
  test('say what too few values lack', async () => {
    const user = show(pulls([77, 81]));
    await user.click(screen.getByText(OPEN));
    expect(
      await screen.findByRole('row', { name: /^straightness of the probability plot/ }),
    ).toHaveTextContent('takes three');
  });
});

describe('the picture of the bond factor', () => {
  test('has each number of its table with its derivation', async () => {
    const user = show(pulls([77, 81, 84]));
    await user.click(await screen.findByText('The picture as a table', {}, { timeout: 20_000 }));
    await user.click(screen.getByRole('button', { name: /^25\s% below, with them, 0\.\d\d/ }));
    expect(screen.getByText(/bond factor that a share of the next joints stays below/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: /^test 1, bond factor, 0\.\d\d/ }));
    expect(screen.getByRole('region', { name: /^Derivation: test 1, bond factor/ })).toBeVisible();
  });
});

describe('the fifth answer', () => {
  test('keeps its unit apart from its number where it is copied', async () => {
    show(pulls([101, 107]));
    expect((await screen.findByLabelText('answer')).textContent).toMatch(/→ [\d,]+\u00a0N/);
  });
});

describe('coupons over what is predicted', () => {
  test('stand in a table for the torque that turns and the torque that jacks out', async () => {
    const user = show([
      ...pulls([101]),
      { value: 2.1, unit: 'N·m', kind: 'torque-out', result: 'insert-turned' },
      { value: 0.61, unit: 'N·m', kind: 'jack-out-torque' },
    ]);
    const headings = await screen.findAllByRole(
      'heading',
      { name: /^Coupons over what is predicted/ },
      { timeout: 20_000 },
    );
    expect(headings).toHaveLength(3);
    for (const summary of screen.getAllByText('The coupons as a table')) await user.click(summary);
    const turned = table(/^What each turned coupon stands for/);
    expect(within(turned).getAllByRole('row')[1]).toHaveTextContent(/^test 2.*\d\.\d+\sN·m/);
    await user.click(within(turned).getByRole('button', { name: /^test 2, .*\sN·m, open derivation/ }));
    expect(screen.getByText(/torque that a coupon stands for in this joint/)).toBeVisible();
    const knurl = within(turned).getByRole('button', {
      name: /^test 2, knurl diameter, .*, open derivation/,
    });
    await user.click(knurl);
    expect(screen.getByRole('region', { name: /^Derivation: test 2, knurl diameter/ })).toBeVisible();
    expect(table(/^What each jacked-out coupon/)).toBeVisible();
  });
});
