import { readFile } from 'node:fs/promises';
import { type Locator, test } from '@playwright/test';
import {
  answers,
  answerText,
  answerTo,
  chooseJoint,
  computedValue,
  endsOfNoTorque,
  expect,
  expectCharts,
  expectNotTaken,
  expectWholeSheet,
  holeToDraw,
  jointName,
  NUMBERED,
  openDemo,
  openDerivation,
  openPage,
  PATIENCE,
  rankedRow,
  readings,
  torqueToDial,
  type,
} from './sheet.ts';

test.describe.configure(PATIENCE);

/** What a derivation owes to somebody who asks why: formula, values put in with units, result, source, standing. */
async function expectExplained(derivation: Locator, result: RegExp): Promise<void> {
  await expect(derivation).toContainText('=');
  const values = await derivation.getByRole('definition').allInnerTexts();
  expect(values.join(' ')).toMatch(/\d\s(mm|N|MPa|N·m)/);
  await expect(derivation).toContainText(result);
  await expect(derivation).toContainText(/published|common practice|estimate|measured by you/);
}

test('a first visit answers every question without a word typed', async ({ page }) => {
  await openPage(page);
  await expect(jointName(page)).toHaveText(/^Sensor lid/);
  for (const question of NUMBERED) await expect(answerTo(page, question)).toContainText(/\d/);
  await expect(answerTo(page, 'What did my tests say?')).toContainText('none yet');
  expect(await answerText(page, 'Which insert?')).toMatch(/M3 ?4\.6 × 5\.7/);
  expect(await answerText(page, 'What hole?')).toMatch(/⌀ ?\d\.\d\d ?mm/);
  expect(await answerText(page, 'How tight?')).toMatch(/\d\.\d\d ?N·m/);
  await expect(page).toHaveTitle('Sensor lid: Knurlwright');
});

test('an insert is measured in, read off, and used', async ({ page }) => {
  await openDemo(page, 'Motor plate');
  const hole = await holeToDraw(page);
  const torque = await torqueToDial(page);

  // Readings as they come off a caliper: blanks, semicolons, a decimal comma, inches.
  await type(readings(page, 'Pilot diameter'), '5.62 5,60; 5.61');
  await type(readings(page, 'Knurl diameter'), '6.32; 6,30 6.31');
  await type(readings(page, 'Length'), '0.197 in');
  // The knurl cannot be longer than the insert: both lengths are taken once the second one is typed.
  await expectNotTaken(page, readings(page, 'Length'), 'A knurled length of 9.4 mm is more than');
  await type(readings(page, 'Knurled length'), '3,9');
  // The mean of the three readings, and 0.197 × 25.4 = 5.0038 mm.
  await expect(computedValue(page, 'Which insert?', /^M4, 6\.31 mm by 5\.0\d* mm/)).toBeVisible();
  await expect(readings(page, 'Length')).toHaveValue('5.0038');
  await expect(readings(page, 'Pilot diameter')).toHaveValue('5.62 5,60; 5.61');

  // The pilot has grown by 0.11 mm, and the hole goes with it to the next step of 0.05 mm.
  const wider = (await holeToDraw(page)) - hole;
  expect(wider).toBeGreaterThan(0.05);
  expect(wider).toBeLessThan(0.2);
  // Less than half the length holds less torque.
  expect(await torqueToDial(page)).toBeLessThan(torque);
});

test('the reason of an answer opens under it and closes where it was asked', async ({ page }) => {
  await openPage(page);
  const hole = computedValue(page, 'What hole?', /^Hole to draw/);
  const derivation = await openDerivation(page, hole);
  await expectExplained(derivation, /hole to draw = \d\.\d\d\smm/);
  await expect(hole).toHaveAttribute('aria-expanded', 'true');

  await page.keyboard.press('Escape');
  await expect(derivation).toHaveCount(0);
  await expect(hole).toBeFocused();
  await expect(hole).toHaveAttribute('aria-expanded', 'false');
});

test('a number of the drawing gives its reason, and the reasons of what went in', async ({ page }) => {
  await openPage(page);
  const joint = page.getByRole('region', { name: 'The joint', exact: true });
  const wall = joint.getByRole('button', { name: /^Wall round the bore, .* mm, open derivation$/ });
  const derivation = await openDerivation(page, wall);
  await expectExplained(derivation, /wall thickness = \d\.\d\d\smm/);

  const drawn = joint.getByRole('button', { name: /^Hole to draw, .* mm, open derivation$/ });
  const deeper = await openDerivation(page, drawn);
  // One derivation at a time: the other has gone.
  await expect(derivation).toHaveCount(0);
  const nested = deeper.getByRole('button', { name: /open derivation$/ }).first();
  await nested.click();
  await expect(nested).toHaveAttribute('aria-expanded', 'true');
  await page.keyboard.press('Escape');
  await expect(nested).toBeFocused();
  await expect(deeper).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(drawn).toBeFocused();
});

test('a part that bears over a gap leaves no torque, and the page says what would', async ({ page }) => {
  await openPage(page);
  const torque = await torqueToDial(page);
  await page.getByRole('radio', { name: 'over a gap' }).check();
  await expect(answerTo(page, 'How tight?')).toContainText('No torque fits');
  const { closed, limit } = await endsOfNoTorque(page);
  expect(limit).toBeLessThan(closed);
  await expect(answerTo(page, 'How tight?')).toContainText(/bear on the insert|close the gap/);

  // Back on the insert by the page's own advice, the torque of before fits again.
  await page.getByRole('radio', { name: 'on the insert' }).check();
  await expect.poll(() => torqueToDial(page)).toBe(torque);
});

test('another insert of the ranking takes over the whole sheet', async ({ page }) => {
  await openPage(page);
  const before = await answerText(page, 'Which insert?');
  const hole = await holeToDraw(page);
  const second = rankedRow(page, 2);
  const use = second.getByRole('button', { name: /^use this one/ });
  const name = (await use.getAttribute('aria-label'))?.replace('use this one: ', '') ?? '';
  await use.click();

  expect(await answerText(page, 'Which insert?')).not.toBe(before);
  expect((await answerText(page, 'Which insert?')).replaceAll(' ', '')).toContain(name.replaceAll(/\s/g, ''));
  expect(await holeToDraw(page)).not.toBe(hole);
  await expect(second).toContainText('shown on this sheet');
  await expect(page.getByRole('contentinfo')).toContainText(name);

  await page.getByRole('button', { name: 'Undo' }).click();
  expect(await answerText(page, 'Which insert?')).toBe(before);
});

test('the charts of the drawer come by themselves, with their table', async ({ page }) => {
  await openPage(page);
  await page.getByRole('link', { name: 'Which insert?' }).first().click();
  await expectCharts(page);
  await page.getByText('The charts as a table').click();
  await expect(
    page
      .getByRole('table')
      .filter({ hasText: /length/i })
      .first(),
  ).toBeVisible();
});

test('a joint is saved, found again after a reload, and opened from its file', async ({ page }) => {
  await openDemo(page, 'Far-side mount');
  await type(readings(page, 'Pilot diameter'), '7,12 7.14');
  const mine = await answers(page).innerText();

  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save this joint' }).click();
  const saved = await download;
  expect(saved.suggestedFilename()).toMatch(/far-side-mount.*\.json$/i);
  const text = await readFile(await saved.path(), 'utf8');
  expect(JSON.parse(text)).toMatchObject({ format: 'knurlwright-joint', name: 'Far-side mount' });
  expect(text).toContain('7.12');

  await page.reload();
  await expectWholeSheet(page);
  await expect(jointName(page)).toHaveText(/^Far-side mount/);
  await expect(readings(page, 'Pilot diameter')).toHaveValue('7.12; 7.14');
  expect(await answers(page).innerText()).toBe(mine);

  await chooseJoint(page, 'Sensor lid');
  expect(await answers(page).innerText()).not.toBe(mine);
  const picked = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a joint…' }).click();
  await (await picked).setFiles({
    name: 'mine.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await expect(page.getByRole('status').first()).toContainText('Opened from mine.json');
  await expect(jointName(page)).toHaveText(/^Far-side mount/);
  expect(await answers(page).innerText()).toBe(mine);
});
