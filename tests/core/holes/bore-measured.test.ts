import { describe, expect, test } from 'vitest';
import { boreMeasured } from '../../../src/core/holes/bore-measured.ts';
import fc from '../../support/fast-check.ts';
import { holeReading } from '../../support/hole-readings.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

/** Deviations −0.03, +0.03, −0.03, +0.03, 0 mm about 4.95 mm: s = 0.03 mm. */
const FIVE = [4.92, 4.98, 4.92, 4.98, 4.95];

describe('boreMeasured with the jaws of a caliper', () => {
  test('of five readings with s 0.03 mm is known to u 0.0368 mm (worked apart after jcgm-100)', () => {
    const { standardUncertainty, readings } = boreMeasured(holeReading(5.2, FIVE));
    expectPublished(standardUncertainty.value, '0.0368');
    expectPublished(2 * standardUncertainty.value, '0.074');
    expect(readings).toBe(5);
    const parts = Object.fromEntries(standardUncertainty.entries.map(({ symbol, value }) => [symbol, value]));
    for (const [symbol, printed] of [
      ['u_B', '0.0173'],
      ['u_r', '0.0029'],
      ['u_A', '0.0134'],
      ['u_t', '0.0058'],
      ['u_f', '0.0289'],
    ] as const) {
      expectPublished(parts[symbol] ?? 0, printed);
    }
  });
  test('is the corrected mean: 4.95 mm with flats of 0.4 mm is √(4.95² + 0.4²) (hand calculation)', () => {
    expectPublished(boreMeasured(holeReading(5.2, FIVE, { jawFlat: 0.4 })).estimate.value, '4.966');
  });
  test('of one reading knows caliper, jaws and form alone', () => {
    const { value } = boreMeasured(holeReading(4.5, 4.21, { permissibleError: 0 })).standardUncertainty;
    expectRelative(value, Math.sqrt((0.005 ** 2 + 0.01 ** 2 + 0.05 ** 2) / 3));
  });
  test('does not look at the step between pins', () => {
    expect(boreMeasured(holeReading(4.5, 4.2, { gaugeStep: 0.5 }))).toEqual(
      boreMeasured(holeReading(4.5, 4.2)),
    );
  });
});

describe('boreMeasured with pins and shanks', () => {
  test.each([
    [0.1, '0.029'],
    [0.05, '0.014'],
    [0.02, '0.006'],
    [0.01, '0.003'],
  ])('in steps of %f mm is known to %s mm (worked apart: step/√12)', (gaugeStep, printed) => {
    const found = boreMeasured(holeReading(4.5, 4.2, { instrument: 'pin-gauge', gaugeStep }));
    expectPublished(found.standardUncertainty.value, printed);
  });
  test('in steps of 0.05 mm with repeatability 0.0134 mm has U ≈ 0.04 mm (worked apart after jcgm-100)', () => {
    const shared = { instrument: 'pin-gauge', gaugeStep: 0.05 } as const;
    const found = boreMeasured(holeReading(5.2, FIVE, shared));
    expectPublished(2 * found.standardUncertainty.value, '0.04');
  });
  test('lies half a step above the largest that enters, a shank like a pin', () => {
    for (const instrument of ['pin-gauge', 'drill-shank'] as const) {
      const found = boreMeasured(holeReading(4.5, [4.2, 4.3], { instrument, gaugeStep: 0.1 }));
      expectRelative(found.estimate.value, 4.3);
      // Scatter of the two: s = 0.0707, uA = 0.05.
      expectRelative(found.standardUncertainty.value, Math.hypot(0.05, 0.1 / Math.sqrt(12)), 1e-9);
    }
  });
  test('does not look at jaws and caliper', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (other) => {
        const pin = { instrument: 'pin-gauge' } as const;
        expect(
          boreMeasured(holeReading(4.5, 4.2, { ...pin, jawFlat: other, permissibleError: other })),
        ).toEqual(boreMeasured(holeReading(4.5, 4.2, pin)));
      }),
    );
  });
});
