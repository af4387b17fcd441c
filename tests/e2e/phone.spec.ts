import { type Page, test } from '@playwright/test';
import {
  answers,
  answerTo,
  DEMOS,
  expect,
  expectCharts,
  expectNotTaken,
  field,
  jointName,
  messageAt,
  openDemo,
  openPage,
  PATIENCE,
  QUESTIONS,
  type,
} from './sheet.ts';

test.describe.configure(PATIENCE);
// Narrow in both projects: with a finger and with a mouse.
const WIDTH = 390;
test.use({ viewport: { width: WIDTH, height: 844 } });

interface Box {
  readonly name: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The value boxes of the section, each with the dimension it stands for. */
function valueBoxes(page: Page): Promise<readonly Box[]> {
  return page
    .getByRole('region', { name: 'The joint', exact: true })
    .locator('[data-variant] > div > [data-dimension]')
    .evaluateAll((labels) =>
      labels.map((label) => {
        const { left, right, top, bottom } = label.getBoundingClientRect();
        return { name: label.getAttribute('data-dimension') ?? '', left, right, top, bottom };
      }),
    );
}

/** Pixels that two neighbours may share: half a pixel of rounding on each side. */
const ROUNDING = 1;

const overlap = (one: Box, other: Box): boolean =>
  Math.min(one.right, other.right) - Math.max(one.left, other.left) > ROUNDING &&
  Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > ROUNDING;

for (const demo of DEMOS) {
  test(`${demo}: the drawing is legible and nothing hangs over the edge`, async ({ page }) => {
    await openDemo(page, demo);
    await expectCharts(page);

    const boxes = await valueBoxes(page);
    expect(boxes.length).toBeGreaterThan(4);
    const met = boxes.flatMap((one, index) =>
      boxes
        .slice(index + 1)
        .flatMap((other) => (overlap(one, other) ? [`${one.name} and ${other.name}`] : [])),
    );
    expect(met).toEqual([]);
    expect(boxes.filter(({ left, right }) => left < 0 || right > WIDTH)).toEqual([]);

    // At no place of the page, and not by what is cut off either.
    const widths = await page.evaluate((width) => {
      const seen: number[] = [];
      const { scrollingElement } = document;
      if (!scrollingElement) return seen;
      for (let y = 0; y < scrollingElement.scrollHeight; y += 400) {
        scrollTo(0, y);
        seen.push(scrollingElement.scrollWidth);
        scrollBy(50, 0);
        seen.push(width + scrollX);
        scrollTo(0, y);
      }
      return seen;
    }, WIDTH);
    expect(widths.length).toBeGreaterThan(10);
    expect([...new Set(widths)]).toEqual([WIDTH]);
  });
}

test('the notes of the drawing are a list by letters', async ({ page }) => {
  await openPage(page);
  const joint = page.getByRole('region', { name: 'The joint', exact: true });
  const letters = await joint.getByRole('listitem').locator('i').allInnerTexts();
  expect(letters.filter((letter) => letter !== '')).toEqual(['a', 'b', 'c', 'd', 'e', 'f', 'g']);
  await expect(
    joint.getByRole('listitem').filter({ hasText: 'Clearance' }).getByRole('textbox'),
  ).toBeVisible();
});

test('the answers come first and stay in one line once they have left', async ({ page }) => {
  await openPage(page);
  const top = async (what: ReturnType<typeof answers>) => (await what.boundingBox())?.y ?? Number.NaN;
  expect(await top(jointName(page))).toBeLessThan(await top(answers(page)));
  expect(await top(answers(page))).toBeLessThan(await top(page.getByRole('main')));
  // The first answer is read without scrolling.
  await expect(answerTo(page, 'Which insert?')).toBeInViewport({ ratio: 1 });

  const bar = page.getByRole('navigation', { name: 'Answers in short' });
  await expect(bar).toHaveCount(0);
  await field(page, 'Boss ⌀').scrollIntoViewIfNeeded();
  await expect(bar).toBeInViewport();
  // Three of them fit in the line.
  for (const question of QUESTIONS.slice(0, 3))
    await expect(bar.getByRole('link', { name: question })).toContainText(/\d/);
  const tops = await bar
    .getByRole('link')
    .evaluateAll((links) => links.map((link) => link.getBoundingClientRect().top));
  expect(new Set(tops.map(Math.round)).size).toBe(1);

  // It follows what is typed, far from the answers themselves.
  const before = await bar.innerText();
  await page.getByRole('radio', { name: 'over a gap' }).check();
  await field(page, 'Boss ⌀').scrollIntoViewIfNeeded();
  await expect(bar).toContainText('none fits');
  expect(await bar.innerText()).not.toBe(before);

  await page.evaluate(() => scrollTo(0, 0));
  await expect(bar).toHaveCount(0);
});

test('with a stop on the page the bar goes when the page is back at its top', async ({ page }) => {
  await openPage(page);
  // The longest of the stops: the answers begin below the window.
  await page.getByLabel('Used for').selectOption('a load over people');
  const bar = page.getByRole('navigation', { name: 'Answers in short' });
  await field(page, 'Boss ⌀').scrollIntoViewIfNeeded();
  await expect(bar).toBeVisible();
  await page.evaluate(() => scrollTo(0, 0));
  await expect(bar).toHaveCount(0);
});

test('fields are high enough for a finger', async ({ page }) => {
  await openPage(page);
  await expectCharts(page);
  const fields = page
    .getByRole('main')
    .locator('input:not([type=radio]), select, textarea')
    .filter({ visible: true });
  const heights = await fields.evaluateAll((all) =>
    all.map((one) => ({
      name: one.getAttribute('aria-label') ?? document.querySelector(`label[for="${one.id}"]`)?.textContent,
      height: one.getBoundingClientRect().height,
    })),
  );
  expect(heights.length).toBeGreaterThan(30);
  expect(heights.filter(({ height }) => height < 40)).toEqual([]);
});

test('a message of the drawing is read without scrolling sideways', async ({ page }) => {
  await openPage(page);
  const drawn = page.getByRole('region', { name: 'The joint', exact: true });
  for (const name of ['Thickness of the part, mm', 'Length, mm']) {
    const of = drawn.getByRole('textbox', { name }).first();
    await type(of, '-1');
    await expectNotTaken(page, of, 'cannot be below zero');
    const box = await (await messageAt(page, of)).boundingBox();
    expect(box?.x).toBeGreaterThanOrEqual(0);
    expect((box?.x ?? 0) + (box?.width ?? WIDTH)).toBeLessThanOrEqual(WIDTH);
    await of.press('Escape');
  }
});
