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
import { expectEverythingThere, expectFollowed, expectSettled } from './whole-page.ts';

test.describe.configure(PATIENCE);

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

interface Fault {
  readonly rule: string;
  readonly at: readonly string[];
}

/** All rules of the levels A and AA, or contrast alone: the one that another paper changes. */
type Rules = 'all' | 'contrast';

const ANSWERS = '[aria-label="Questions and answers"]';

/** Faults of the whole page, or of parts of it. There is no frame on the page, so no second page is needed. */
async function faultsOn(page: Page, rules: Rules, parts: readonly string[] = []): Promise<readonly Fault[]> {
  const axe = new AxeBuilder({ page })
    .options({
      runOnly: rules === 'all' ? { type: 'tag', values: TAGS } : { type: 'rule', values: ['color-contrast'] },
      resultTypes: ['violations'],
    })
    .setLegacyMode();
  for (const part of parts) axe.include(part);
  const { violations } = await axe.analyze();
  return violations.map(({ id, nodes }) => ({ rule: id, at: nodes.map(({ html }) => html.slice(0, 200)) }));
}

async function expectNoFaults(page: Page, rules: Rules, parts?: readonly string[]): Promise<void> {
  expect(await faultsOn(page, rules, parts)).toEqual([]);
}

test('a seeded fault is found', async ({ page }) => {
  await page.setContent('<html lang="en"><title>Seeded</title><main><button></button></main></html>');
  expect((await faultsOn(page, 'all')).map(({ rule }) => rule)).toEqual(['button-name']);
});

test('the start, on light and on dark paper', async ({ page }) => {
  await openPage(page);
  await expectEverythingThere(page);
  await expectNoFaults(page, 'all');
  await page.getByRole('radio', { name: 'dark' }).check();
  await expect(page.locator('html')).toHaveCSS('color-scheme', 'dark');
  await expectNoFaults(page, 'contrast');
});

/** Where another joint shows what the first one does not; elsewhere it differs in figures. */
const OF_THE_JOINT = [ANSWERS, '#joint', '#tight', '#my-printer'];

for (const demo of DEMOS.slice(1)) {
  test(`${demo}: no fault`, async ({ page }) => {
    await openDemo(page, demo);
    await page.locator('#my-printer').scrollIntoViewIfNeeded();
    await expectFollowed(page, OF_THE_JOINT);
    await expectNoFaults(page, 'all', OF_THE_JOINT);
  });
}

/** The parts that a state changes, on light paper and on the dark paper of the system. */
async function expectNoFaultsOnEitherPaper(page: Page, parts?: readonly string[]): Promise<void> {
  await expectNoFaults(page, 'all', parts);
  await page.emulateMedia({ colorScheme: 'dark' });
  await expect(page.locator('html')).toHaveCSS('color-scheme', 'dark');
  await expectNoFaults(page, 'contrast', parts);
  await page.emulateMedia({ colorScheme: 'light' });
}

test('a derivation open', async ({ page }) => {
  await openPage(page);
  await openDerivation(page, computedValue(page, 'How tight?', /^Torque to dial/));
  await expectNoFaultsOnEitherPaper(page, [ANSWERS]);
});

test('a field that is not taken', async ({ page }) => {
  await openPage(page);
  await type(field(page, 'Pull on this joint'), 'much');
  await expect(field(page, 'Pull on this joint')).toHaveAttribute('aria-invalid', 'true');
  await expectNoFaultsOnEitherPaper(page, [ANSWERS, '#given', '#tight']);
});

test('a test, and a table being read', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Enter test 1' }).click();
  await type(field(page, 'Reading'), '72');
  await page.getByText('Set-up and instrument').click();
  await page.getByRole('button', { name: 'Read a table of tests' }).click();
  await page.getByLabel(/^A table of tests/).fill('reading\n41 kg\nmuch');
  await expect(page.getByText(/^Line 3/)).toBeVisible();
  await expectNoFaultsOnEitherPaper(page, [ANSWERS, '#log', '#tests']);
});

test('coupons of two ways of setting, all tables open', async ({ page }) => {
  await openDemo(page, 'Loom clamp');
  const tests = page.locator('#tests');
  await expect(tests.getByRole('heading', { name: 'One way against another' })).toBeVisible();
  await expectSettled(page);
  const closed = tests.locator('details:not([open]) > summary');
  while ((await closed.count()) > 0) await closed.first().click();
  await expectFollowed(page, ['#log', '#tests']);
  await expectNoFaultsOnEitherPaper(page, ['#log', '#tests']);
});

test('no torque fits', async ({ page }) => {
  await openPage(page);
  await page.getByRole('radio', { name: 'over a gap' }).check();
  await expect(answerTo(page, 'How tight?')).toContainText('No torque fits');
  await expectSettled(page);
  await expectNoFaultsOnEitherPaper(page, [ANSWERS, '#joint', '#tight', '#hold', '#sure']);
});

test('a stop', async ({ page }) => {
  await openPage(page);
  await choice(page, 'Used for').selectOption('mains voltage');
  await expect(page.getByRole('alert').filter({ hasText: 'Stop' })).toBeVisible();
  await expectNoFaultsOnEitherPaper(page);
});

test('the sheet of the whole calculation', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'The whole calculation' }).click();
  await expect(page.getByRole('dialog').getByRole('heading', { name: 'At the bench' })).toBeVisible();
  await expectNoFaults(page, 'all', ['dialog']);
});
