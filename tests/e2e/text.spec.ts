import { type Page, test } from '@playwright/test';
import { chooseJoint, DEMOS, expect, expectCharts, openPage, PATIENCE } from './sheet.ts';

test.describe.configure(PATIENCE);

const SLIPS = /NaN|undefined|Infinity|\[object/g;

/** All that is written on the page, seen or heard: text, labels, values, title. */
function wordsOf(page: Page): Promise<string> {
  return page.evaluate(() => {
    const heard = [
      'aria-label',
      'aria-description',
      'placeholder',
      'title',
      'd',
      'x',
      'y',
      'transform',
      'style',
    ];
    const attributes = [...document.querySelectorAll('*')].flatMap((element) =>
      heard.map((name) => element.getAttribute(name) ?? ''),
    );
    const values = [...document.querySelectorAll('input, textarea')].map((element) =>
      element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement ? element.value : '',
    );
    return [document.title, document.body.textContent, ...attributes, ...values].join('\n');
  });
}

async function expectNoSlips(page: Page): Promise<void> {
  const words = await wordsOf(page);
  expect(words.length).toBeGreaterThan(5000);
  const slips = [...words.matchAll(SLIPS)].map(({ index }) =>
    words.slice(Math.max(0, index - 40), index + 20),
  );
  expect(slips).toEqual([]);
}

test('no slip of the program is written anywhere, whatever joint is shown', async ({ page }) => {
  await openPage(page);
  await expectCharts(page);
  await expectNoSlips(page);
  for (const demo of DEMOS.slice(1)) {
    await test.step(demo, async () => {
      await chooseJoint(page, demo);
      await expectNoSlips(page);
    });
  }
  await chooseJoint(page, 'a new one', 'New joint');
  await expectNoSlips(page);
});

test('a slip would be found', async ({ page }) => {
  await openPage(page);
  await page.evaluate(() => document.querySelector('main')?.setAttribute('aria-label', `${Number.NaN} mm`));
  expect(await wordsOf(page)).toMatch(SLIPS);
});
