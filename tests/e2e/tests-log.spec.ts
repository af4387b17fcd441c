import { type Page, test } from '@playwright/test';
import {
  answerText,
  answerTo,
  choice,
  expect,
  expectWholeSheet,
  field,
  openPage,
  PATIENCE,
  type,
} from './sheet.ts';

test.describe.configure(PATIENCE);

/** What the knurl holds for what is asked of it, among all ways to end. */
const knurlLimits = (page: Page) =>
  page
    .getByRole('table', { name: /^Every way to end/ })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: /^Knurl shear/ }) })
    .innerText();

/** The notice of the joint that tells where its numbers come from. */
const TESTED = /^Three tests moved knurl shear from .*, our estimate, to .*, measured/;

test('three pulls at the bench move the fifth answer and the pull-out limit, until they are left out or undone', async ({
  page,
}) => {
  await openPage(page);
  const said = () => answerText(page, 'What did my tests say?');
  const answer = answerTo(page, 'What did my tests say?');
  await expect(answer).toContainText('none yet');
  const estimated = await knurlLimits(page);

  for (const [number, reading] of [
    [1, '71'],
    [2, '74,5'],
    [3, '69'],
  ] as const) {
    await page.getByRole('button', { name: `Enter test ${number}` }).click();
    await type(field(page, 'Reading'), reading);
  }
  await expect(answer).toContainText(/966 → \d+/);
  await expect(answer).toContainText('Three tests of this set-up moved the pull-out');
  await expect.poll(() => knurlLimits(page)).not.toBe(estimated);
  await expect(page.getByText(TESTED)).toBeVisible();
  // The table follows an edit later: it may still stand at two of the three.
  await expect(page.locator('[aria-busy="true"]:has(#hold)')).toHaveCount(0);
  const measured = await knurlLimits(page);
  const moved = await said();

  await choice(page, 'The answers').selectOption('leave them out');
  await expect(answer).toContainText('the answers leave them out');
  await expect.poll(() => knurlLimits(page)).toBe(estimated);

  const press = async (name: 'Undo' | 'Redo', times: number) => {
    await page.getByRole('button', { name, exact: true }).focus();
    for (let time = 0; time < times; time += 1) await page.keyboard.press('Enter');
  };
  await press('Undo', 1);
  await expect.poll(() => knurlLimits(page)).toBe(measured);
  // Three tests with a reading each.
  await press('Undo', 6);
  await expect(answer).toContainText('none yet');
  await expect.poll(() => knurlLimits(page)).toBe(estimated);
  await press('Redo', 6);
  await expect.poll(() => knurlLimits(page)).toBe(measured);
  expect(await said()).toBe(moved);

  // The page keeps what it has before it is left.
  await page.reload();
  await expectWholeSheet(page);
  await expect.poll(() => knurlLimits(page)).toBe(measured);
  expect(await said()).toBe(moved);
  await expect(page.getByRole('button', { name: 'Enter test 4' })).toBeVisible();
});

test('a table of tests is read line by line, and what is not taken stays', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Read a table of tests' }).click();
  const table = page.getByLabel(/^A table of tests/);
  await table.fill('insert;reading;how it ended\nM3 5.0 × 5.0;52,5 kg;held\nM3 5.0 × 5.0;plenty;held');
  await expect(page.getByText(/^Line 3, reading: “plenty” is no number/)).toBeVisible();
  await page.getByRole('button', { name: 'Take the test' }).click();
  await expect(page.getByRole('button', { name: 'Edit test 1' })).toBeVisible();
  await expect(table).toHaveValue('insert,reading,how it ended\nM3 5.0 × 5.0,plenty,held\n');
});
