import { describe, expect, test } from 'vitest';
import type { PropertyClass } from '../../src/core/screws/screw.ts';
import { PROPERTY_CLASSES } from '../../src/data/property-classes.ts';
import { expectPublished, expectRelative } from '../support/published.ts';
import { theRow } from '../support/the-row.ts';

const classOf = (id: string): PropertyClass => theRow(PROPERTY_CLASSES, (row) => row.id === id);

/** Nominal stress areas as ISO 898-1 rounds them before it multiplies, mm². */
const AREAS = { M3: 5.03, M4: 8.78, M5: 14.2, M6: 20.1, M8: 36.6 };

describe('PROPERTY_CLASSES', () => {
  test.each([
    ['4.6', '400', '240', '225'],
    ['4.8', '420', '340', '310'],
    ['5.8', '520', '420', '380'],
    ['8.8', '800', '640', '580'],
    ['10.9', '1040', '940', '830'],
    ['12.9', '1220', '1100', '970'],
  ])(
    'holds Rm %s: %s, yield %s and proof stress %s MPa (iso-898-1, d ≤ 16 mm)',
    (id, tensile, yielding, proof) => {
      const row = classOf(id);
      expectPublished(row.tensileStrengthMin, tensile);
      expectPublished(row.yieldStrengthMin, yielding);
      expectPublished(row.proofStress ?? 0, proof);
    },
  );

  test('holds Rm 700 and Rp0.2 450 MPa of A2-70, and no proof stress (iso-3506-1)', () => {
    const row = classOf('A2-70');
    expectPublished(row.tensileStrengthMin, '700');
    expectPublished(row.yieldStrengthMin, '450');
    expect(row).not.toHaveProperty('proofStress');
  });

  // The reprint's own rounding is not strictly to nearest.
  test.each([
    ['4.8', [1560, 2720, 4400, 6230, 11400], [2110, 3690, 5960, 8440, 15400]],
    ['8.8', [2920, 5100, 8230, 11600, 21200], [4020, 7020, 11350, 16100, 29200]],
    ['10.9', [4180, 7290, 11800, 16700, 30400], [5230, 9130, 14800, 20900, 38100]],
    ['12.9', [4880, 8520, 13800, 19500, 35500], [6140, 10700, 17300, 24500, 44600]],
  ])(
    'gives the proof and ultimate loads of %s within 0.6 %% (iso-898-1, M3 to M8)',
    (id, proofLoads, ultimateLoads) => {
      const { proofStress, tensileStrengthMin } = classOf(id);
      for (const [index, area] of Object.values(AREAS).entries()) {
        expectRelative(area * (proofStress ?? 0), proofLoads[index] ?? 0, 0.006);
        expectRelative(area * tensileStrengthMin, ultimateLoads[index] ?? 0, 0.006);
      }
    },
  );

  test.each([
    ['4.6', [2010, 3510, 5680, 8040, 14600]],
    ['5.8', [2620, 4570, 7380, 10400, 19000]],
  ])('gives the ultimate loads of %s within 0.6 %% (iso-898-1, M3 to M8)', (id, ultimateLoads) => {
    for (const [index, area] of Object.values(AREAS).entries()) {
      expectRelative(area * classOf(id).tensileStrengthMin, ultimateLoads[index] ?? 0, 0.006);
    }
  });

  test('names a stainless class by a tenth of its tensile strength', () => {
    for (const row of PROPERTY_CLASSES.filter(({ family }) => family === 'stainless-steel')) {
      expect(row.id).toBe(`A2-${row.tensileStrengthMin / 10}`);
    }
  });

  test('cites as remembered what is remembered: A2-50 and A2-80', () => {
    const remembered = PROPERTY_CLASSES.filter((row) => row.source === 'iso-3506-1-classes');
    expect(remembered.map((row) => row.id)).toEqual(['A2-50', 'A2-80']);
  });

  test.each(PROPERTY_CLASSES)('yields at $id below its tensile strength, proof stress below yield', (row) => {
    expect(row.yieldStrengthMin).toBeLessThan(row.tensileStrengthMin);
    expect(row.proofStress ?? 0).toBeLessThan(row.yieldStrengthMin);
  });

  test.each(['carbon-steel', 'stainless-steel'])('ascends in both strengths: %s', (family) => {
    const rows = PROPERTY_CLASSES.filter((row) => row.family === family);
    expect(rows.length).toBeGreaterThan(1);
    for (const [index, row] of rows.entries()) {
      const next = rows[index + 1];
      if (next === undefined) continue;
      expect(next.tensileStrengthMin).toBeGreaterThan(row.tensileStrengthMin);
      expect(next.yieldStrengthMin).toBeGreaterThan(row.yieldStrengthMin);
    }
  });
});
