import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { MEANINGS } from '../../src/wording/symbol-meanings.ts';

const FOLDER = new URL('../../src/wording/', import.meta.url);
const LISTS = readdirSync(FOLDER).filter(
  (file) => file.endsWith('-meanings.ts') && file !== 'symbol-meanings.ts',
);

test('no symbol stands in two of the lists of meanings, and every list is among them', async () => {
  expect(LISTS.length).toBeGreaterThan(5);
  const lists = await Promise.all(
    LISTS.map(async (file) =>
      Object.values((await import(new URL(file, FOLDER).href)) as Record<string, object>),
    ),
  );
  const keys = lists.flat().flatMap((list) => Object.keys(list));
  expect(keys.toSorted()).toEqual(Object.keys(MEANINGS).toSorted());
});
