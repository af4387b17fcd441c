import { describe, expect, test } from 'vitest';
import { CLAMPED_MATERIALS } from '../../src/data/clamped-materials.ts';
import { HOST_MATERIALS } from '../../src/data/host-materials.ts';
import { theRow } from '../support/the-row.ts';

describe('CLAMPED_MATERIALS', () => {
  test.each([
    ['steel', 'S235', 490, 205_000],
    ['stainless', 'X5CrNi18-12', 630, 200_000],
    ['aluminium', 'EN AW-6082', 260, 70_000],
  ])(
    '%s is %s with a limiting pressure of %i MPa (vdi-2230) and a modulus of %i MPa',
    (id, grade, limitingPressure, modulus) => {
      const row = theRow(CLAMPED_MATERIALS, (material) => material.id === id);
      expect(row).toMatchObject({ kind: 'metal', limitingPressure, modulus, source: 'vdi-2230' });
      expect(row.name).toContain(grade);
    },
  );

  test('offer every polymer that can be printed by melting, under its own id and with its own row', () => {
    const offered = CLAMPED_MATERIALS.flatMap((row) =>
      row.kind === 'printed' ? [[row.id, row.polymer]] : [],
    );
    expect(offered).toEqual(
      HOST_MATERIALS.filter(({ melts }) => melts).map((polymer) => [polymer.id, polymer]),
    );
  });

  test('name a printed part after its polymer', () => {
    const printed = CLAMPED_MATERIALS.flatMap((row) => (row.kind === 'printed' ? [row] : []));
    expect(printed.map((row) => row.name)).toEqual(printed.map((row) => `${row.polymer.name}, printed`));
  });
});
