// Finds a browser for the browser tests and the bench. Order: CHROME_PATH, when it is set; the Chromium inside an
// npm package (Linux on x64); a browser of the system. Run as a program it prints what it found.
import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { homedir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliDecompressSync } from 'node:zlib';

/**
 * @typedef {object} Browser
 * @property {string} executablePath
 * @property {'CHROME_PATH' | 'bundled' | 'system'} origin
 * @property {Record<string, string>} env what the browser needs besides the present environment
 */

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const packageFolder = join(root, 'node_modules', '@sparticuz', 'chromium');
const cacheFolder = join(root, 'node_modules', '.cache');

/** Flags for every browser that is started by tests or bench. */
export const browserFlags = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--font-render-hinting=none',
  ...(process.getuid?.() === 0 || process.env['CI'] ? ['--no-sandbox'] : []),
];

/**
 * @param {string} executablePath
 * @param {Record<string, string>} env
 */
function starts(executablePath, env) {
  const result = spawnSync(executablePath, ['--version'], {
    env: { ...process.env, ...env },
    stdio: 'ignore',
    timeout: 30_000,
  });
  return result.status === 0;
}

/**
 * Unpacks the bundled browser once. The work is done in a folder of its own and then renamed, so that two
 * processes cannot meet in a half-filled one.
 *
 * @returns {string} the folder
 */
function unpackBundled() {
  // The package does not export its package.json, so it is read by its path.
  const description = readFileSync(join(packageFolder, 'package.json'), 'utf8');
  const { version } = /** @type {{ version: string }} */ (JSON.parse(description));
  const folder = join(cacheFolder, `chromium-${version}`);
  if (existsSync(folder)) return folder;
  mkdirSync(cacheFolder, { recursive: true });
  const unfinished = mkdtempSync(join(cacheFolder, 'chromium-unpacking-'));
  try {
    const packed = join(packageFolder, 'bin');
    for (const name of readdirSync(packed).filter((file) => file.endsWith('.br'))) {
      const target = join(unfinished, name.slice(0, -'.br'.length));
      writeFileSync(target, brotliDecompressSync(readFileSync(join(packed, name))), { mode: 0o755 });
      if (!target.endsWith('.tar')) continue;
      // From a file: tar closes its input early, which breaks a pipe.
      const untar = spawnSync('tar', ['-xf', target, '-C', unfinished], { encoding: 'utf8' });
      if (untar.status !== 0) throw new Error(`The bundled browser could not be unpacked: ${untar.stderr}`);
      rmSync(target);
    }
    // The package's own font settings name folders that only its usual surroundings have.
    const settings = `<dir>${join(folder, 'fonts')}</dir><cachedir>${join(folder, 'font-cache')}</cachedir>`;
    writeFileSync(
      join(unfinished, 'fonts.conf'),
      `<?xml version="1.0"?>\n<fontconfig>${settings}</fontconfig>\n`,
    );
    renameSync(unfinished, folder);
  } catch (error) {
    rmSync(unfinished, { recursive: true, force: true });
    // Another process was first: its folder is as good.
    if (!existsSync(folder)) throw error;
  }
  return folder;
}

function hasSystemFonts() {
  const places = ['/usr/share/fonts', '/usr/local/share/fonts', join(homedir(), '.fonts')];
  const isFont = (/** @type {string | Buffer} */ name) => /\.(ttf|otf|ttc|pfb)$/i.test(String(name));
  return (
    existsSync('/etc/fonts/fonts.conf') &&
    places.some((place) => existsSync(place) && readdirSync(place, { recursive: true }).some(isFont))
  );
}

/** @returns {Browser | undefined} */
function bundledBrowser() {
  if (process.platform !== 'linux' || process.arch !== 'x64' || !existsSync(packageFolder)) return undefined;
  const folder = unpackBundled();
  const executablePath = join(folder, 'chromium');
  /** @type {Record<string, string>} */
  const fonts = hasSystemFonts() ? {} : { FONTCONFIG_PATH: folder };
  if (starts(executablePath, fonts)) return { executablePath, origin: 'bundled', env: fonts };
  // Systems without the libraries that a browser expects: the package brings them along.
  const libraries = [join(folder, 'lib'), process.env['LD_LIBRARY_PATH']].filter(Boolean);
  const env = { ...fonts, LD_LIBRARY_PATH: libraries.join(delimiter) };
  return starts(executablePath, env) ? { executablePath, origin: 'bundled', env } : undefined;
}

/** @returns {string[]} */
function systemPlaces() {
  if (process.platform === 'darwin') {
    const applications = ['/Applications', join(homedir(), 'Applications')];
    const names = ['Google Chrome', 'Chromium', 'Microsoft Edge'];
    return applications.flatMap((folder) =>
      names.map((name) => `${folder}/${name}.app/Contents/MacOS/${name}`),
    );
  }
  if (process.platform === 'win32') {
    const folders = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap(
      (name) => process.env[name] ?? [],
    );
    const files = [
      'Google/Chrome/Application/chrome.exe',
      'Chromium/Application/chrome.exe',
      'Microsoft/Edge/Application/msedge.exe',
    ];
    return folders.flatMap((folder) => files.map((file) => join(folder, file)));
  }
  const folders = [
    ...(process.env['PATH'] ?? '').split(delimiter),
    '/usr/bin',
    '/usr/local/bin',
    '/snap/bin',
  ];
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'];
  return names.flatMap((name) => folders.filter(Boolean).map((folder) => join(folder, name)));
}

/** @returns {Browser} */
export function findBrowser() {
  const wish = process.env['CHROME_PATH'];
  if (wish) {
    if (!existsSync(wish)) throw new Error(`CHROME_PATH names a file that does not exist: ${wish}`);
    return { executablePath: wish, origin: 'CHROME_PATH', env: {} };
  }
  const bundled = bundledBrowser();
  if (bundled) return bundled;
  const system = systemPlaces().find((place) => existsSync(place));
  if (system) return { executablePath: system, origin: 'system', env: {} };
  throw new Error('No browser found: install Chrome, Chromium or Edge, or set CHROME_PATH to one.');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    const { executablePath, origin } = findBrowser();
    console.log(`${executablePath} (${origin})`);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
