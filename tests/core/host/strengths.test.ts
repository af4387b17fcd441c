import { describe, expect, test } from 'vitest';
import { hostStrengths } from '../../../src/core/host/strengths.ts';
import { PETG, PLA, PLA_PLUS } from '../../../src/data/host-materials.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const KEYS = ['knurlShear', 'printedShear', 'alongAxis', 'hoop', 'compressive'] as const;

describe('hostStrengths', () => {
  test('of PLA, axis along the build, 23 °C: 28.9 · 13.2 · 28 · 50 · 60 MPa (hand calculation from its row)', () => {
    // 0.577 · 50 = 28.87
    const found = hostStrengths(PLA, 'along-build', 23);
    expectPublished(found.knurlShear.value, '28.87');
    expect(KEYS.slice(1).map((key) => found[key].value)).toEqual([13.2, 28, 50, 60]);
  });
  test('across the build the layers part round the insert instead of along it', () => {
    const along = hostStrengths(PLA, 'along-build', 20);
    const across = hostStrengths(PLA, 'across-build', 20);
    expect(across.alongAxis.value).toBe(along.hoop.value);
    expect(across.hoop.value).toBe(along.alongAxis.value);
    for (const key of ['knurlShear', 'printedShear', 'compressive'] as const) {
      expect(across[key].value).toBe(along[key].value);
    }
    expect(across.hoop.entries[1]?.symbol).toBe('σ_z');
  });
  test('knurl shear is tension over the root of three (von-mises)', () => {
    const { knurlShear } = hostStrengths(PETG, 'along-build', 20);
    expectRelative(3 * knurlShear.value ** 2, PETG.tensileInPlane.value ** 2);
  });
  test('all fall by the same share when it gets warm: PETG at 45 °C by (80 − 45)/57', () => {
    const cool = hostStrengths(PETG, 'across-build', 23);
    const warm = hostStrengths(PETG, 'across-build', 45);
    for (const key of KEYS) expectRelative(warm[key].value / cool[key].value, 35 / 57);
  });
  test('of a polymer that is little known keep its rows, each with the symbols of its ends', () => {
    const found = hostStrengths(PLA_PLUS, 'along-build', 37);
    expect(KEYS.map((key) => found[key].littleKnown?.row)).toEqual([
      PLA_PLUS.tensileInPlane,
      PLA_PLUS.shearBetweenLayers,
      PLA_PLUS.tensileAcrossLayers,
      PLA_PLUS.tensileInPlane,
      PLA_PLUS.compressive,
    ]);
    expect(KEYS.map((key) => found[key].littleKnown?.symbols.low)).toEqual([
      'σ_low',
      'τ_low',
      'σ_low',
      'σ_low',
      'σ_low',
    ]);
    expect(hostStrengths(PETG, 'along-build', 37).hoop.littleKnown).toBeUndefined();
  });
  test('never claim to be more than an estimate', () => {
    const found = hostStrengths(PETG, 'along-build', 31);
    expect(KEYS.map((key) => found[key].standing)).toEqual(KEYS.map(() => 'estimate'));
    expect(KEYS.map((key) => found[key].symbol)).toEqual(['τ', 'τ_p', 'σ_a', 'σ_h', 'σ_c']);
  });
});
