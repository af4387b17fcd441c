import { describe, expect, test } from 'vitest';
import { knurlShear, knurlShearForce } from '../../../src/core/pull-out/knurl-shear.ts';
import { insertTurns, torqueOut } from '../../../src/core/pull-out/torque-out.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { situationOfNumbers } from '../../support/situations.ts';

const force = (numbers: Parameters<typeof situationOfNumbers>[0]) =>
  knurlShearForce(situationOfNumbers(numbers)).value;
const factor = fc.double({ min: 0.3, max: 1, noNaN: true });

describe('knurlShearForce', () => {
  test('of η 0.85, τ 25.4 MPa, Dk 5, Lk 3.6 mm is 1221 N (hand calculation: 21.59 · 56.55)', () => {
    expectPublished(force({}), '1221');
  });
  test.each([
    ['K1', 4.42, 5.79, 12.4, '997'],
    ['N1', 5, 4, 18.6, '1169'],
  ])(
    'of the shear cylinder %s, D %f by %f mm at %f MPa, is the pulled force within its digits (π·D·L·τ)',
    (_, knurl, knurled, shear, printed) => {
      const found = force({ knurl, knurled, bore: knurl - 0.43, bond: 1, strengths: { knurlShear: shear } });
      expect(Math.abs(found / Number(printed) - 1)).toBeLessThan(0.005);
    },
  );
  test('is proportional to bond, strength, knurled length and bite', () => {
    const usual = force({});
    fc.assert(
      fc.property(factor, (share) => {
        expectRelative(force({ bond: 0.85 * share }), share * usual, 1e-9);
        expectRelative(force({ strengths: { knurlShear: 25.4 * share } }), share * usual, 1e-9);
        expectRelative(force({ knurled: 3.6 * share }), share * usual, 1e-9);
        expectRelative(force({ biteFactor: share }), share * usual, 1e-9);
      }),
      { numRuns: 20 },
    );
  });
  test('is 0 without bite', () => {
    expect(force({ biteFactor: 0 })).toBe(0);
  });
  test('is loaded by the pull under a part on the insert, by the clamp force elsewhere, not from the far side', () => {
    expect((['on-insert', 'on-plastic', 'over-gap', 'far-side'] as const).map(knurlShear.path)).toEqual([
      'pull',
      'clamp',
      'clamp',
      'none',
    ]);
  });
});

describe('torqueOut', () => {
  test('of the same is 3.05 N·m (hand calculation: 1221 N at 2.5 mm)', () => {
    expectPublished(torqueOut(situationOfNumbers()).value / 1000, '3.05');
  });
  test('is the shear force at half the knurl (F·D/2, derived): 1.78 N·m for 804 N of D 4.42 mm', () => {
    const numbers = { knurl: 4.42, knurled: 5.79, bore: 3.99, bond: 1, strengths: { knurlShear: 10 } };
    expectPublished(knurlShearForce(situationOfNumbers(numbers)).value, '804');
    expectPublished(torqueOut(situationOfNumbers(numbers)).value / 1000, '1.78');
  });
  test('grows with the square of the knurl, the force with its first power', () => {
    const one = situationOfNumbers({ knurl: 4.3, bore: 3.9 });
    const other = situationOfNumbers({ knurl: 5.59, bore: 5.1 });
    expectRelative(torqueOut(other).value / torqueOut(one).value, 1.69, 1e-10);
    expectRelative(knurlShearForce(other).value / knurlShearForce(one).value, 1.3, 1e-10);
  });
  test('is loaded by the torque wherever the part bears', () => {
    expect(insertTurns.path('far-side')).toBe('torque');
    expect(insertTurns.path('on-insert')).toBe('torque');
    expect(insertTurns.capacity(situationOfNumbers())?.median.unit).toBe('N·mm');
  });
});
