import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { contentPolicy } from './.ci/content-policy-plugin.ts';
import { offline } from './.ci/offline-plugin.ts';
import { ProjectByProject } from './.ci/test-order.ts';

/** Tests of what happens before a part of the program has been fetched: what they load, they load anew. */
const FRESH = ['tests/app/quantity/parse-quantity.test.ts', 'tests/app/fields/quantity-field.test.tsx'];

export default defineConfig({
  // Relative addresses: the build can be served from any folder.
  base: './',
  plugins: [react(), contentPolicy(), offline()],
  build: {
    target: 'es2022',
    sourcemap: true,
    modulePreload: { polyfill: false },
    // Nothing becomes a data: address, which the content policy allows for pictures only.
    assetsInlineLimit: 0,
    // What the page begins with is one script: in pieces, split for what loads later, it is larger by 5 kB compressed.
    rolldownOptions: {
      output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } },
    },
  },
  test: {
    environment: 'node',
    pool: 'threads',
    maxWorkers: '100%',
    sequence: { sequencer: ProjectByProject },
    // Files share what they have loaded, and those of the page one document, which page-setup.ts clears.
    isolate: false,
    unstubGlobals: true,
    projects: [
      { extends: true, test: { name: 'pure', include: ['tests/**/*.test.ts'], exclude: FRESH } },
      {
        extends: true,
        test: {
          name: 'page',
          include: ['tests/**/*.test.tsx'],
          exclude: FRESH,
          setupFiles: ['tests/support/page-setup.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'fresh',
          include: FRESH,
          isolate: true,
          setupFiles: ['tests/support/page-setup.ts'],
        },
      },
    ],
    // A busy machine is slow, not wrong: how long something takes is measured by the bench.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    expect: { poll: { timeout: 20_000 } },
    coverage: {
      provider: 'v8',
      include: ['src/core/**/*.ts'],
      reporter: ['text-summary', 'json-summary', 'html'],
      // The core alone: thresholds over the whole program would hide a bare core.
      thresholds: { 'src/core/**': { lines: 90, branches: 85 } },
    },
  },
});
