import { describe, expect, test } from 'vitest';
import {
  coneEndDiameter,
  frustumStiffness,
  screwStiffness,
  stiffnessInSeries,
} from '../../../src/core/screws/stiffness.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

describe('screwStiffness', () => {
  test('stiff.kb.8-4 is 5.21 Mlbf/in (shigley 9th ed., Example 8-4; inches and Mpsi)', () => {
    const screw = {
      shankArea: 0.3068,
      threadArea: 0.226,
      modulus: 30,
      threadLength: 0.75,
      shankLength: 0.75,
    };
    expectPublished(screwStiffness(screw).value, '5.21');
  });
  test('stiff.kb.metric.8-23 is 744 kN/mm (shigley 8th ed., solutions, problem 8-23)', () => {
    const screw = { shankArea: 113, threadArea: 84.3, modulus: 207000, threadLength: 16, shankLength: 10 };
    expectPublished(screwStiffness(screw).value / 1000, '744');
  });
  test('is A·E/l for a screw with thread alone', () => {
    const screw = { shankArea: 113, threadArea: 8.78, modulus: 205000, threadLength: 6.3, shankLength: 0 };
    expectRelative(screwStiffness(screw).value, (8.78 * 205000) / 6.3);
  });
  test('is what its shank and thread have in series', () => {
    const screw = { shankArea: 12.6, threadArea: 8.78, modulus: 205000, threadLength: 6.3, shankLength: 4.1 };
    const parts = [(12.6 * 205000) / 4.1, (8.78 * 205000) / 6.3];
    expectRelative(screwStiffness(screw).value, stiffnessInSeries(parts));
  });
  test('carries what went in', () => {
    const screw = { shankArea: 113, threadArea: 84.3, modulus: 207000, threadLength: 16, shankLength: 10 };
    expect(screwStiffness(screw)).toMatchObject({ symbol: 'k_b', unit: 'N/mm', source: 'shigley' });
    expect(screwStiffness(screw).entries.map(({ value }) => value)).toEqual([113, 84.3, 10, 16, 207000]);
  });
});

describe('frustumStiffness', () => {
  test.each([
    ['stiff.frustum.k2.iron', 2.5, 41.09, 52230],
    ['stiff.frustum.k3.iron', 22.5, 18, 2074],
  ])(
    '%s: t %f, D %f mm in iron is %i kN/mm within a part of 0.003 (shigley 8th ed., solutions, problem 8-22)',
    (_id, t, D, printed) => {
      const frustum = { thickness: t, faceDiameter: D, holeDiameter: 12, modulus: 100000 };
      expectRelative(frustumStiffness(frustum).value / 1000, printed, 0.003);
    },
  );
  test('of two equal halves makes the closed form for a face of 1.5 d (shigley 9th ed., Eq. 8-22)', () => {
    const [E, d, l] = [207000, 10.7, 33];
    const half = frustumStiffness({
      thickness: l / 2,
      faceDiameter: 1.5 * d,
      holeDiameter: d,
      modulus: E,
    }).value;
    const closed =
      (0.5774 * Math.PI * E * d) / (2 * Math.log((5 * (0.5774 * l + 0.5 * d)) / (0.5774 * l + 2.5 * d)));
    expectRelative(stiffnessInSeries([half, half]), closed, 2e-4);
  });
  test('is that of a ring A·E/t when very thin', () => {
    const frustum = { thickness: 1e-6, faceDiameter: 9, holeDiameter: 5.5, modulus: 2300 };
    expectRelative(
      frustumStiffness(frustum).value,
      ((Math.PI / 4) * (9 ** 2 - 5.5 ** 2) * 2300) / 1e-6,
      1e-6,
    );
  });
  test('splits into two slices in series, the cone going on', () => {
    const size = fc.double({ min: 0.1, max: 20, noNaN: true });
    fc.assert(
      fc.property(size, size, (t1, t2) => {
        const whole = { thickness: t1 + t2, faceDiameter: 9.3, holeDiameter: 5.5, modulus: 2300 };
        const lowerFace = coneEndDiameter({ faceDiameter: 9.3, thickness: t1 });
        const slices = [
          frustumStiffness({ ...whole, thickness: t1 }).value,
          frustumStiffness({ ...whole, thickness: t2, faceDiameter: lowerFace }).value,
        ];
        expectRelative(stiffnessInSeries(slices), frustumStiffness(whole).value, 1e-10);
      }),
    );
  });
  test('carries what went in', () => {
    const shown = frustumStiffness({ thickness: 3.1, faceDiameter: 9.3, holeDiameter: 5.5, modulus: 2300 });
    expect(shown).toMatchObject({ symbol: 'k', unit: 'N/mm', source: 'shigley' });
    expect(shown.entries.map(({ value }) => value)).toEqual([3.1, 9.3, 5.5, 2300]);
  });
});

describe('coneEndDiameter', () => {
  test('stiff.D.cone is 24.9 mm (shigley 8th ed., solutions, problem 8-23)', () => {
    expectPublished(coneEndDiameter({ faceDiameter: 18, thickness: 6 }), '24.9');
  });
});

describe('stiffnessInSeries', () => {
  test('of 4470, 52 230 and 2074 kN/mm is 1379 (shigley 8th ed., solutions, problem 8-22)', () => {
    expectPublished(stiffnessInSeries([4470, 52230, 2074]), '1379');
  });
  test('of one member is that member', () => {
    expectRelative(stiffnessInSeries([737]), 737);
  });
});
