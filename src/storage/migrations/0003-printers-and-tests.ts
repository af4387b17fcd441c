import type { Migration } from './migration.ts';

/** Version 3: printers with their measured holes, tests at the bench, holes that are there already. */
export const printersAndTests: Migration = {
  to: 3,
  migrate: (document) => ({ ...document, version: 3, printers: [], tests: [], evidence: 'used' }),
};
