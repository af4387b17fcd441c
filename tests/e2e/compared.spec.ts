import { test } from '@playwright/test';
import { choice, expect, openPage, PATIENCE } from './sheet.ts';

test.describe.configure(PATIENCE);

/** Two holes, two lengths, and a coupon that was turned; insert by its name in the drawer. */
const TABLE = [
  'insert;test;reading;how it ended;bore',
  ...['96 kg', '101 kg', '93 kg'].map(
    (load) => `M3 5.0 × 5.0;pulled out;${load};insert out, with plastic;4,42`,
  ),
  ...['84 kg', '80 kg', '88 kg'].map(
    (load) => `M3 5.0 × 5.0;pulled out;${load};insert out, with plastic;4,61`,
  ),
  ...['72 kg', '70 kg'].map((load) => `M3 5.0 × 4.0;pulled out;${load};insert out, with plastic;4,42`),
  'M3 5.0 × 5.0;turned by torque;2,1 N·m;insert turned;4,42',
].join('\n');

test('holes are compared and strength is put over length, by the keyboard alone', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Read a table of tests' }).click();
  await page.getByLabel(/^A table of tests/).fill(TABLE);
  await page.getByRole('button', { name: 'Take nine tests' }).click();
  await expect(page.getByRole('button', { name: 'Edit test 9' })).toBeVisible();

  await expect(choice(page, 'Compare by')).toHaveValue('bore');
  const ratio = page.getByRole('table', { name: /^Strength over that of “bore 4\.42\smm”/ });
  await expect(ratio.getByRole('row').filter({ hasText: /^bore 4\.61\smm, 3/ })).toContainText('0.87');
  await ratio.getByRole('button', { name: /lower end of the ratio/ }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('region', { name: /^Derivation: .*lower end of the ratio/ })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(ratio.getByRole('button', { name: /lower end of the ratio/ })).toBeFocused();

  const regression = page.getByText('Strength over length and diameter, by regression');
  await regression.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('table', { name: /^Pulled out, knurl diameter/ })).toBeVisible();
  await expect(
    page.getByText(/^The model lets strength grow in proportion to the knurled length/),
  ).toBeVisible();
  await choice(page, 'Strength over').focus();
  await page.keyboard.press('End');
  await expect(
    page.getByText(/Length and diameter go together|about one knurl diameter/).first(),
  ).toBeVisible();

  for (const name of [/pull-out over length/, /torque that turns the insert/]) {
    await expect(page.getByRole('heading', { name }).last()).toBeVisible();
  }
});
