import { describe, expect, test } from 'vitest';
import {
  type BearingFace,
  bearingArea,
  bearingAreaOf,
  frictionDiameter,
  frictionDiameterOf,
} from '../../../src/core/screws/head-bearing.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished } from '../../support/published.ts';

const faceOf = (
  outerDiameter: number,
  holeDiameter: number,
  shape: BearingFace['shape'] = 'cylindrical',
) => ({
  shape,
  outerDiameter,
  holeDiameter,
});

describe('bearingAreaOf', () => {
  test.each([
    ['M2', 3.48, 2.4, '5.0'],
    ['M3', 5.07, 3.4, '11.1'],
    ['M5', 8.03, 5.5, '26.9'],
    ['M8', 12.33, 9, '55.8'],
    ['washer M4', 9, 4.5, '47.7'],
  ])(
    'of a cap head %s, %f over %f mm, is %s mm² (derived from iso-4762, iso-7089 and iso-273)',
    (_name, dw, dh, printed) => {
      expectPublished(bearingAreaOf(faceOf(dw, dh)), printed);
    },
  );
  test('is above zero for any hole smaller than the head, and less for a larger one', () => {
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 1, max: 40, noNaN: true }), share, (dw, part) => {
        const area = bearingAreaOf(faceOf(dw, dw * part));
        expect(area).toBeGreaterThan(0);
        expect(bearingAreaOf(faceOf(dw, dw * part * 1.005))).toBeLessThan(area);
      }),
    );
  });
});

describe('frictionDiameterOf', () => {
  test('is 10.315 mm for a face of 11.63 over 9 mm (the diameter that reproduces the tables of vdi-2230)', () => {
    expectPublished(frictionDiameterOf(faceOf(11.63, 9)), '10.315');
  });
  test('is √2 times the mean on a cone of 90° (hand calculation: normal force F/sin 45°)', () => {
    expectPublished(frictionDiameterOf(faceOf(5.54, 3.4, 'countersunk')), '6.3215'); // 4.47 · 1.41421
  });
  test('lies between hole and head on a flat face', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 40, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (dw, part) => {
          const diameter = frictionDiameterOf(faceOf(dw, dw * part, 'button'));
          expect(diameter).toBeGreaterThan(dw * part);
          expect(diameter).toBeLessThan(dw);
        },
      ),
    );
  });
});

describe('the derived face', () => {
  test('shows area and friction diameter of a flat head as published', () => {
    const entries = [
      { symbol: 'd_w', value: 5.07, unit: 'mm' },
      { symbol: 'd_h', value: 3.4, unit: 'mm' },
    ];
    const shared = { source: 'vdi-2230', standing: 'published', entries };
    expect(bearingArea(faceOf(5.07, 3.4))).toMatchObject({ symbol: 'A_p', unit: 'mm²', ...shared });
    expect(frictionDiameter(faceOf(5.07, 3.4))).toMatchObject({ symbol: 'D_Km', unit: 'mm', ...shared });
    expectPublished(bearingArea(faceOf(5.07, 3.4)).value, '11.1');
    expectPublished(frictionDiameter(faceOf(5.07, 3.4)).value, '4.235');
  });
  test('shows the cone of a countersunk head as an estimate', () => {
    const face = faceOf(5.54, 3.4, 'countersunk');
    expect(frictionDiameter(face)).toMatchObject({ formula: '(d_k + d_h)/2/sin 45°', standing: 'estimate' });
    expect(bearingArea(face).formula).toBe('π/4 · (d_k² − d_h²)');
    expect(bearingArea(face).entries[0]?.symbol).toBe('d_k');
    expectPublished(frictionDiameter(face).value, '6.3215');
  });
});
