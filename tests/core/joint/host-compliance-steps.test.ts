import { describe, expect, test } from 'vitest';
import { hostComplianceOf } from '../../../src/core/joint/host-compliance.ts';
import { hostCompliance, widerThanHole } from '../../../src/core/joint/host-compliance-steps.ts';
import type { SeatKind } from '../../../src/core/pull-out/limit.ts';
import type { Derived } from '../../../src/core/sources/derived.ts';
import { ASA } from '../../../src/data/host-materials.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { given } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { type Numbers, situationOfNumbers } from '../../support/situations.ts';

/** Every step of a number, itself first. */
function* stepsOf(derived: Derived): Generator<Derived> {
  yield derived;
  for (const { from } of derived.entries) if (from) yield* stepsOf(from);
}

const CASES: readonly (readonly [string, SeatKind, Numbers])[] = [
  ['beside the insert, solid', 'on-plastic', { density: 1 }],
  ['beside the insert, a wall', 'on-plastic', { density: 0, wall: 0.9 }],
  ['beside the insert, no wall', 'on-plastic', { density: 0, wall: 0.2 }],
  ['over a gap, solid', 'over-gap', { density: 1 }],
  ['over a gap, walls and infill', 'over-gap', { wall: 1.93, density: 0.9, depth: 6, floor: 9 }],
  ['over a gap, walls alone', 'over-gap', { wall: 1.93, density: 0.01, depth: 6, floor: 3 }],
  [
    'over a gap, walls as wide as the pull reaches',
    'over-gap',
    { wall: 4.2, density: 0.13, depth: 6, floor: 10 },
  ],
  ['over a gap, free boss', 'over-gap', { boss: 8.5, density: 1, depth: 6.5, floor: 4.1 }],
  ['far side', 'far-side', { floor: 2.7 }],
  ['far side, no shoulder', 'far-side', { floor: 0 }],
  ['on the insert', 'on-insert', {}],
];

describe('hostCompliance', () => {
  test.each(CASES)(
    '%s: is hostComplianceOf, and every step comes to what its formula says',
    (_, seat, numbers) => {
      const situation = { ...situationOfNumbers(numbers), seat };
      const shown = hostCompliance(situation);
      expect(shown.symbol).toBe('C_h');
      expectRelative(shown.value + 1, hostComplianceOf(situation) + 1, 1e-15);
      expectRelative(shown.value, hostComplianceOf(situation), 1e-12);
      for (const step of stepsOf(shown)) {
        const again = step.formula === step.symbol ? undefined : evaluated(step);
        if (again !== undefined) expectRelative(again, step.value, 1e-9);
      }
    },
  );
  test.each(CASES)(
    '%s: goes with one over the modulus at its ends, 1600 and 2300 of 1900 MPa',
    (_, seat, numbers) => {
      const situation = { ...situationOfNumbers(numbers), seat, material: ASA };
      const middle = hostCompliance(situation).value;
      expectRelative(hostCompliance(situation, 'low').value, (middle * 1900) / 1600);
      expectRelative(hostCompliance(situation, 'high').value, (middle * 1900) / 2300);
    },
  );
  test('leads to the range of a little known modulus', () => {
    const situation = { ...situationOfNumbers({ floor: 2.7 }), seat: 'far-side' as const, material: ASA };
    const moduli = [...stepsOf(hostCompliance(situation, 'low'))].filter(({ symbol }) => symbol === 'E');
    expect(moduli[0]).toMatchObject({ value: 1600, range: { low: 1600, middle: 1900, high: 2300 } });
  });
});

describe('widerThanHole', () => {
  test('is the face, or a twentieth wider than the hole (hand calculation)', () => {
    expect(widerThanHole(given('D_k', 5.1, 'mm'), 3.4).value).toBe(5.1);
    expectRelative(widerThanHole(given('D_k', 3.3, 'mm'), 3.4).value, 3.57);
  });
});
