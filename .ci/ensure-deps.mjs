// Installs what package-lock.json names, unless it is there already. Node's own modules only: nothing else
// is installed yet. With --quiet it prints nothing when all goes well.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const LEAST_NODE = [20, 19];
const root = dirname(dirname(fileURLToPath(import.meta.url)));
const stampFile = join(root, 'node_modules', '.installed-state');
const quiet = process.argv.includes('--quiet');

/** @param {string} text */
function say(text) {
  if (!quiet) console.error(text);
}

/**
 * @param {string} text
 * @returns {never}
 */
function stop(text) {
  console.error(text);
  process.exit(1);
}

function nodeIsTooOld() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [leastMajor = 0, leastMinor = 0] = LEAST_NODE;
  return major < leastMajor || (major === leastMajor && minor < leastMinor);
}

/** The installed state that is wanted, as one hash: file times mean nothing after a clone. */
function wantedState() {
  const hash = createHash('sha256').update(readFileSync(join(root, 'package-lock.json')));
  return hash.update(`${process.platform} ${process.arch} ${process.versions.modules}`).digest('hex');
}

function installedState() {
  try {
    return readFileSync(stampFile, 'utf8');
  } catch {
    return '';
  }
}

/** @param {string[]} words */
function npm(...words) {
  const npmScript = process.env['npm_execpath'];
  const options = ['--prefer-offline', '--no-audit', '--no-fund', '--include=dev', '--include=optional'];
  const [command, ahead] = npmScript ? [process.execPath, [npmScript]] : ['npm', []];
  // What npm prints goes to the error stream, so that a program's own output stays alone on the other.
  const result = spawnSync(command, [...ahead, ...words, ...options], {
    cwd: root,
    env: { ...process.env, NODE_ENV: '' },
    stdio: quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 2, 2],
    shell: !npmScript && process.platform === 'win32',
    encoding: 'utf8',
  });
  const printed = quiet ? `${result.stdout}${result.stderr}` : '';
  return { done: result.status === 0, printed };
}

if (nodeIsTooOld()) {
  stop(`Knurlwright needs Node ${LEAST_NODE.join('.')} or newer; this is ${process.versions.node}.`);
}

const wanted = wantedState();
/** What is installed when the lock file was refused: good enough for a user, not for CI. */
const unlocked = `${wanted} without the lock file`;
const inCi = Boolean(process.env['CI']);
const installed = installedState();
if (installed !== wanted && (inCi || installed !== unlocked)) {
  say('Installing the packages (once) …');
  let state = wanted;
  let result = npm('ci');
  if (!result.done && !inCi) {
    state = unlocked;
    console.error(
      'The lock file was refused; installing without it. Versions may differ from the tested ones.',
    );
    result = npm('install', '--no-package-lock');
  }
  if (!result.done) stop(`${result.printed}\nThe packages could not be installed.`);
  // The stamp comes last, so that a broken install is done again.
  mkdirSync(dirname(stampFile), { recursive: true });
  writeFileSync(stampFile, state);
}
