import { describe, expect, test } from 'vitest';
import { boreDeviation, measuredDeviation } from '../../../src/core/holes/bore-deviation.ts';
import { measuredDeviationOf } from '../../../src/core/holes/existing-hole.ts';
import { boreDeviationOf, type HoleBehaviour } from '../../../src/core/holes/print-error.ts';
import { type Entry, entry } from '../../../src/core/sources/derived.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { expectRelative } from '../../support/published.ts';

const BEHAVIOUR: HoleBehaviour = {
  offset: { value: -0.27, standardUncertainty: 0.083 },
  slope: { value: 0.21, standardUncertainty: 0.094 },
  covariance: 0.0017,
  repeatability: 0.031,
  standing: 'measured',
};

const pilot = (u: number | undefined): { readonly pilotUncertainty?: Entry } =>
  u === undefined ? {} : { pilotUncertainty: entry('u(D_p)', u, 'mm') };

describe('boreDeviation', () => {
  test.each([0.027, undefined])(
    'is the plain number, and what its formula comes to, with a pilot of ±%f mm',
    (u) => {
      const derived = boreDeviation(BEHAVIOUR, { drawn: entry('D_g', 5.3, 'mm'), ...pilot(u) });
      expect(derived.formula).toContain('ln(D_g/4 mm)');
      expectRelative(derived.value, boreDeviationOf(BEHAVIOUR, 5.3, u ?? 0));
      expectRelative(evaluated(derived) ?? Number.NaN, derived.value);
      expect(derived.entries.some(({ symbol }) => symbol === 'u_p')).toBe(u !== undefined);
    },
  );
});

describe('measuredDeviation', () => {
  test.each([0.027, undefined])(
    'is the plain number, and what its formula comes to, with a pilot of ±%f mm',
    (u) => {
      const derived = measuredDeviation({ permissibleError: 0.04 }, pilot(u).pilotUncertainty);
      expectRelative(derived.value, measuredDeviationOf({ permissibleError: 0.04 }, u ?? 0));
      expectRelative(evaluated(derived) ?? Number.NaN, derived.value);
    },
  );
});
