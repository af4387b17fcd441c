import { defineConfig } from '@playwright/test';
import { browserFlags, findBrowser } from './.ci/find-browser.mjs';

const browser = findBrowser();
// "npm test" hands down a free port; this one is for running the browser tests alone.
const port = Number(process.env['KNURLWRIGHT_TEST_PORT'] ?? 4319);
const address = `http://127.0.0.1:${port}/`;

export default defineConfig({
  testDir: './tests/e2e',
  outputDir: './test-results',
  forbidOnly: Boolean(process.env['CI']),
  retries: 0,
  workers: 2,
  fullyParallel: true,
  timeout: 30_000,
  expect: { toHaveScreenshot: { maxDiffPixelRatio: 0.01 } },
  reporter: [['list']],
  use: {
    baseURL: address,
    browserName: 'chromium',
    launchOptions: {
      executablePath: browser.executablePath,
      args: browserFlags,
      env: { ...process.env, ...browser.env },
    },
    contextOptions: { reducedMotion: 'reduce' },
    // The worker that keeps the page for later would fetch all of it in each test; offline.spec.ts has it.
    serviceWorkers: 'block',
    locale: 'en-GB',
    timezoneId: 'UTC',
    // A trace would take nearly as long as the tests; "npx playwright test --trace on FILE" writes one.
    screenshot: 'only-on-failure',
  },
  projects: [
    { name: 'desktop', testIgnore: /phone\.spec/, use: { viewport: { width: 1440, height: 900 } } },
    {
      // What depends on the width: the rest would only be done twice.
      name: 'phone',
      testMatch: /(?:phone|axe|chance|text)\.spec/,
      // Two joints that look most different; the others differ from them in figures.
      grepInvert: /(?:Motor plate|Far-side mount|Meter cover|Loom clamp): no fault/,
      use: { viewport: { width: 390, height: 844 }, hasTouch: true },
    },
  ],
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --host 127.0.0.1 --port ${port} --strictPort`,
    url: address,
    reuseExistingServer: false,
  },
});
