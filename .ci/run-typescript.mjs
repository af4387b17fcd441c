// Runs a TypeScript entry of this project on a Node that cannot: bundles it once into node_modules/.cache, under a
// hash of everything it could be made from, and imports the bundle. Prints nothing of its own.
// Run as a program: node .ci/run-typescript.mjs ENTRY [what the entry reads from process.argv …]
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { basename, dirname, extname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const cacheFolder = join(root, 'node_modules', '.cache', 'run-typescript');
const ROOTS = [
  'src',
  'tests/bench',
  'tests/fixtures/iso-965',
  'tests/fixtures/published',
  'tests/support',
  'tests/verification',
];

/** @param {string} folder */
function filesBelow(folder) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

/**
 * Removes bundles of earlier states of the same entry, unless somebody may still be running them.
 *
 * @param {string} name
 */
function removeOld(name) {
  const anHourAgo = Date.now() - 3_600_000;
  for (const folder of readdirSync(cacheFolder).filter((other) => other.startsWith(`${name}-`))) {
    const path = join(cacheFolder, folder);
    const made = statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? anHourAgo;
    if (made < anHourAgo) rmSync(path, { recursive: true, force: true });
  }
}

/** @param {string} entry */
function stateOf(entry) {
  const hash = createHash('sha256').update(entry);
  const made = ROOTS.flatMap((folder) => filesBelow(join(root, folder)));
  const steering = ['package-lock.json', 'tsconfig.json'].map((name) => join(root, name));
  for (const file of new Set([entry, fileURLToPath(import.meta.url), ...steering, ...made])) {
    hash.update(`\0${file}\0`).update(readFileSync(file));
  }
  return hash.digest('hex').slice(0, 20);
}

/**
 * @param {string} entry
 * @param {string} folder
 */
async function bundle(entry, folder) {
  // Only here: loading the bundler takes longer than most runs.
  const { build } = await import('vite');
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    ssr: { noExternal: true },
    build: {
      ssr: entry,
      outDir: folder,
      emptyOutDir: false,
      target: 'node20',
      minify: false,
      sourcemap: 'inline',
      rolldownOptions: { output: { entryFileNames: 'entry.mjs', chunkFileNames: '[name]-[hash].mjs' } },
    },
  });
}

/**
 * @param {string} path of the entry, absolute or from the project's folder
 * @returns {Promise<string>} the bundle's file
 */
export async function bundled(path) {
  const entry = resolve(root, path);
  if (!existsSync(entry)) throw new Error(`There is no ${path}.`);
  const name = basename(entry, extname(entry));
  const folder = join(cacheFolder, `${name}-${stateOf(entry)}`);
  const file = join(folder, 'entry.mjs');
  if (existsSync(file)) return file;
  mkdirSync(cacheFolder, { recursive: true });
  removeOld(name);
  const unfinished = mkdtempSync(join(cacheFolder, 'unfinished-'));
  try {
    await bundle(entry, unfinished);
    renameSync(unfinished, folder);
  } catch (error) {
    rmSync(unfinished, { recursive: true, force: true });
    // Another process was first: its bundle is the same.
    if (!existsSync(file)) throw error;
  }
  return file;
}

/**
 * @param {string} path of the entry, absolute or from the project's folder
 * @returns {Promise<unknown>} what the entry exports
 */
export async function importTypescript(path) {
  const file = await bundled(path);
  return import(pathToFileURL(file).href);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [node = '', , entry = '', ...rest] = process.argv;
  process.setSourceMapsEnabled(true);
  try {
    const file = await bundled(entry);
    process.argv = [node, resolve(root, entry), ...rest];
    // npm moves to the project's folder and keeps here where the user was: their paths start there.
    const { INIT_CWD, npm_lifecycle_script: script = '' } = process.env;
    if (INIT_CWD && script.includes('.ci/run-typescript.mjs')) process.chdir(INIT_CWD);
    await import(pathToFileURL(file).href);
  } catch (error) {
    console.error(error);
    process.exitCode = 1;
  }
}
