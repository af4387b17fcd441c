import { type Locator, type Page, test } from '@playwright/test';
import {
  answers,
  answerTo,
  choice,
  chooseJoint,
  expect,
  expectNotTaken,
  field,
  jointName,
  messageAt,
  openPage,
  PATIENCE,
  QUESTIONS,
  readings,
  torqueToDial,
  type,
} from './sheet.ts';

test.describe.configure(PATIENCE);

/** The last answers stay, and say that they are not about what stands in the fields. */
async function expectStale(page: Page, kept: string): Promise<void> {
  await expect(page.getByText('Stale', { exact: false }).first()).toBeVisible();
  expect(await answers(page).innerText()).toContain(kept);
}

async function expectFresh(page: Page): Promise<void> {
  await expect(page.getByText('Stale', { exact: false })).toHaveCount(0);
}

/** Types what no field can take: the reason stands at the field, the rest stays, Escape gives the value back. */
async function expectRefusedAndGivenBack(
  page: Page,
  of: Locator,
  { typed, why }: { readonly typed: string; readonly why: string | RegExp },
): Promise<void> {
  const before = await of.inputValue();
  const each = answers(page).getByRole('listitem');
  // The last two answers are loaded after the others.
  await expect(each.nth(3)).toContainText(/\d/);
  await expect(each.nth(4)).toContainText('none yet');
  const kept = await each.allInnerTexts();
  await type(of, typed);
  await expectNotTaken(page, of, why);
  // What was typed stays to be put right.
  await expect(of).toHaveValue(typed);
  await expectStale(page, kept[0] ?? '');
  expect(await each.allInnerTexts()).toEqual(kept);
  await of.press('Escape');
  await expect(of).toHaveValue(before);
  await expect(of).not.toHaveAttribute('aria-invalid');
  await expectFresh(page);
  expect(await each.allInnerTexts()).toEqual(kept);
}

const force = (page: Page) => field(page, 'Pull on this joint');

const REFUSED_FORCES = [
  { typed: '-5', why: 'cannot be below zero' },
  { typed: '', why: 'The field is empty' },
  { typed: '1e9', why: /must be at most 20000/ },
  { typed: '12 mm', why: 'A pull is a force; mm is a length' },
  { typed: 'abc !?', why: /not a unit known here|no number that can be read/ },
  { typed: 'sin(3)', why: '“sin” has no place here' },
  { typed: 'sqrt(8100', why: 'The sum is not complete' },
  { typed: 'parse("1")', why: '“parse” has no place here' },
] as const;

test('a force that is no force is named as such, and nothing is lost', async ({ page }) => {
  await openPage(page);
  for (const refused of REFUSED_FORCES) {
    await test.step(`“${refused.typed}”`, () => expectRefusedAndGivenBack(page, force(page), refused));
  }
});

test('1,000 is asked about, and either meaning is one press away', async ({ page }) => {
  await openPage(page);
  await type(force(page), '1,000');
  await expectNotTaken(page, force(page), '1,000 can mean 1000 or 1.000');
  const message = await messageAt(page, force(page));
  await message.getByRole('button', { name: 'Take 1000' }).click();
  await expect(force(page)).toHaveValue('1000');
  await expect(force(page)).toBeFocused();
  await expectFresh(page);
});

test('inches typed as millimetres are taken for inches by one press', async ({ page }) => {
  await openPage(page);
  const length = readings(page, 'Length');
  await type(length, '0.25');
  await expectNotTaken(page, length, /inches/);
  await (await messageAt(page, length)).getByRole('button', { name: /inches/ }).click();
  // 0.25 × 25.4
  await expect(length).toHaveValue('6.35');
  await expect(length).not.toHaveAttribute('aria-invalid');
  await expect(answerTo(page, 'Which insert?').getByRole('button', { name: /by 6\.35 mm/ })).toBeVisible();
});

test('pilot and knurl the wrong way round are put right by one press', async ({ page }) => {
  await openPage(page);
  const pilot = readings(page, 'Pilot diameter');
  const knurl = readings(page, 'Knurl diameter');
  const kept = await answerTo(page, 'What hole?').innerText();
  await type(pilot, '5.2');
  await expectNotTaken(page, pilot, /swapped|wrong way/i);
  await expectStale(page, kept);
  await (await messageAt(page, pilot)).getByRole('button', { name: 'Swap them' }).click();
  await expect(pilot).toHaveValue('4.60');
  await expect(knurl).toHaveValue('5.20');
  await expectFresh(page);
});

test('an insert longer than five diameters is refused, and Escape gives the length back', async ({
  page,
}) => {
  await openPage(page);
  // 5 × 3 mm
  await expectRefusedAndGivenBack(page, readings(page, 'Length'), { typed: '15.1', why: '15.0 mm' });
});

test('a broken file is refused with its reason, and the joint stays', async ({ page }) => {
  await openPage(page);
  await type(force(page), '77');
  const before = await answers(page).innerText();
  const files = {
    'broken.json': '{"format": "knurlwright-joint", ',
    'other.json': '{"format": "a-shopping-list", "version": 1}',
    'newer.json': '{"format": "knurlwright-joint", "version": 99}',
  } as const;
  const reasons: Readonly<Record<keyof typeof files, RegExp>> = {
    'broken.json': /cannot be read as JSON/,
    'other.json': /not a joint document/,
    'newer.json': /has version 99/,
  };
  for (const name of ['broken.json', 'other.json', 'newer.json'] as const) {
    const picked = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Open a joint…' }).click();
    await (await picked).setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(files[name]) });
    const status = page.getByRole('status').first();
    await expect(status).toContainText(`${name} was not opened; the joint on the sheet stays.`);
    await expect(status).toContainText(reasons[name]);
  }
  await expect(jointName(page)).toHaveText(/^Sensor lid/);
  await expect(force(page)).toHaveValue('77');
  expect(await answers(page).innerText()).toBe(before);
});

/** The stop stands before everything that is answered, and nothing is answered. */
async function expectStopped(page: Page, reason: string): Promise<void> {
  const stop = page.getByRole('alert').filter({ hasText: 'Stop' });
  await expect(stop).toBeVisible();
  await expect(stop).toContainText(reason);
  for (const question of QUESTIONS) {
    await expect(answerTo(page, question)).toContainText('withheld');
    await expect(answerTo(page, question)).not.toContainText(/\d/);
  }
  await expect(page.getByRole('region', { name: 'The joint', exact: true })).toHaveCount(0);
  await expect(page.getByRole('table', { name: 'Inserts of the drawer ranked for this joint' })).toHaveCount(
    0,
  );
  // Nothing to press it away with, and Escape is no way out either.
  await expect(stop.getByRole('button')).toHaveCount(0);
  await expect(stop.getByRole('link')).toHaveCount(0);
  await page.keyboard.press('Escape');
  await expect(stop).toBeVisible();
}

async function expectAnswered(page: Page, before: string): Promise<void> {
  await expect(page.getByRole('alert').filter({ hasText: 'Stop' })).toHaveCount(0);
  // The last answer comes a moment after the others.
  await expect.poll(() => answers(page).innerText()).toBe(before);
  await expect(page.getByRole('region', { name: 'The joint', exact: true })).toBeVisible();
}

test('a load over people stops the sheet until the use is another one', async ({ page }) => {
  await openPage(page);
  const before = await answers(page).innerText();
  await choice(page, 'Used for').selectOption('a load over people');
  await expectStopped(
    page,
    'A printed part with an insert must not be the only thing that holds a load overhead',
  );
  await expect(page.getByRole('alert')).toContainText('licensed engineer');
  // The stop is part of the joint: it is there again after a reload.
  await page.reload();
  await expectStopped(page, 'This joint would hold a load over people.');
  await choice(page, 'Used for').selectOption('general use');
  await expectAnswered(page, before);
});

test('a host that does not melt or is near softening is stopped with its reason', async ({ page }) => {
  await openPage(page);
  const before = await answers(page).innerText();
  await choice(page, 'Printed in').selectOption('Photopolymer resin');
  await expectStopped(page, 'does not melt');
  await expect(page.getByRole('alert')).toContainText('captive nut');
  await choice(page, 'Printed in').selectOption('PETG');
  await expectAnswered(page, before);

  await choice(page, 'Printed in').selectOption('PLA');
  await type(field(page, 'Warmest service'), '58');
  await expectStopped(page, 'PLA is too near softening at 58 °C');
  await type(field(page, 'Warmest service'), '30');
  await expect(page.getByRole('alert')).toHaveCount(0);
  expect(await torqueToDial(page)).toBeGreaterThan(0);
});

test('a new joint begins after a stop without carrying it over', async ({ page }) => {
  await openPage(page);
  await choice(page, 'Used for').selectOption('climbing or fall protection');
  await expectStopped(page, 'A fall loads a joint suddenly');
  await chooseJoint(page, 'a new one', 'New joint');
  await expect(page.getByRole('alert')).toHaveCount(0);
  expect(await torqueToDial(page)).toBeGreaterThan(0);
});
