import { readFile } from 'node:fs/promises';
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
  await expect(said).toContainText(/\d+ N/);
  const moved = await said.innerText();
  await choice(page, 'The answers').selectOption('leave them out');
  await expect(said).not.toHaveText(moved);
  await choice(page, 'The answers').selectOption('use the tests');
  // The page keeps what it has before it is left.
  await page.reload();
  await expectWholeSheet(page);
  await expect(said).toContainText(/\d+ N/);
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

test('a gauge is saved, and its bores are found again in the file', async ({ page }, info) => {
  await openPage(page);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as 3MF' }).click();
  const file = info.outputPath('gauge.3mf');
  await (await download).saveAs(file);
  expect((await readFile(file)).subarray(0, 2).toString()).toBe('PK');
  await page.getByLabel(/^Find the hole in a file/).setInputFiles(file);
  await expect(page.getByText(/^gauge\.3mf: 3MF, .* 5 holes\./)).toBeVisible();
  await page.getByRole('button', { name: /^Use hole 5/ }).click();
  await expect(choice(page, 'The hole is')).toHaveValue('as-drawn');
  await expect(answerTo(page, 'What hole?')).toContainText('4.50');
});
