import AxeBuilder from '@axe-core/playwright';
import { type Page, test } from '@playwright/test';
import {
  answerTo,
  choice,
  chooseJoint,
  computedValue,
  DEMOS,
  expect,
  expectCharts,
  field,
  openDerivation,
  openPage,
  PATIENCE,
  type,
} from './sheet.ts';

// Each check looks at every element of a long page.
test.describe.configure({ ...PATIENCE, timeout: 300_000 });

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

interface Fault {
  readonly rule: string;
  readonly at: readonly string[];
}

/** All rules of the levels A and AA, or contrast alone: the one that another paper changes. */
type Rules = 'all' | 'contrast';

/** The inside of a drawing is one picture with a name. */
const axe = (page: Page): AxeBuilder => new AxeBuilder({ page }).exclude('svg > *');

async function faultsOn(page: Page, rules: Rules): Promise<readonly Fault[]> {
  const chosen = rules === 'all' ? axe(page).withTags(TAGS) : axe(page).withRules(['color-contrast']);
  const { violations } = await chosen.analyze();
  return violations.map(({ id, nodes }) => ({ rule: id, at: nodes.map(({ html }) => html.slice(0, 200)) }));
}

async function expectNoFaults(page: Page, rules: Rules = 'all'): Promise<void> {
  expect(await faultsOn(page, rules)).toEqual([]);
}

test('a seeded fault is found', async ({ page }) => {
  await openPage(page);
  await page.evaluate(() => {
    const nameless = document.createElement('button');
    document.querySelector('main')?.append(nameless);
  });
  expect((await faultsOn(page, 'all')).map(({ rule }) => rule)).toEqual(['button-name']);
});

for (const demo of DEMOS) {
  test(`${demo}: no fault`, async ({ page }) => {
    await openPage(page);
    if (demo !== DEMOS[0]) await chooseJoint(page, demo);
    await expectCharts(page);
    await expectNoFaults(page);
  });
}

/** Goes through the states that look different from the start. */
async function expectNoFaultsInStates(page: Page, rules: Rules): Promise<void> {
  await test.step('a derivation open', async () => {
    await openDerivation(page, computedValue(page, 'How tight?', /^Torque to dial/));
    await expectNoFaults(page, rules);
    await page.keyboard.press('Escape');
  });
  await test.step('a field that is not taken', async () => {
    await type(field(page, 'Pull on this joint'), 'much');
    await expect(field(page, 'Pull on this joint')).toHaveAttribute('aria-invalid', 'true');
    await expectNoFaults(page, rules);
    await field(page, 'Pull on this joint').press('Escape');
  });
  await test.step('no torque fits', async () => {
    await page.getByRole('radio', { name: 'over a gap' }).check();
    await expect(answerTo(page, 'How tight?')).toContainText('No torque fits');
    await expectNoFaults(page, rules);
    await page.getByRole('radio', { name: 'as the sizes say' }).check();
  });
  await test.step('a stop', async () => {
    await choice(page, 'Used for').selectOption('mains voltage');
    await expect(page.getByRole('alert').filter({ hasText: 'Stop' })).toBeVisible();
    await expectNoFaults(page, rules);
  });
}

test('every state on light paper', async ({ page }) => {
  await openPage(page);
  await expectNoFaultsInStates(page, 'all');
});

test('start and every state on dark paper', async ({ page }) => {
  await openPage(page);
  await page.getByText('dark', { exact: true }).click();
  await expect(page.getByRole('radio', { name: 'dark' })).toBeChecked();
  await expectCharts(page);
  await expectNoFaults(page, 'contrast');
  await expectNoFaultsInStates(page, 'contrast');
});
