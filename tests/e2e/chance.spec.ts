import { expect, type Page, test } from '@playwright/test';

/** Brings the section into view, however much of the page above is still coming. */
async function bringIntoView(page: Page): Promise<void> {
  await expect(async () => {
    await page.locator('#sure').scrollIntoViewIfNeeded({ timeout: 1000 });
    await expect(page.locator('#sure').getByRole('status')).not.toHaveText('', { timeout: 1000 });
    await expect(page.locator('#sure')).toBeInViewport({ timeout: 1000 });
  }).toPass();
}

test('joints are sampled in the worker under the content policy, and the sampling can be cancelled', async ({
  page,
}) => {
  const violations: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') violations.push(message.text());
  });
  let letGo = () => {};
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  let asked = 0;
  await page.route(/chance-worker[^/]*\.js$/, async (route) => {
    asked += 1;
    await held;
    await route.continue();
  });
  await page.goto('./');
  const section = page.locator('#sure');
  await bringIntoView(page);
  const state = section.getByRole('status');
  await expect(state).toHaveText('Sampling.');
  expect(asked).toBe(1);
  await section.getByRole('button', { name: 'Cancel' }).click();
  await expect(state).toHaveText('Cancelled: nothing was sampled.');

  letGo();
  await section.getByRole('button', { name: 'Sample after all' }).click();
  await expect(state).toHaveText('Sampled.', { timeout: 20_000 });
  expect(page.workers()).toHaveLength(1);
  const table = section.getByRole('table', { name: 'What becomes of 1,000 joints' });
  await expect(table.getByRole('row', { name: /insert turns/ })).toContainText(/\d/);
  expect(violations).toEqual([]);
});
