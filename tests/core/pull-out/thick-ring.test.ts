import { describe, expect, test } from 'vitest';
import { hoopPerPressure, pressFitPressureOf } from '../../../src/core/pull-out/thick-ring.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const STEEL = { modulus: 207_000, poissonRatio: 0.292 };

describe('hoopPerPressure', () => {
  test('lame.sto.5-35: 19.41 MPa in a ring of 50 by 75 mm pull 50.47 MPa round it (shigley)', () => {
    expectPublished(19.41 * hoopPerPressure(75, 50), '50.47');
  });
  test('lame.sti.5-35: the same on a shaft of 50 with a hole of 25 mm press 32.35 MPa (shigley)', () => {
    expectPublished(19.41 * hoopPerPressure(50, 25), '32.35');
  });
  test('goes to the thin ring, D/(2·t), and to 1 in a very thick one', () => {
    expectRelative(hoopPerPressure(50.002, 50), 50 / 0.002, 1e-4);
    expectRelative(hoopPerPressure(5e6, 3), 1);
  });
});

describe('pressFitPressureOf', () => {
  test('lame.p.general_reduces, lame.p.5-35: steel 25/50/75 mm, δ 0.02 mm gives 19.41 MPa (shigley Eq. 3-56)', () => {
    const pressure = pressFitPressureOf({
      diametralInterference: 0.02,
      diameter: 50,
      ring: { ...STEEL, outerDiameter: 75 },
      shaft: { ...STEEL, holeDiameter: 25 },
    });
    expectPublished(pressure, '19.41');
  });
  test.each([
    ['lame.p.3-68', 0.002, 1, 2, '22500'],
    ['lame.p.5-34b', 0.0005, 1, 1.5, '4167'],
  ])(
    '%s: solid steel shaft, inches and psi (shigley)',
    (_, diametralInterference, diameter, outer, printed) => {
      const steel = { modulus: 30e6, poissonRatio: 0.292 };
      const pressure = pressFitPressureOf({
        diametralInterference,
        diameter,
        ring: { ...steel, outerDiameter: outer },
        shaft: { ...steel, holeDiameter: 0 },
      });
      expectPublished(pressure, printed);
    },
  );
  test('of a shaft a billion times as stiff is that of a rigid one', () => {
    const fit = {
      diametralInterference: 0.35,
      diameter: 4.93,
      ring: { outerDiameter: 8.7, modulus: 2100, poissonRatio: 0.38 },
    };
    const stiff = { holeDiameter: 2.6, modulus: 2.1e12, poissonRatio: 0.31 };
    expectRelative(pressFitPressureOf(fit), pressFitPressureOf({ ...fit, shaft: stiff }), 1e-8);
    expect(pressFitPressureOf({ ...fit, shaft: { ...stiff, modulus: 97_000 } })).toBeLessThan(
      pressFitPressureOf(fit),
    );
  });
  test('grows with interference and modulus alike, and does not see the size', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 5, noNaN: true }), (times) => {
        const pressureOf = (size: number, interference: number, modulus: number) =>
          pressFitPressureOf({
            diametralInterference: 0.03 * size * interference,
            diameter: 4.7 * size,
            ring: { outerDiameter: 7.9 * size, modulus: 1900 * modulus, poissonRatio: 0.37 },
          });
        expectRelative(pressureOf(times, 1, 1), pressureOf(1, 1, 1));
        expectRelative(pressureOf(1, times, 1), times * pressureOf(1, 1, 1));
        expectRelative(pressureOf(1, 1, times), times * pressureOf(1, 1, 1));
      }),
    );
  });
});
