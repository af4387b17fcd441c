// Builds the page, serves it on this computer alone, and prints the address.
import { spawn } from 'node:child_process';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, preview } from 'vite';

const FIRST_PORT = 4173;
const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** @param {string} address */
function openBrowser(address) {
  const starters = { darwin: ['open'], win32: ['cmd', '/c', 'start', ''] };
  const [command = '', ...words] =
    process.platform === 'darwin' || process.platform === 'win32' ? starters[process.platform] : ['xdg-open'];
  const child = spawn(command, [...words, address], { stdio: 'ignore', detached: true });
  // No opener on this system: the printed address is enough.
  child.on('error', () => undefined);
  child.unref();
}

await build({ root, logLevel: 'warn' });
// Not strict: the next free port is taken when this one is busy.
const server = await preview({
  root,
  logLevel: 'warn',
  preview: { host: '127.0.0.1', port: FIRST_PORT, strictPort: false, open: false },
});
const address = server.resolvedUrls?.local[0] ?? '';
console.log(`Knurlwright is at ${address} (Ctrl+C ends it)`);
const wanted = process.stdout.isTTY && !process.env['CI'] && !process.env['NO_OPEN'];
if (wanted) openBrowser(address);
