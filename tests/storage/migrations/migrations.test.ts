import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DOCUMENT_VERSION } from '../../../src/storage/document.ts';
import { FIRST_VERSION, MIGRATIONS, migrated } from '../../../src/storage/migrations/migrations.ts';
import { openDocument } from '../../../src/storage/open-document.ts';

const folder = join(import.meta.dirname, '..', '..', 'fixtures', 'documents');

/** A real file of a released version. */
const kept = (version: number): Record<string, unknown> =>
  JSON.parse(readFileSync(join(folder, `version-${version}.json`), 'utf8')) as Record<string, unknown>;

const versions = Array.from(
  { length: DOCUMENT_VERSION - FIRST_VERSION + 1 },
  (_, index) => FIRST_VERSION + index,
);

describe('the migrations', () => {
  test('lead from the first version to the present one without a gap', () => {
    expect(MIGRATIONS.map(({ to }) => to)).toEqual(versions.slice(1));
  });
  test('each have a file of their own, numbered by the version they lead to', () => {
    const files = readdirSync(join(import.meta.dirname, '..', '..', '..', 'src', 'storage', 'migrations'));
    for (const { to } of MIGRATIONS) {
      expect(files.filter((file) => file.startsWith(String(to).padStart(4, '0')))).toHaveLength(1);
    }
  });
  test.each(MIGRATIONS.map(({ to, migrate }) => [to, migrate] as const))(
    'to version %d turn the kept file of the version before into that of this one',
    (to, migrate) => {
      expect(migrate(kept(to - 1))).toEqual(kept(to));
    },
  );
  test.each(versions)('a file of version %d still opens', (version) => {
    const opened = openDocument(kept(version));
    expect(opened.kind).toBe('opened');
    expect(opened).toEqual(openDocument(kept(DOCUMENT_VERSION)));
  });
  test('leave a present document alone', () => {
    expect(migrated(kept(DOCUMENT_VERSION), DOCUMENT_VERSION)).toEqual(kept(DOCUMENT_VERSION));
  });
  test('leave what is no object for the schema to refuse', () => {
    expect(openDocument({ ...kept(1), joint: 7 }).kind).toBe('refused');
  });
});
