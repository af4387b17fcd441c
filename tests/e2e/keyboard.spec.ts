import { type Locator, type Page, test } from '@playwright/test';
import {
  answers,
  answerTo,
  expect,
  field,
  holeToDraw,
  jointName,
  openPage,
  PATIENCE,
  rankedRow,
  readings,
  torqueToDial,
} from './sheet.ts';

test.describe.configure(PATIENCE);

/** More presses than the page has places to stop at. */
const MOST_STOPS = 400;

const FOCUS = () => {
  const focused = document.activeElement;
  if (focused === null || focused === document.body) return null;
  // A radio button or a file field may be drawn by the label beside it, which then carries the mark.
  const drawn = [focused, focused.nextElementSibling, focused.parentElement].filter((one) => one !== null);
  const isMarked = drawn.some((one) => {
    const { outlineStyle, outlineWidth } = getComputedStyle(one);
    return outlineStyle !== 'none' && outlineWidth !== '0px';
  });
  const { left, top, width, height } = focused.getBoundingClientRect();
  const over = document.elementFromPoint(left + Math.min(width / 2, 40), top + Math.min(height / 2, 40));
  return {
    name: focused.getAttribute('aria-label') ?? focused.textContent,
    isMarked,
    // In view, and nothing lies over it.
    isThere: drawn.some((one) => one.contains(over) || over?.contains(one) === true) && width * height > 0,
    isControl: !(focused instanceof SVGElement) || focused.hasAttribute('aria-label'),
  };
};

/** Presses Tab until the focus is on what is wanted; each stop on the way has to be marked. */
async function tabTo(page: Page, wanted: Locator): Promise<void> {
  const target = await wanted.elementHandle();
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    await page.keyboard.press('Tab');
    const focus = await page.evaluate(FOCUS);
    expect(focus, 'the focus left the page').not.toBeNull();
    expect(focus?.isMarked, `focus on “${focus?.name}” is marked`).toBe(true);
    if (await page.evaluate((element) => element === document.activeElement, target)) return;
  }
  throw new Error(`not reached in ${MOST_STOPS} presses of Tab`);
}

/** Types over what a field holds. */
async function typeOver(page: Page, text: string): Promise<void> {
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

test('the first press of Tab offers the way past the head of the sheet', async ({ page }) => {
  await openPage(page);
  await page.keyboard.press('Tab');
  const skip = page.getByRole('link', { name: 'To the joint' });
  await expect(skip).toBeFocused();
  await expect(skip).toBeInViewport();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('main')).toBeFocused();
  // What comes next belongs to the joint, not to the head.
  await page.keyboard.press('Tab');
  const joint = page.getByRole('main');
  await expect(joint.locator(':focus')).toHaveCount(1);
});

test('Tab goes through the whole page and out of it again, each stop marked', async ({ page }) => {
  await openPage(page);
  const places = await page.evaluate(() => {
    const stops =
      'a[href], button:not(:disabled), input:not([type=radio]):not([hidden]), select, textarea, summary';
    return [...document.querySelectorAll(stops)].filter((stop) =>
      stop.checkVisibility({ visibilityProperty: true }),
    ).length;
  });
  const marked = new Set<string>();
  const unmarked: string[] = [];
  let stops = 0;
  for (; stops < MOST_STOPS; stops += 1) {
    await page.keyboard.press('Tab');
    const focus = await page.evaluate(FOCUS);
    if (focus === null) break;
    if (focus.isMarked && focus.isThere && focus.isControl) marked.add(focus.name);
    else unmarked.push(focus.name);
  }
  expect(unmarked).toEqual([]);
  // Every place is stopped at, and the last press leaves the page: no trap.
  expect(stops).toBeGreaterThanOrEqual(places);
  expect(stops).toBeLessThan(MOST_STOPS);
  expect(marked.size).toBeGreaterThan(50);
});

test('the order is that of the sheet: paper, joints, answers, seat, drawing, insert, given', async ({
  page,
}) => {
  await openPage(page);
  const joint = page.getByRole('region', { name: 'The joint', exact: true });
  await tabTo(page, page.getByRole('radio', { name: 'as the system' }));
  await tabTo(page, page.getByRole('button', { name: 'Camera bracket', exact: true }));
  for (const question of ['Which insert?', 'What hole?', 'How tight?'] as const) {
    await tabTo(page, answerTo(page, question).getByRole('link'));
    await tabTo(page, answerTo(page, question).getByRole('button').first());
  }
  await tabTo(page, joint.getByRole('radio', { checked: true }));
  await tabTo(page, joint.getByRole('textbox', { name: 'Thickness of the part, mm' }));
  await tabTo(page, readings(page, 'Knurl diameter'));
  await tabTo(page, page.getByRole('combobox', { name: 'Printed in' }));
});

test('an arrow key steps a value by its own step', async ({ page }) => {
  await openPage(page);
  for (const { label, presses, from, to } of [
    { label: 'Pull on this joint', presses: ['ArrowUp', 'ArrowUp', 'ArrowDown'], from: '70', to: '80' },
    { label: 'Clearance hole ⌀', presses: ['ArrowUp'], from: '3.4', to: '3.5' },
    { label: 'Layer height', presses: ['ArrowDown', 'ArrowDown'], from: '0.20', to: '0.18' },
    { label: 'Infill, %', presses: ['ArrowUp'], from: '20', to: '25' },
  ]) {
    const stepped = field(page, label);
    await expect(stepped).toHaveValue(from);
    await stepped.focus();
    for (const press of presses) await page.keyboard.press(press);
    await expect(stepped).toHaveValue(to);
    await expect(stepped).toBeFocused();
  }
});

test('the way of a newcomer needs no mouse', async ({ page }) => {
  await openPage(page);
  // Another joint from the list.
  await tabTo(page, page.getByRole('button', { name: 'Far-side mount', exact: true }));
  await page.keyboard.press('Enter');
  await expect(jointName(page)).toHaveText(/^Far-side mount/);
  // The button has gone with its joint; the focus is on the name of the one that it opened.
  await expect(jointName(page)).toBeFocused();
  await chooseBack(page);

  // An insert is measured in.
  const hole = await holeToDraw(page);
  await tabTo(page, readings(page, 'Knurl diameter'));
  await typeOver(page, '4,62 4.64');
  await page.keyboard.press('Tab');
  await expect(readings(page, 'Pilot diameter')).toBeFocused();
  await typeOver(page, '4.10 4.12 0.162 in');
  expect(await holeToDraw(page)).toBeGreaterThan(hole);

  // A wrong text is given back by Escape.
  await typeOver(page, 'wide');
  await expect(readings(page, 'Pilot diameter')).toHaveAttribute('aria-invalid', 'true');
  await page.keyboard.press('Escape');
  await expect(readings(page, 'Pilot diameter')).not.toHaveAttribute('aria-invalid');
  await expect(readings(page, 'Pilot diameter')).toHaveValue(/^4\.1/);

  // A derivation opens, closes, and gives the focus back.
  const drawn = page
    .getByRole('main')
    .getByRole('button', { name: /^Floor under the hole/ })
    .first();
  await drawn.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('region', { name: /^Derivation: Floor under the hole/ })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(drawn).toBeFocused();

  // The seat is one stop, and the arrows choose in it.
  const torque = await torqueToDial(page);
  const seat = page.getByRole('radio', { name: 'as the sizes say' });
  await seat.focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'over a gap' })).toBeChecked();
  await expect(answerTo(page, 'How tight?')).toContainText('No torque fits');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('ArrowLeft');
  await expect(page.getByRole('radio', { name: 'on the insert' })).toBeChecked();
  expect(await torqueToDial(page)).toBe(torque);

  // Another insert of the ranking.
  const before = await answers(page).innerText();
  const use = rankedRow(page, 2).getByRole('button', { name: /^use this one/ });
  await tabTo(page, use);
  await page.keyboard.press('Enter');
  await expect(rankedRow(page, 2)).toContainText('shown on this sheet');
  await expect(rankedRow(page, 2).getByRole('rowheader')).toBeFocused();
  expect(await answers(page).innerText()).not.toBe(before);
});

test('a name is written over or left as it is, and the focus stays on it', async ({ page }) => {
  await openPage(page);
  const name = jointName(page).getByRole('button');
  await tabTo(page, name);
  for (const { key, after } of [
    { key: 'Escape', after: /^Sensor lid/ },
    { key: 'Enter', after: /^Lid of the pump/ },
  ]) {
    await page.keyboard.press('Enter');
    await expect(page.getByRole('textbox', { name: 'Name of the joint' })).toBeFocused();
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('Lid of the pump');
    await page.keyboard.press(key);
    await expect(jointName(page)).toHaveText(after);
    await expect(name).toBeFocused();
  }
});

test('the whole calculation opens over the page and gives the focus back', async ({ page }) => {
  await openPage(page);
  const open = page.getByRole('button', { name: 'The whole calculation' });
  const calculation = page.getByRole('dialog');
  await open.focus();
  for (const way of ['Escape', 'Close'] as const) {
    await page.keyboard.press('Enter');
    await expect(calculation.getByRole('button', { name: 'Print this sheet' })).toBeFocused();
    if (way === 'Close') await tabTo(page, calculation.getByRole('button', { name: 'Close' }));
    await page.keyboard.press(way === 'Close' ? 'Enter' : 'Escape');
    await expect(calculation).toHaveCount(0);
    await expect(open).toBeFocused();
    await expect(open).toBeInViewport();
  }
  await page.keyboard.press('Shift+Tab');
  await expect(open).not.toBeFocused();
});

/** Back to the first joint by the keyboard. */
async function chooseBack(page: Page): Promise<void> {
  const sensorLid = page.getByRole('button', { name: 'Sensor lid', exact: true });
  await sensorLid.focus();
  await page.keyboard.press('Enter');
  await expect(jointName(page)).toHaveText(/^Sensor lid/);
}
