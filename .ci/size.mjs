// First load: the compressed size of every script that the built page names. Run as a program it fails above the limit.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

/** In kB of 1000 bytes. */
export const FIRST_LOAD_LIMIT = 120;

const root = dirname(dirname(fileURLToPath(import.meta.url)));

/**
 * @param {string} html
 * @returns {string[]} addresses of module scripts and of what is preloaded for them
 */
export function scriptsOf(html) {
  const tags = html.match(/<(?:script|link)\b[^>]*>/g) ?? [];
  const addresses = tags.flatMap((tag) => {
    const isScript = tag.startsWith('<script');
    if (!isScript && !/\brel="?modulepreload\b/.test(tag)) return [];
    return (isScript ? /\bsrc="([^"]+)"/ : /\bhref="([^"]+)"/).exec(tag)?.[1] ?? [];
  });
  return [...new Set(addresses)];
}

/**
 * @param {string} folder the built page
 * @returns {{ name: string, kilobytes: number }[]} each script with its size, gzip level 9
 */
export function firstLoad(folder) {
  const page = join(folder, 'index.html');
  if (!existsSync(page)) throw new Error('There is no built page: run the build first.');
  const names = scriptsOf(readFileSync(page, 'utf8'));
  if (names.length === 0) throw new Error('The built page names no script, so nothing was measured.');
  return names.map((name) => ({
    name,
    kilobytes: gzipSync(readFileSync(join(folder, name)), { level: 9 }).length / 1000,
  }));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    const files = firstLoad(join(root, 'dist'));
    for (const { name, kilobytes } of files) console.log(`${kilobytes.toFixed(1).padStart(8)} kB  ${name}`);
    const sum = files.reduce((total, { kilobytes }) => total + kilobytes, 0);
    console.log(`${sum.toFixed(1).padStart(8)} kB  first load, gzip; limit ${FIRST_LOAD_LIMIT} kB`);
    if (sum > FIRST_LOAD_LIMIT) {
      console.error('The first load is above its limit.');
      process.exitCode = 1;
    }
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
