import { expect, type Page, test } from '@playwright/test';
import { preview } from 'vite';

test.use({ serviceWorkers: 'allow' });

/** Every report of the content policy since the page began, kept where a reload cannot lose it. */
async function recordViolations(page: Page): Promise<string[]> {
  const violations: string[] = [];
  await page.exposeFunction('recordViolation', (text: string) => violations.push(text));
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      const { recordViolation } = globalThis as typeof globalThis & {
        recordViolation: (text: string) => void;
      };
      recordViolation(`${event.violatedDirective}: ${event.blockedURI}`);
    });
  });
  return violations;
}

/** Waits until the service worker is active and answers for this page. */
async function expectControlled(page: Page): Promise<void> {
  const controlled = await page.evaluate(async () => {
    const { serviceWorker } = navigator;
    await serviceWorker.ready;
    if (!serviceWorker.controller) {
      await new Promise((resolve) => {
        serviceWorker.addEventListener('controllerchange', resolve, { once: true });
      });
    }
    return serviceWorker.controller !== null;
  });
  expect(controlled).toBe(true);
}

/** The status of an answer, or "none". */
function answerTo(page: Page, address: string): Promise<string> {
  return page.evaluate(
    (path) =>
      fetch(path).then(
        (response) => String(response.status),
        () => 'none',
      ),
    address,
  );
}

const heading = (page: Page) => page.getByRole('heading', { level: 1 }).first();

test('the page still opens after its server has gone', async ({ page, context }) => {
  // A server of its own that can be ended: the browser's offline switch does not reach the service worker.
  const server = await preview({ logLevel: 'error', preview: { host: '127.0.0.1', port: 0, open: false } });
  try {
    await page.goto(server.resolvedUrls?.local[0] ?? '');
    await expect(heading(page)).toBeVisible();
    const title = await heading(page).textContent();
    await expectControlled(page);

    await server.close();
    await context.setOffline(true);
    await page.reload();

    await expect(heading(page)).toBeVisible();
    expect(await heading(page).textContent()).toBe(title);
    // The icon belongs to the public folder, which is not part of what the bundler lists.
    expect(await answerTo(page, './favicon.svg')).toBe('200');
    // What was never stored shows that there truly is no network.
    expect(await answerTo(page, './never-stored.txt')).toBe('none');
  } finally {
    await server.close();
  }
});

test('the page asks no other origin for anything', async ({ page, baseURL }) => {
  const origins = new Set<string>();
  page.context().on('request', (request) => origins.add(new URL(request.url()).origin));
  await page.goto('./');
  await expect(heading(page)).toBeVisible();
  await expectControlled(page);
  await page.waitForLoadState('networkidle');
  expect([...origins]).toEqual([new URL(baseURL ?? '').origin]);
});

test('the page keeps to its content policy, and the policy is in force', async ({ page }) => {
  const violations = await recordViolations(page);
  await page.goto('./');
  await expect(heading(page)).toBeVisible();
  await expectControlled(page);
  expect(violations).toEqual([]);

  await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'document.documentElement.dataset.inlineRan = "yes"';
    document.body.append(script);
  });
  await expect.poll(() => violations).toEqual([expect.stringMatching(/^script-src/)]);
  expect(await page.evaluate(() => document.documentElement.dataset['inlineRan'])).toBeUndefined();
});
