import { describe, expect, test } from 'vitest';
import { headBearing, seatBearing } from '../../../src/core/pull-out/bearing.ts';
import { PETG } from '../../../src/data/host-materials.ts';
import { situationWith } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const printed = { clamped: { material: 'petg' }, loads: { serviceTemperature_degC: 20 } };

describe('headBearing', () => {
  test('of an M3 cap head on steel S235 through 3.4 mm is 5.44 kN (hand calculation with pG 490 MPa, vdi-2230)', () => {
    // 490 · π/4 · (5.07² − 3.4²) = 490 · 11.109
    const found = headBearing.capacity(situationWith({ clamped: { material: 'steel' } }));
    expectPublished(found.median.value / 1000, '5.44');
    expect(found.characteristic.value).toBe(found.median.value);
    expect(found.median.standing).toBe('published');
  });
  test('a washer widens the face: 7 over 3.4 mm (iso-7089; hand calculation)', () => {
    const found = headBearing.capacity(
      situationWith({ clamped: { material: 'steel' }, screw: { washer: 'plain' } }),
    );
    // 490 · π/4 · (49 − 11.56)
    expectPublished(found.median.value / 1000, '14.41');
  });
  test('on plastic bears for years only what creep and scatter leave (hand calculation)', () => {
    const found = headBearing.capacity(situationWith(printed));
    expectRelative(found.median.value, PETG.compressive.value * 11.109, 1e-4);
    // The scatter between set-ups leaves 0.51; creep 0.65 as expected, 0.65/(0.65 + 2 · 0.35) at the careful end.
    expectRelative(found.characteristic.value / found.median.value, 0.65 / 1.35);
  });
});

describe('seatBearing', () => {
  test('is the brass ring round the clearance hole (hand calculation: π/4 · (4.93² − 3.4²))', () => {
    const found = seatBearing.capacity(situationWith(printed));
    expectRelative(found?.median.value ?? 0, PETG.compressive.value * 10.0098, 1e-4);
  });
  test('shows the ring as made of the knurl, which was measured, and of the clearance hole', () => {
    const { median, characteristic } = seatBearing.capacity(situationWith(printed)) ?? {};
    const ring = median?.entries.find(({ symbol }) => symbol === 'A_p')?.from;
    expect(ring?.entries).toMatchObject([{ symbol: 'D_k', from: { symbol: 'D_k' } }, { symbol: 'd_h' }]);
    expectWays(characteristic ? [characteristic] : []);
  });
  test('is no question for a metal part, nor where the part bears elsewhere', () => {
    expect(seatBearing.capacity(situationWith())).toBeUndefined();
    expect((['on-insert', 'on-plastic', 'over-gap', 'far-side'] as const).map(seatBearing.path)).toEqual([
      'clamp',
      'none',
      'none',
      'none',
    ]);
  });
});
