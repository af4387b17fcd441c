import { test } from '@playwright/test';
import { answerTo, choice, expect, expectWholeSheet, field, openPage, PATIENCE, type } from './sheet.ts';

test.describe.configure(PATIENCE);

test('tests at the bench move the answers, can be left out, and are there after a reload', async ({
  page,
}) => {
  await openPage(page);
  const said = answerTo(page, 'What did my tests say?');
  await expect(said).toContainText('none yet');
  for (const [number, reading] of [
    [1, '71'],
    [2, '74,5'],
    [3, '69'],
  ] as const) {
    await page.getByRole('button', { name: `Enter test ${number}` }).click();
    await type(field(page, 'Reading'), reading);
  }
  await expect(said).toContainText(/→ \d+/);
  const moved = await said.innerText();
  await choice(page, 'The answers').selectOption('leave them out');
  await expect(said).not.toHaveText(moved);
  await choice(page, 'The answers').selectOption('use the tests');
  // The page keeps what it has before it is left.
  await page.reload();
  await expectWholeSheet(page);
  await expect(said).toContainText(/→ \d+/);
  await expect(page.getByRole('button', { name: 'Enter test 4' })).toBeVisible();
});

test('a table of tests is read line by line', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Read a table of tests' }).click();
  await page
    .getByLabel(/^A table of tests/)
    .fill('insert;reading;how it ended\nM3 5.0 × 5.0;52,5 kg;held\nM3 5.0 × 5.0;plenty;held');
  await expect(page.getByText(/^Line 3, reading: “plenty” is no number/)).toBeVisible();
  await page.getByRole('button', { name: 'Take the test' }).click();
  await expect(page.getByRole('button', { name: 'Edit test 1' })).toBeVisible();
});
