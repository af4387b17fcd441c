import { type Page, test } from '@playwright/test';
import {
  answers,
  answerTo,
  DEMOS,
  expect,
  expectCharts,
  field,
  jointName,
  openDemo,
  openPage,
  PATIENCE,
  QUESTIONS,
  type,
} from './sheet.ts';

test.describe.configure(PATIENCE);
// Narrow in both projects: with a finger and with a mouse.
test.use({ viewport: { width: 390, height: 844 } });

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
    expect(boxes.filter(({ left, right }) => left < 0 || right > 390)).toEqual([]);

    // At no place of the page, and not by what is cut off either.
    const widths = await page.evaluate(() => {
      const seen: number[] = [];
      const { scrollingElement } = document;
      if (!scrollingElement) return seen;
      for (let y = 0; y < scrollingElement.scrollHeight; y += 400) {
        scrollTo(0, y);
        seen.push(scrollingElement.scrollWidth);
        scrollBy(50, 0);
        seen.push(390 + scrollX);
        scrollTo(0, y);
      }
      return seen;
    });
    expect(widths.length).toBeGreaterThan(10);
    expect([...new Set(widths)]).toEqual([390]);
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
  for (const question of QUESTIONS)
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
  await page.getByLabel('Used for').selectOption('lifting');
  const bar = page.getByRole('navigation', { name: 'Answers in short' });
  await field(page, 'Boss ⌀').scrollIntoViewIfNeeded();
  await expect(bar).toBeVisible();
  await page.evaluate(() => scrollTo(0, 0));
  await expect(bar).toHaveCount(0);
});

test('fields are high enough for a finger', async ({ page }) => {
  await openPage(page);
  const low = await page
    .getByRole('main')
    .locator('input:not([type=radio]), select, textarea')
    .evaluateAll((fields) =>
      fields.flatMap((one) => {
        const { height } = one.getBoundingClientRect();
        return height < 40 ? [`${one.getAttribute('aria-label') ?? one.id}: ${height}`] : [];
      }),
    );
  expect(low).toEqual([]);
});

test('a message of the drawing stays inside the window', async ({ page }) => {
  await openPage(page);
  const thickness = page.getByRole('textbox', { name: 'Thickness of the part, mm' });
  await type(thickness, '-1');
  const message = page.getByRole('alert').filter({ hasText: 'Not taken.' });
  await expect(message).toBeVisible();
  await expect(message).toBeInViewport({ ratio: 1 });
});
