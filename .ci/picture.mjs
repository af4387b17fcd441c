// Takes docs/page.png, the picture in README.md, from the built page: node .ci/picture.mjs
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { browserFlags, findBrowser } from './find-browser.mjs';

const target = join(import.meta.dirname, '..', 'docs', 'page.png');
const { executablePath, env } = findBrowser();
const server = await preview({ logLevel: 'error', preview: { host: '127.0.0.1', port: 0, open: false } });
const browser = await chromium.launch({
  executablePath,
  args: browserFlags,
  env: /** @type {Record<string, string>} */ ({ ...process.env, ...env }),
});
try {
  const page = await browser.newPage({
    viewport: { width: 1440, height: 900 },
    colorScheme: 'light',
    reducedMotion: 'reduce',
    locale: 'en-GB',
  });
  await page.goto(server.resolvedUrls?.local[0] ?? '');
  await page.getByRole('contentinfo').waitFor();
  await page.getByRole('heading', { name: 'Knurl pull-out over length' }).waitFor();
  await page.screenshot({ path: target });
} finally {
  await browser.close();
  await server.close();
}
