// Every check of the project, in order of speed: format and lint, types, typed lint, unit tests with coverage, build,
// size, browser tests. All of them run, whatever fails. The last line is "N passed, N failed".
// With --fast only the first three.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** @typedef {{ passed: number, failed: number, skipped?: number }} Counts */

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const reports = join(root, 'node_modules', '.cache', 'test-reports');
const unitReport = join(reports, 'unit.json');
const browserReport = join(reports, 'browser.json');

/** @returns {Promise<number>} */
function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}

/**
 * @param {string} script inside the project's folder
 * @param {string[]} words
 * @param {Record<string, string>} env
 */
function runs(script, words = [], env = {}) {
  // A NODE_ENV from outside would turn the build into a development build.
  const { NODE_ENV: _, ...present } = process.env;
  const result = spawnSync(process.execPath, [join(root, script), ...words], {
    cwd: root,
    stdio: 'inherit',
    env: { ...present, ...env },
  });
  return result.status === 0;
}

/**
 * @param {string} script
 * @param {string[]} words
 * @returns {() => Counts} one passed or one failed
 */
function whole(script, ...words) {
  return () => (runs(script, words) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 });
}

/** @param {string} file @returns {unknown} */
function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}

/**
 * A step that dies without counts, or fails for another reason than a test, counts as one failure.
 *
 * @param {boolean} succeeded
 * @param {Counts | undefined} counts
 * @returns {Counts}
 */
function orOneFailure(succeeded, counts) {
  if (!counts) return { passed: 0, failed: 1 };
  return succeeded || counts.failed > 0 ? counts : { ...counts, failed: 1 };
}

/** @returns {Counts} */
function unitTests() {
  rmSync(unitReport, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${unitReport}`];
  const succeeded = runs('node_modules/vitest/vitest.mjs', ['run', '--coverage', ...reporters]);
  const report =
    /** @type {{ numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number,
     *   testResults: { status: string, assertionResults: { status: string }[] }[] } | undefined} */ (
      readReport(unitReport)
    );
  if (!report) return orOneFailure(succeeded, undefined);
  // A file that cannot even be loaded has failed without a failed test in it.
  const deadFiles = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((result) => result.status === 'failed'),
  );
  return orOneFailure(succeeded, {
    passed: report.numPassedTests,
    failed: report.numFailedTests + deadFiles.length,
    skipped: report.numPendingTests + report.numTodoTests,
  });
}

/** @returns {Counts} */
function build() {
  // What follows must never look at an older build.
  rmSync(join(root, 'dist'), { recursive: true, force: true });
  return whole('node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn')();
}

/** @returns {Promise<Counts>} */
async function browserTests() {
  rmSync(browserReport, { force: true });
  const succeeded = runs('node_modules/@playwright/test/cli.js', ['test', '--reporter=list,json'], {
    PLAYWRIGHT_JSON_OUTPUT_FILE: browserReport,
    KNURLWRIGHT_TEST_PORT: String(await freePort()),
  });
  const report =
    /** @type {{ stats: { expected: number, unexpected: number, flaky: number, skipped: number } } | undefined} */ (
      readReport(browserReport)
    );
  return orOneFailure(
    succeeded,
    report && {
      passed: report.stats.expected,
      failed: report.stats.unexpected + report.stats.flaky,
      skipped: report.stats.skipped,
    },
  );
}

/** @type {[string, () => Counts | Promise<Counts>][]} */
const fastSteps = [
  ['Format and lint', whole('node_modules/@biomejs/biome/bin/biome', 'ci', '--error-on-warnings', '.')],
  ['Types', whole('node_modules/typescript/bin/tsc', '--noEmit')],
  ['Typed lint', whole('node_modules/oxlint/bin/oxlint', '--type-aware', '--deny-warnings')],
];
/** @type {typeof fastSteps} */
const slowSteps = [
  ['Unit tests', unitTests],
  ['Build', build],
  ['Size of the first load', whole('.ci/size.mjs')],
  ['Browser tests', browserTests],
];

mkdirSync(reports, { recursive: true });
/** @type {string[]} */
const summary = [];
let passed = 0;
let failed = 0;
for (const [name, step] of process.argv.includes('--fast') ? fastSteps : [...fastSteps, ...slowSteps]) {
  console.log(`\n── ${name}`);
  const begin = performance.now();
  const counts = await step();
  const seconds = ((performance.now() - begin) / 1000).toFixed(1);
  const skipped = counts.skipped ? `, ${counts.skipped} skipped` : '';
  summary.push(`${name}: ${counts.passed} passed, ${counts.failed} failed${skipped} (${seconds} s)`);
  passed += counts.passed;
  failed += counts.failed;
}
console.log(`\n${summary.join('\n')}\n\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
