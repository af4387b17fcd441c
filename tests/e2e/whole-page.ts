import type { Page } from '@playwright/test';
import { expect } from './sheet.ts';

/** Parts of the page that come after the rest, each by what stands there in the end. */
const LATE = [
  'Knurl pull-out over length',
  'What to change first',
  'What time and heat leave',
  'What each joint is drawn from',
] as const;

/** Scrolls from top to bottom, a window at a time, so that all that waits to be seen begins; then back to the top. */
async function scrollThrough(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const frame = () => new Promise(requestAnimationFrame);
    for (let top = 0; top < document.documentElement.scrollHeight; top += innerHeight) {
      scrollTo(0, top);
      // What watches the window is told in the frame after the one that draws it.
      await frame();
      await frame();
    }
    scrollTo(0, 0);
  });
}

/** These parts show the present joint: neither they, nor what they stand in, nor anything in them is behind. */
export async function expectFollowed(page: Page, parts: readonly string[]): Promise<void> {
  const these = `:is(${parts.join(', ')})`;
  const behind = `[aria-busy="true"]:has(${these}), ${these} :is([aria-busy="true"], [data-stale])`;
  for (const part of parts) await expect(page.locator(part)).toBeVisible();
  await expect(page.locator(behind)).toHaveCount(0);
}

/** Nothing is being loaded, drawn, worked out or sampled any more, and nothing is left from the joint before. */
export async function expectSettled(page: Page): Promise<void> {
  await expect(page.locator('#sure')).toBeVisible();
  await expect(page.locator('#hold').getByRole('heading').first()).toBeVisible();
  for (const late of ['#coupons', '#log', '#tests', '#existing-hole']) {
    await expect(page.locator(late)).toBeVisible();
  }
  await scrollThrough(page);
  await expect(page.locator('#sure').getByText(/^Sampled\.$|nothing to sample/)).toHaveCount(1);
  await expect(page.getByText(/being (drawn|worked out)/)).toHaveCount(0);
  const behind = page.locator('[aria-busy="true"], [data-stale]');
  await expect(async () => {
    // A picture that was passed by too quickly follows once it is seen again.
    if ((await behind.count()) > 0) await behind.first().scrollIntoViewIfNeeded({ timeout: 1000 });
    await expect(behind).toHaveCount(0, { timeout: 1000 });
  }).toPass();
}

/** Settled, and with all that a joint with a torque window shows. */
export async function expectEverythingThere(page: Page): Promise<void> {
  await expectSettled(page);
  for (const name of LATE) await expect(page.getByRole('heading', { name })).toBeVisible();
}
