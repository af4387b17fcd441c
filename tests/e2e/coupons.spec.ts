import AxeBuilder from '@axe-core/playwright';
import { type Page, test } from '@playwright/test';
import { expect, PATIENCE } from './sheet.ts';

/** No fault of accessibility within a part of the page. */
async function expectNoFaults(page: Page, within: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).include(within).setLegacyMode().analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
}

test.describe.configure(PATIENCE);

/** Scrolls on until the coupons are built, however much of the page above is still coming. */
async function bringCouponsIntoView(page: Page): Promise<void> {
  await expect(async () => {
    await page.locator('#coupons').scrollIntoViewIfNeeded({ timeout: 1000 });
    await expect(page.getByRole('button', { name: 'Save as 3MF' })).toBeInViewport({ timeout: 1000 });
  }).toPass();
}

test('a saved gauge is read back through the page: its bores are found as drawn, and one is taken over', async ({
  page,
}, info) => {
  const errors: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await page.goto('./');
  await bringCouponsIntoView(page);
  const drawn = await page
    .getByRole('table', { name: /^Number on the gauge/ })
    .getByRole('row', { name: /^⌀ mm/ })
    .getByRole('cell')
    .allTextContents();
  expect(drawn).toHaveLength(5);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as 3MF' }).click();
  const saved = await coming;
  expect(saved.suggestedFilename()).toMatch(/^[a-z0-9-]+-hole-gauge\.3mf$/);
  const file = info.outputPath('gauge.3mf');
  await saved.saveAs(file);

  await page.getByLabel(/^Read an STL or 3MF/).setInputFiles(file);
  const found = page.getByRole('table', { name: 'Holes of the part' });
  await expect(found.getByRole('row')).toHaveCount(1 + drawn.length);
  // Largest first or smallest first: the same five.
  expect((await found.getByRole('rowheader').allTextContents()).sort()).toEqual([...drawn].sort());
  await expect(found.getByRole('cell', { name: 'upright' })).toHaveCount(drawn.length);

  const [smallest] = [...drawn].sort();
  await found.getByRole('button', { name: new RegExp(`^Use hole \\d, ${smallest}`) }).click();
  // The flats of the gauge's polygon lie on the drawn circle, so its corners stand out by some micrometres.
  const taken = page.locator('#existing-hole').getByLabel('Diameter as drawn ⌀');
  await expect(taken).toHaveValue(new RegExp(`^${smallest}`));
  await expectNoFaults(page, '#existing-hole');
  expect(errors).toEqual([]);
});

test('a file that is no part is refused at its field, and the joint stays as it was', async ({ page }) => {
  await page.goto('./');
  await page
    .getByLabel(/^Read an STL or 3MF/)
    .setInputFiles({ name: 'note.3mf', mimeType: 'model/3mf', buffer: Buffer.from('no packing at all') });
  await expect(page.locator('#existing-hole').getByRole('alert')).toContainText('note.3mf');
  await expect(page.getByRole('combobox', { name: 'The hole is' })).toHaveValue('none');
});

test('the solid turns by key and by drag, and the sheet prints alone', async ({ page }) => {
  await page.goto('./');
  await bringCouponsIntoView(page);
  const turntable = page.getByRole('slider', { name: /^Hole gauge on a turntable/ });
  await expectNoFaults(page, '#coupons');
  const picture = () => turntable.screenshot();
  const before = await picture();
  await turntable.press('ArrowRight');
  const turned = await picture();
  expect(turned.equals(before)).toBe(false);
  await turntable.hover();
  await page.mouse.down();
  await page.mouse.move(0, 0);
  await page.mouse.up();
  expect((await picture()).equals(turned)).toBe(false);

  await page.getByRole('button', { name: 'The sheet to write on' }).click();
  const sheet = page.getByRole('dialog', { name: 'Hole gauge' });
  await expectNoFaults(page, 'dialog');
  await page.emulateMedia({ media: 'print' });
  await expect(sheet.getByRole('row', { name: /^3 / })).toBeVisible();
  await expect(page.getByRole('main')).toBeHidden();
  await expect(sheet.getByRole('button', { name: 'Close' })).toBeHidden();
  await page.emulateMedia({ media: 'screen' });
  await page.keyboard.press('Escape');
  await expect(sheet).toHaveCount(0);
});
