import { describe, expect, test } from 'vitest';
import {
  BETWEEN,
  capacityDeviation,
  frictionScatter,
  growthBetween,
  SETUP_FREEDOM,
  scatterKindOf,
  toolScatter,
  WITHIN,
} from '../../../src/core/chance/scatter.ts';
import { studentQuantile } from '../../../src/core/numerics/student-t.ts';
import { characteristicOf, PRIOR_DEVIATION } from '../../../src/core/pull-out/bond.ts';
import { entry } from '../../../src/core/sources/derived.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const capacity = (median: number, characteristic: number) => ({
  median: given('F', median, 'N'),
  characteristic: given('R_k', characteristic, 'N'),
});

describe('the scatter of a set-up', () => {
  test('has the freedom that the characteristic values of the bond are worked out with', () => {
    expectRelative(
      Math.exp(-studentQuantile(0.95, SETUP_FREEDOM) * PRIOR_DEVIATION),
      characteristicOf(given('F', 1, 'N')).value,
    );
  });
  test('is one tenth within: 0.10² of 0.30² + 0.10², the rest between', () => {
    expectRelative(WITHIN ** 2, 0.1 ** 2 / (0.3 ** 2 + 0.1 ** 2));
    expectRelative(BETWEEN ** 2, 0.3 ** 2 / (0.3 ** 2 + 0.1 ** 2));
  });
});

describe('capacityDeviation', () => {
  test.each(['knurl', 'host', 'clamped-part'] as const)(
    'of a %s mode gives back the prior deviation',
    (kind) => {
      const median = given('F', 1234, 'N');
      expectRelative(
        capacityDeviation({ median, characteristic: characteristicOf(median) }, kind, SETUP_FREEDOM),
        PRIOR_DEVIATION,
      );
    },
  );
  test('of a knurl that coupons were pulled of gives back the scale that they say', () => {
    const scatter = {
      freedom: entry('ν', 9, '-'),
      quantile: entry('t', studentQuantile(0.95, 9), '-'),
      deviation: entry('s', 0.173, '-'),
      source: 'your-tests',
    } as const;
    const median = given('F', 1234, 'N');
    const tested = { median, characteristic: characteristicOf(median, scatter) };
    expectRelative(capacityDeviation(tested, 'knurl', 9), 0.173);
  });
  test('of metal is ln(R/Rk) over 1.6449, the printed 95 % quantile of the normal distribution', () => {
    expectPublished(Math.log(230 / 190) / capacityDeviation(capacity(230, 190), 'metal', 4), '1.6449');
  });
  test('of a guaranteed minimum is none', () => {
    expect(capacityDeviation(capacity(4100, 4100), 'metal', 4)).toBe(0);
  });
  test('of a mode that bears nothing is none', () => {
    expect(capacityDeviation(capacity(0, 0), 'host', 4)).toBe(0);
  });
});

describe('frictionScatter', () => {
  test('puts both ends of the range at 1.6449 deviations', () => {
    const { centre, deviation } = frictionScatter({ low: 0.11, high: 0.23 });
    const end = 1.6448536269514722;
    expectRelative(Math.exp(centre - end * deviation), 0.11);
    expectRelative(Math.exp(centre + end * deviation), 0.23);
  });
  test('does not scatter where the range is one value', () => {
    const { centre, deviation } = frictionScatter({ low: 0.17, high: 0.17 });
    expectRelative(Math.exp(centre), 0.17);
    expect(deviation).toBe(0);
  });
});

describe('toolScatter', () => {
  test('takes ±6 % as 1.95996 deviations', () => {
    expectPublished(0.06 / toolScatter(0.06), '1.95996');
  });
});

describe('scatterKindOf', () => {
  test('knows no scatter under the head of a metal part, and one under that of a printed part', () => {
    expect(scatterKindOf('head-bearing', 'metal')).toBe('metal');
    expect(scatterKindOf('head-bearing', 'printed')).toBe('clamped-part');
  });
  test('lets shear and turning of the knurl follow one scatter, and the host another', () => {
    expect(scatterKindOf('knurl-shear', 'metal')).toBe('knurl');
    expect(scatterKindOf('torque-out', 'printed')).toBe('knurl');
    expect(scatterKindOf('wall-plug', 'metal')).toBe('host');
  });
});

describe('growthBetween', () => {
  test('puts both ends at 1.6449 deviations, as friction', () => {
    const { median, deviation } = growthBetween({ low: 0.21, high: 0.77 });
    const end = 1.6448536269514722;
    expectRelative(median * Math.exp(-end * deviation), 0.21);
    expectRelative(median * Math.exp(end * deviation), 0.77);
  });
  test('does not scatter where the ends are one, also where nothing grows', () => {
    expect(growthBetween({ low: 0.4, high: 0.4 })).toEqual({ median: 0.4, deviation: 0 });
    expect(growthBetween({ low: 0, high: 0 })).toEqual({ median: 0, deviation: 0 });
  });
});
