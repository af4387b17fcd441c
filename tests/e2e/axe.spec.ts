import AxeBuilder from '@axe-core/playwright';
import { type Page, test } from '@playwright/test';
import {
  answerTo,
  choice,
  computedValue,
  DEMOS,
  expect,
  field,
  openDemo,
  openDerivation,
  openPage,
  PATIENCE,
  type,
} from './sheet.ts';
import { expectEverythingThere, expectSettled } from './whole-page.ts';

test.describe.configure(PATIENCE);

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

interface Fault {
  readonly rule: string;
  readonly at: readonly string[];
}

/** All rules of the levels A and AA, or contrast alone: the one that another paper changes. */
type Rules = 'all' | 'contrast';

/** There is no frame on the page, so no second page is needed to gather from. */
const axe = (page: Page, rules: Rules): AxeBuilder =>
  new AxeBuilder({ page })
    .options({
      runOnly: rules === 'all' ? { type: 'tag', values: TAGS } : { type: 'rule', values: ['color-contrast'] },
      resultTypes: ['violations'],
    })
    .setLegacyMode();

async function faultsOn(page: Page, rules: Rules): Promise<readonly Fault[]> {
  const { violations } = await axe(page, rules).analyze();
  return violations.map(({ id, nodes }) => ({ rule: id, at: nodes.map(({ html }) => html.slice(0, 200)) }));
}

async function expectNoFaults(page: Page, rules: Rules = 'all'): Promise<void> {
  expect(await faultsOn(page, rules)).toEqual([]);
}

test('a seeded fault is found', async ({ page }) => {
  await page.setContent('<html lang="en"><title>Seeded</title><main><button></button></main></html>');
  expect((await faultsOn(page, 'all')).map(({ rule }) => rule)).toEqual(['button-name']);
});

for (const demo of DEMOS) {
  test(`${demo}: no fault`, async ({ page }) => {
    await openDemo(page, demo);
    await expectSettled(page);
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
  await test.step('a test, and a table being read', async () => {
    await page.getByRole('button', { name: 'Enter test 1' }).click();
    await type(field(page, 'Reading'), '72');
    await page.getByText('Set-up and instrument').click();
    await page.getByRole('button', { name: 'Read a table of tests' }).click();
    await page.getByLabel(/^A table of tests/).fill('reading\n41 kg\nmuch');
    await expect(page.getByText(/^Line 3/)).toBeVisible();
    await expectNoFaults(page, rules);
    await page.getByRole('button', { name: 'Leave it' }).click();
    await page.getByRole('button', { name: 'Take out test 1' }).click();
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
  await page.getByRole('radio', { name: 'dark' }).check();
  await expect(page.locator('html')).toHaveCSS('color-scheme', 'dark');
  await expectEverythingThere(page);
  await expectNoFaults(page);
  await expectNoFaultsInStates(page, 'contrast');
});

test('the sheet of the whole calculation', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'The whole calculation' }).click();
  await expect(page.getByRole('dialog').getByRole('heading', { name: 'At the bench' })).toBeVisible();
  await expectNoFaults(page);
});
