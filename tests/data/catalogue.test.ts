import { describe, expect, test } from 'vitest';
import { SOURCES } from '../../src/core/sources/sources.ts';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import { LENGTH_TOLERANCES } from '../../src/data/length-tolerances.ts';
import { TORQUE_TOOL_CLASSES } from '../../src/data/torque-tools.ts';

/** Every text that stands under a key named for a source, however deep. */
function sourcesIn(part: unknown): readonly string[] {
  if (typeof part !== 'object' || part === null) return [];
  return Object.entries(part).flatMap(([key, value]) =>
    typeof value === 'string' ? (/source$/i.test(key) ? [value] : []) : sourcesIn(value),
  );
}

function expectUnique(keys: readonly string[]): void {
  expect(keys.length).toBeGreaterThan(0);
  expect(keys).toEqual([...new Set(keys)]);
}

const threadIds = CATALOGUE.threads.map(({ id }) => id);
const classIds = CATALOGUE.propertyClasses.map(({ id }) => id);

describe('CATALOGUE', () => {
  test.each([
    ['threads', CATALOGUE.threads, 3],
    ['propertyClasses', CATALOGUE.propertyClasses, 1],
    ['breakingTorques', CATALOGUE.breakingTorques, 1],
    ['heads', CATALOGUE.heads, 1],
    ['washers', CATALOGUE.washers, 1],
    ['screwLengths', CATALOGUE.screwLengths, 1],
    ['frictionConditions', CATALOGUE.frictionConditions, 1],
    ['hostMaterials', CATALOGUE.hostMaterials, 1],
    ['clampedMaterials', CATALOGUE.clampedMaterials, 1],
    ['insertMetal', [CATALOGUE.insertMetal], 1],
    ['infillPatterns', CATALOGUE.infillPatterns, 1],
    ['length tolerances', LENGTH_TOLERANCES, 1],
    ['torque tool classes', TORQUE_TOOL_CLASSES, 1],
  ])('cites only sources of the list in each row of %s', (_table, rows, sourcesPerRow) => {
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      const cited = sourcesIn(row);
      expect(cited.length).toBeGreaterThanOrEqual(sourcesPerRow);
      for (const id of cited) expect(Object.keys(SOURCES)).toContain(id);
    }
  });

  test('names each row once', () => {
    expectUnique(threadIds);
    expectUnique(CATALOGUE.threads.map(({ designation }) => designation));
    expectUnique(classIds);
    expectUnique(CATALOGUE.breakingTorques.map((row) => `${row.thread} ${row.propertyClass}`));
    expectUnique(CATALOGUE.heads.map((row) => `${row.thread} ${row.standard}`));
    expectUnique(CATALOGUE.heads.map((row) => `${row.thread} ${row.shape}`));
    expectUnique(CATALOGUE.washers.map((row) => `${row.thread} ${row.standard}`));
    expectUnique(CATALOGUE.screwLengths.map((row) => row.thread));
    expectUnique(CATALOGUE.frictionConditions.map(({ id }) => id));
    expectUnique(CATALOGUE.hostMaterials.map(({ id }) => id));
    expectUnique(CATALOGUE.clampedMaterials.map(({ id }) => id));
    expectUnique(CATALOGUE.infillPatterns.map(({ id }) => id));
  });

  test('names in every row a thread and a class that have a row of their own', () => {
    for (const table of ['breakingTorques', 'heads', 'washers', 'screwLengths'] as const) {
      for (const row of CATALOGUE[table]) expect(threadIds, table).toContain(row.thread);
    }
    for (const row of CATALOGUE.breakingTorques) expect(classIds).toContain(row.propertyClass);
  });

  test.each(CATALOGUE.threads)('gives $designation a cylindrical head and lengths', ({ id }) => {
    expect(CATALOGUE.heads.some((head) => head.thread === id && head.shape === 'cylindrical')).toBe(true);
    expect(CATALOGUE.screwLengths.find((row) => row.thread === id)?.lengths.length).toBeGreaterThan(3);
  });

  test('gives every metric thread a washer and no unified one', () => {
    const metric = CATALOGUE.threads.filter(({ system }) => system === 'metric').map(({ id }) => id);
    expect(CATALOGUE.washers.map(({ thread }) => thread)).toEqual(metric);
  });

  test('sells a length of every head standard that its row names', () => {
    for (const row of CATALOGUE.screwLengths) {
      expect(
        CATALOGUE.heads.some((head) => head.thread === row.thread && head.standard === row.standard),
      ).toBe(true);
    }
  });
});
