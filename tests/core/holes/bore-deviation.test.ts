import { describe, expect, test } from 'vitest';
import { boreDeviation, measuredDeviation } from '../../../src/core/holes/bore-deviation.ts';
import { measuredDeviationOf } from '../../../src/core/holes/existing-hole.ts';
import { boreDeviationOf, type HoleBehaviour } from '../../../src/core/holes/print-error.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { expectRelative } from '../../support/published.ts';

const BEHAVIOUR: HoleBehaviour = {
  offset: { value: -0.27, standardUncertainty: 0.083 },
  slope: { value: 0.21, standardUncertainty: 0.094 },
  covariance: 0.0017,
  repeatability: 0.031,
  standing: 'measured',
};

describe('boreDeviation', () => {
  test.each([0.027, 0])('is the plain number, and what its formula comes to, with a pilot of ±%f mm', (u) => {
    const hole = { drawn: 5.3, pilotUncertainty: u };
    const derived = boreDeviation(BEHAVIOUR, hole);
    expectRelative(derived.value, boreDeviationOf(BEHAVIOUR, 5.3, u));
    expectRelative(evaluated(derived) ?? Number.NaN, derived.value);
    expect(derived.entries.some(({ symbol }) => symbol === 'u_p')).toBe(u > 0);
  });
});

describe('measuredDeviation', () => {
  test.each([0.027, 0])('is the plain number, and what its formula comes to, with a pilot of ±%f mm', (u) => {
    const derived = measuredDeviation({ permissibleError: 0.04 }, u);
    expectRelative(derived.value, measuredDeviationOf({ permissibleError: 0.04 }, u));
    expectRelative(evaluated(derived) ?? Number.NaN, derived.value);
  });
});
