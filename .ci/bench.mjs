// Measures what a person waits for, against the bars below. It only prints: timings depend on the machine and what
// else it does, so they are no pass or fail. It ends with an error when something could not be measured at all.
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { build, preview } from 'vite';
import { browserFlags, findBrowser } from './find-browser.mjs';
import { importTypescript } from './run-typescript.mjs';
import { FIRST_LOAD_LIMIT, firstLoad } from './size.mjs';

/** @typedef {import('@playwright/test').Page} Page */
/** @typedef {{ first: number, inWindow: number, settled: number }} Paint from the event on, ms */

/**
 * The fields that are edited in turn, by label and by where the page is scrolled: with the drawing in the window, and
 * with the charts of the ranking near it, which then follow each edit. The first visible field is taken.
 */
const EDITED_FIELDS = [
  { label: /knurl (diameter|length)/i, within: '#joint', place: 'the drawing in the window' },
  { label: /^line width/i, within: '#given', place: 'the charts of the ranking near the window' },
];
/** What is added in turn to the number that stands in the field, so that each edit changes it. */
const STEPS = [0.02, 0.04, 0.01, 0.03];
const SLOW_DOWN = 4;
const REPEATS = 15;
const WARM_UPS = 3;
/** The engine has compiled the ranking for good after about so many. */
const RANKING_WARM_UPS = 25;
const PAINT_BAR = 50;
/** The page counts as settled when nothing in it has changed for this long: longer than what is away may wait. */
const QUIET = 700;
/** How long to wait for the event itself. */
const LONGEST = 5000;
/** The joints that ranking and sampling are measured with: the usual one, and the one that takes longest. */
const JOINTS = ['usual', 'heavy'];
/** Exports rank(joint), which ranks 1,000 inserts once and returns a list with one entry for each of them. */
const RANKING_ENTRY = 'tests/bench/ranking.ts';
const RANKED = 1000;
const RANKING_BAR = 10;
/** Exports sample(joint), which draws a million joints once and returns their number as `samples`. */
const CHANCE_ENTRY = 'tests/bench/chance.ts';
const SAMPLED = 1_000_000;
const CHANCE_BAR = 250;
/** Exports largeFiles(), a binary STL and a 3MF of about 20 MB, and holesIn(), which reads one and counts its holes. */
const HOLES_ENTRY = 'tests/bench/holes.ts';
/** A page whose holesAt() has the worker do the same with the file at an address. */
const HOLES_PAGE = 'tests/bench/holes.html';
const HOLES_FOLDER = 'node_modules/.cache/bench-holes';
const HOLES_REPEATS = 5;
const HOLES_BAR = 3000;

const root = dirname(dirname(fileURLToPath(import.meta.url)));

/**
 * @param {number[]} milliseconds
 * @returns {string}
 */
function spreadOf(milliseconds) {
  const sorted = [...milliseconds].sort((a, b) => a - b);
  const at = (/** @type {number} */ share) =>
    (sorted[Math.round(share * (sorted.length - 1))] ?? Number.NaN).toFixed(1);
  return `min ${at(0)}, median ${at(0.5)}, max ${at(1)} ms`;
}

function benchSize() {
  const sum = firstLoad(join(root, 'dist')).reduce((total, { kilobytes }) => total + kilobytes, 0);
  console.log(`First load: ${sum.toFixed(1)} kB gzip (limit ${FIRST_LOAD_LIMIT} kB)`);
}

async function benchRanking() {
  if (!existsSync(join(root, RANKING_ENTRY))) throw new Error(`${RANKING_ENTRY} is missing.`);
  const { rank } = /** @type {{ rank?: unknown }} */ (await importTypescript(RANKING_ENTRY));
  if (typeof rank !== 'function') throw new Error(`${RANKING_ENTRY} exports no function "rank".`);
  for (const joint of JOINTS) rankTimes(rank, joint);
}

/**
 * @param {Function} rank
 * @param {string} joint
 */
function rankTimes(rank, joint) {
  /** @type {number[]} */
  const times = [];
  let first = Number.NaN;
  for (let run = 0; run < RANKING_WARM_UPS + REPEATS; run += 1) {
    const begin = performance.now();
    /** @type {unknown} */
    const ranked = Reflect.apply(rank, undefined, [joint]);
    const time = performance.now() - begin;
    if (run === 0) first = time;
    if (run >= RANKING_WARM_UPS) times.push(time);
    if (!Array.isArray(ranked) || ranked.length !== RANKED) {
      throw new Error(`rank() did not return a list of ${RANKED} inserts.`);
    }
  }
  console.log(
    `Ranking of ${RANKED} inserts for the ${joint} joint, ${REPEATS} times after ${RANKING_WARM_UPS} others: ${spreadOf(times)} (bar ${RANKING_BAR} ms)\n` +
      `  the very first time, not compiled yet: ${first.toFixed(1)} ms`,
  );
}

async function benchChance() {
  const { sample } = /** @type {{ sample?: unknown }} */ (await importTypescript(CHANCE_ENTRY));
  if (typeof sample !== 'function') throw new Error(`${CHANCE_ENTRY} exports no function "sample".`);
  for (const joint of JOINTS) sampleTimes(sample, joint);
}

/**
 * @param {Function} sample
 * @param {string} joint
 */
function sampleTimes(sample, joint) {
  /** @type {number[]} */
  const times = [];
  for (let run = 0; run < WARM_UPS + REPEATS; run += 1) {
    const begin = performance.now();
    /** @type {unknown} */
    const result = Reflect.apply(sample, undefined, [joint]);
    if (run >= WARM_UPS) times.push(performance.now() - begin);
    const drawn = typeof result === 'object' && result !== null && 'samples' in result ? result.samples : 0;
    if (drawn !== SAMPLED) throw new Error(`sample() did not draw ${SAMPLED} joints.`);
  }
  console.log(
    `Sampling of ${SAMPLED} times the ${joint} joint, ${REPEATS} times: ${spreadOf(times)} (bar ${CHANCE_BAR} ms)`,
  );
}

/**
 * @typedef {{ name: string, bytes: Uint8Array<ArrayBuffer>, holes: number }} LargeFile
 * @typedef {{ total: number, milliseconds: number }} Counted
 */

/**
 * Has the worker of a built page find the holes of each file, several times.
 *
 * @param {readonly LargeFile[]} files
 * @returns {Promise<number[][]>} milliseconds for each file
 */
async function holesInBrowser(files) {
  const outDir = join(root, HOLES_FOLDER);
  const rolldownOptions = { input: join(root, HOLES_PAGE) };
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    build: { outDir, rolldownOptions },
  });
  const server = await preview({
    root,
    configFile: false,
    logLevel: 'error',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0, open: false },
  });
  const { executablePath, env } = findBrowser();
  const launched = await chromium.launch({
    executablePath,
    args: browserFlags,
    env: { ...process.env, ...env },
  });
  try {
    const page = await launched.newPage();
    for (const { name, bytes } of files)
      await page.route(`**/${name}`, (route) => route.fulfill({ body: Buffer.from(bytes) }));
    await page.goto(`${server.resolvedUrls?.local[0] ?? ''}${HOLES_PAGE}`);
    /** @type {number[][]} */
    const times = [];
    for (const { name, holes } of files) {
      /** @type {number[]} */
      const ofFile = [];
      for (let run = 0; run < HOLES_REPEATS; run += 1) {
        const { total, milliseconds } = /** @type {Counted} */ (await page.evaluate(`holesAt('/${name}')`));
        if (total !== holes) throw new Error(`The worker found ${total} holes of ${holes} in ${name}.`);
        ofFile.push(milliseconds);
      }
      times.push(ofFile);
    }
    return times;
  } finally {
    await launched.close();
    await server.close();
  }
}

async function benchHoles() {
  const { largeFiles, holesIn } =
    /** @type {{ largeFiles: () => LargeFile[], holesIn: (file: LargeFile) => Promise<number> }} */ (
      await importTypescript(HOLES_ENTRY)
    );
  const files = largeFiles();
  const browser = await holesInBrowser(files);
  for (const [place, file] of files.entries()) {
    /** @type {number[]} */
    const times = [];
    for (let run = 0; run < HOLES_REPEATS; run += 1) {
      const begin = performance.now();
      if ((await holesIn(file)) !== file.holes)
        throw new Error(`Not all ${file.holes} holes of ${file.name} were found.`);
      times.push(performance.now() - begin);
    }
    console.log(
      `Holes of ${file.name}, ${(file.bytes.length / 1e6).toFixed(1)} MB, ${HOLES_REPEATS} times (bar ${HOLES_BAR} ms):\n` +
        `  in the page's worker: ${spreadOf(browser[place] ?? [])}\n` +
        `  in Node:              ${spreadOf(times)}`,
    );
  }
}

/**
 * How long a fixed loop takes in the page: shows how much slower the page really runs.
 *
 * @param {Page} page
 */
function loopTime(page) {
  return page.evaluate(() => {
    const begin = performance.now();
    let sum = 0;
    for (let i = 0; i < 2e7; i += 1) sum += Math.sqrt(i);
    return sum > 0 ? performance.now() - begin : Number.NaN;
  });
}

/**
 * Does something to the page and measures in it from the event that arrives to the second animation frame after the
 * page's first change, after the last in a part of the page that is in the window, and after its last anywhere.
 *
 * @param {Page} page
 * @param {() => Promise<void>} act
 * @returns {Promise<Paint | undefined>} undefined when nothing changed
 */
async function paintAfter(page, act) {
  const measured = await page.evaluateHandle(
    ([quiet, longest]) => {
      let begin = Number.NaN;
      let first = Number.NaN;
      let inWindow = Number.NaN;
      let settled = Number.NaN;
      // Found out beforehand: to ask for places while things change would cost layouts of its own.
      const parts = [...document.querySelectorAll('main > *, main ~ *')];
      const away = new Set(
        parts.filter((part) => {
          const { top, bottom } = part.getBoundingClientRect();
          return bottom <= 0 || top >= innerHeight;
        }),
      );
      const isInWindow = (/** @type {MutationRecord} */ { target }) => {
        const element = target instanceof Element ? target : target.parentElement;
        const part = element?.closest('main > *, main ~ *');
        return !part || !away.has(part);
      };
      let lastChange = performance.now();
      const start = (/** @type {Event} */ event) => {
        if (Number.isNaN(begin)) begin = event.timeStamp;
        lastChange = performance.now();
      };
      const observer = new MutationObserver((changes) => {
        lastChange = performance.now();
        const isSeen = changes.some(isInWindow);
        requestAnimationFrame(() =>
          requestAnimationFrame(() => {
            settled = performance.now() - begin;
            if (Number.isNaN(first)) first = settled;
            if (isSeen) inWindow = settled;
          }),
        );
      });
      for (const kind of ['input', 'keydown']) addEventListener(kind, start, { capture: true, once: true });
      observer.observe(document.body, {
        subtree: true,
        childList: true,
        characterData: true,
        attributes: true,
      });
      const done = new Promise((resolve) => {
        const look = () => {
          const patience = Number.isNaN(begin) ? longest : quiet;
          if (performance.now() - lastChange < patience) {
            setTimeout(look, 50);
            return;
          }
          observer.disconnect();
          for (const kind of ['input', 'keydown']) removeEventListener(kind, start, { capture: true });
          resolve(Number.isNaN(first) ? undefined : { first, inWindow, settled });
        };
        look();
      });
      return { done: /** @type {Promise<Paint | undefined>} */ (done) };
    },
    /** @type {const} */ ([QUIET, LONGEST]),
  );
  await act();
  return measured.evaluate(({ done }) => done);
}

/**
 * @param {Page} page
 * @param {(typeof EDITED_FIELDS)[number]} edited
 */
async function benchEdits(page, { label, within, place }) {
  const field = page.locator(`${within} input`).and(page.getByLabel(label)).filter({ visible: true }).first();
  await field.waitFor({ timeout: 10_000 }).catch(() => {
    throw new Error(`The page shows no field with a label like ${label} in ${within}.`);
  });
  const present = Number((await field.inputValue()).replace(',', '.'));
  if (!(present > 0)) throw new Error('The field to edit holds no plain number.');
  await field.evaluate((element) => element.scrollIntoView({ block: 'center' }));

  /** @type {Paint[]} */
  const edits = [];
  for (let run = 0; run < WARM_UPS + REPEATS; run += 1) {
    const before = await page.locator('body').textContent();
    const text = (present + (STEPS[run % STEPS.length] ?? 0)).toFixed(2);
    await field.focus();
    await field.selectText();
    // Some fields answer while typing and some when the value is committed: the slower of the two counts.
    const paints = [
      await paintAfter(page, () => page.keyboard.insertText(text)),
      await paintAfter(page, () => field.press('Enter')),
      await paintAfter(page, () => field.press('Tab')),
    ].filter((paint) => paint !== undefined);
    if ((await page.locator('body').textContent()) === before)
      throw new Error(`Typing ${text} changed no text.`);
    if (run < WARM_UPS) continue;
    const slowest = (/** @type {keyof Paint} */ until) =>
      Math.max(...paints.map((paint) => paint[until]).filter((time) => !Number.isNaN(time)));
    edits.push({ first: slowest('first'), inWindow: slowest('inWindow'), settled: slowest('settled') });
  }
  const spread = (/** @type {keyof Paint} */ until) => spreadOf(edits.map((edit) => edit[until]));
  console.log(
    `Edit to paint with ${place}, ${REPEATS} times:\n` +
      `  until its first change:          ${spread('first')}\n` +
      `  until all in the window changed: ${spread('inWindow')} (bar ${PAINT_BAR} ms)\n` +
      `  until the whole page changed:    ${spread('settled')}`,
  );
}

/**
 * Slows the page down from now on.
 *
 * @param {Page} page
 */
async function slowDown(page) {
  const usual = await loopTime(page);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOW_DOWN });
  const slow = await loopTime(page);
  console.log(`Page slowed ${SLOW_DOWN} times (a fixed loop: ${(slow / usual).toFixed(1)} times)`);
}

async function benchPaint() {
  const server = await preview({
    root,
    logLevel: 'error',
    preview: { host: '127.0.0.1', port: 0, open: false },
  });
  const { executablePath, env } = findBrowser();
  const launched = await chromium.launch({
    executablePath,
    args: browserFlags,
    env: { ...process.env, ...env },
  });
  try {
    const page = await launched.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
    await page.goto(server.resolvedUrls?.local[0] ?? '');
    await page.waitForLoadState('networkidle');
    await slowDown(page);
    for (const edited of EDITED_FIELDS) await benchEdits(page, edited);
  } finally {
    await launched.close();
    await server.close();
  }
}

await build({ root, logLevel: 'warn' });
/** @type {(() => void | Promise<void>)[]} */
const benches = [benchSize, benchRanking, benchChance, benchHoles, benchPaint];
for (const bench of benches) {
  try {
    await bench();
  } catch (error) {
    console.error(`Not measured: ${error instanceof Error ? error.message : String(error)}`);
    process.exitCode = 1;
  }
}
