import { describe, expect, test } from 'vitest';
import { LENGTH_TOLERANCES } from '../../src/data/length-tolerances.ts';
import { SCREW_LENGTHS } from '../../src/data/screw-lengths.ts';
import { expectPublished, expectRelative } from '../support/published.ts';
import { theRow } from '../support/the-row.ts';

const rowOf = (length: number) =>
  theRow(LENGTH_TOLERANCES, ({ over, upTo }) => over < length && length <= upTo);

describe('LENGTH_TOLERANCES', () => {
  test.each([
    [6, '0.24'],
    [8, '0.29'],
    [10, '0.29'],
    [12, '0.35'],
    [16, '0.35'],
    [20, '0.42'],
    [30, '0.42'],
    [35, '0.5'],
    [50, '0.5'],
    [55, '0.6'],
    [60, '0.6'],
  ])('of %i mm is ±%s mm (iso-4759, js15)', (length, printed) => {
    expect(rowOf(length).deviation).toBe(Number(printed));
    expectPublished(rowOf(length).deviation, printed);
  });

  // IT15 = 640·(0.45·∛D + 0.001·D) µm, D the geometric mean of the step: ISO 286-1, remembered; rounded there.
  test.each(LENGTH_TOLERANCES.slice(1))(
    'over $over to $upTo mm is half of IT15 within its rounding',
    (row) => {
      const D = Math.sqrt(row.over * row.upTo);
      expectRelative(row.deviation, (640 * (0.45 * Math.cbrt(D) + 0.001 * D)) / 2000, 0.03);
    },
  );

  test('follow each other without a gap, the longer never the finer', () => {
    for (const [index, row] of LENGTH_TOLERANCES.entries()) {
      expect(row.over).toBe(LENGTH_TOLERANCES[index - 1]?.upTo ?? 0);
      expect(row.deviation).toBeGreaterThan(LENGTH_TOLERANCES[index - 1]?.deviation ?? 0);
    }
  });

  test('cover every metric length in the table of lengths', () => {
    const lengths = SCREW_LENGTHS.filter((row) => row.source === 'iso-888').flatMap((row) => row.lengths);
    expect(lengths.length).toBeGreaterThan(0);
    for (const length of lengths) expect(rowOf(length).deviation).toBeLessThan(length / 10);
  });
});
