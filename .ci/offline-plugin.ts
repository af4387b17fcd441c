import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Plugin } from 'vite';

/** The service worker; LIST and VERSION are put in front of it. Plain JavaScript that browsers run as it is. */
const WORKER = `
const prefix = 'knurlwright ' + registration.scope + ' ';
const name = prefix + VERSION;
const index = new URL('./', registration.scope).href;

addEventListener('install', (event) => {
  const requests = LIST.map((path) => new Request(new URL(path, registration.scope), { cache: 'reload' }));
  event.waitUntil(caches.open(name).then((cache) => cache.addAll(requests)));
});

addEventListener('activate', (event) => {
  const tidy = async () => {
    const old = (await caches.keys()).filter((key) => key.startsWith(prefix) && key !== name);
    await Promise.all(old.map((key) => caches.delete(key)));
    await clients.claim();
  };
  event.waitUntil(tidy());
});

// A new version waits until the page says so: nothing reloads while somebody is typing.
addEventListener('message', (event) => {
  if (event.data === 'skip-waiting') skipWaiting();
});

addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== location.origin) return;
  const wanted = request.mode === 'navigate' ? index : request;
  const answer = async () => {
    const cache = await caches.open(name);
    // Servers that send "Vary: Origin" would otherwise make module scripts miss the cache.
    return (await cache.match(wanted, { ignoreVary: true })) ?? fetch(request);
  };
  event.respondWith(answer());
});
`;

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

/**
 * Makes the built page work without a network: lists every file of the build and of the public folder, hashes
 * names and contents into a cache name, and emits the service worker "sw.js". The page registers it itself.
 */
export function offline(): Plugin {
  let publicDir = '';
  return {
    name: 'offline',
    apply: 'build',
    enforce: 'post',
    configResolved(config) {
      if (config.publicDir !== '') publicDir = config.publicDir;
    },
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const contents = new Map<string, string | Uint8Array>();
        for (const [name, file] of Object.entries(bundle)) {
          if (name.endsWith('.map')) continue;
          // The folder's own address stands for the page: some servers redirect "index.html" to it.
          contents.set(name === 'index.html' ? './' : name, file.type === 'chunk' ? file.code : file.source);
        }
        for (const path of publicDir === '' ? [] : filesBelow(publicDir)) {
          contents.set(relative(publicDir, path).split(sep).join('/'), readFileSync(path));
        }
        const list = [...contents.keys()].sort();
        const hash = createHash('sha256').update(WORKER);
        for (const name of list) {
          hash
            .update(`\0${name}\0`)
            .update(contents.get(name) ?? '')
            .update('\0');
        }
        const head = `const LIST = ${JSON.stringify(list)};\nconst VERSION = '${hash.digest('hex').slice(0, 16)}';\n`;
        this.emitFile({ type: 'asset', fileName: 'sw.js', source: head + WORKER });
      },
    },
  };
}
