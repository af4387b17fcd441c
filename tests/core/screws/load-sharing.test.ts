import { describe, expect, test } from 'vitest';
import {
  clampForceLeftOf,
  loadFactor,
  overloadPull,
  screwForceOf,
  separationLoad,
} from '../../../src/core/screws/load-sharing.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const force = fc.double({ min: 1, max: 1e5, noNaN: true });
const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });

describe('loadFactor', () => {
  test.each([
    ['shigley.C.8-3a', 6.5, 13.8, '0.320'],
    ['stiff.C.8-4', 5.21, 8.95, '0.368'],
  ])('%s: of kb %f and km %f is %s (shigley 9th ed.)', (_id, screw, members, printed) => {
    expectPublished(loadFactor({ screw, members }).value, printed);
  });
  test('comes to 1 as the members grow soft, to 0 as they grow stiff', () => {
    expectRelative(loadFactor({ screw: 7, members: 7e-9 }).value, 1, 2e-9);
    expectRelative(loadFactor({ screw: 7, members: 7e9 }).value, 1e-9, 2e-9);
  });
  test('carries both stiffnesses', () => {
    expect(loadFactor({ screw: 5.21, members: 8.95 })).toMatchObject({
      symbol: 'C',
      unit: '-',
      entries: [
        { symbol: 'k_b', value: 5.21 },
        { symbol: 'k_m', value: 8.95 },
      ],
    });
  });
});

describe('screwForceOf', () => {
  test('shigley.sigma_i.8-3a: preload 25 kip on 0.373 in² is 67.02 kpsi (shigley 9th ed., Example 8-3)', () => {
    expectPublished(screwForceOf({ preload: 25, pull: 0, loadFactor: 0.32 }) / 0.373, '67.02');
  });
  test('shigley.sigma_b.8-3a: with a pull of 6 kip it is 72.17 kpsi (shigley 9th ed., Example 8-3)', () => {
    expectPublished(screwForceOf({ preload: 25, pull: 6, loadFactor: 0.32 }) / 0.373, '72.17');
  });
  test('joint.np.8-4: the yield factor Sp·At over it is 1.16 (shigley 9th ed., Example 8-4)', () => {
    expectPublished((85 * 0.226) / screwForceOf({ preload: 14.4, pull: 6, loadFactor: 0.368 }), '1.16');
  });
  test('and what is left between the parts differ by the pull', () => {
    fc.assert(
      fc.property(force, force, share, (preload, pull, C) => {
        const joint = { preload, pull, loadFactor: C };
        expectRelative(screwForceOf(joint), clampForceLeftOf(joint) + pull, 1e-11);
      }),
    );
  });
});

describe('separationLoad', () => {
  test.each([
    ['joint.n0.separation.8-4', 14.4, 0.368, 6, '3.80'],
    ['joint.n0.8-37', 252.45, 0.33, 80, '4.71'],
  ])('%s: preload %f, C %f, over a pull of %f is %s (shigley)', (_id, preload, C, pull, printed) => {
    expectPublished(separationLoad({ preload, loadFactor: C }).value / pull, printed);
  });
  test('leaves no force between the parts', () => {
    fc.assert(
      fc.property(force, share, (preload, C) => {
        const pull = separationLoad({ preload, loadFactor: C }).value;
        expect(Math.abs(clampForceLeftOf({ preload, pull, loadFactor: C }))).toBeLessThan(1e-12 * preload);
      }),
    );
  });
});

describe('overloadPull', () => {
  test.each([
    ['joint.nL.8-4', 85 * 0.226, 14.4, 0.368, 6, '2.18'],
    ['joint.n.8-22', 0.6 * 84.3, 37.9, 0.253, 10.6, '4.73'],
  ])(
    '%s: limit %f, preload %f, C %f, over a pull of %f is %s (shigley)',
    (_id, screwLimit, preload, C, pull, printed) => {
      expectPublished(overloadPull({ screwLimit, preload, loadFactor: C }).value / pull, printed);
    },
  );
  test('brings the screw to its limit', () => {
    fc.assert(
      fc.property(force, force, share, (preload, more, C) => {
        const screwLimit = preload + more;
        const pull = overloadPull({ screwLimit, preload, loadFactor: C }).value;
        expectRelative(screwForceOf({ preload, pull, loadFactor: C }), screwLimit, 1e-11);
      }),
    );
  });
  test('is nothing for a screw tightened to its limit', () => {
    expect(overloadPull({ screwLimit: 731, preload: 731, loadFactor: 0.3 }).value).toBe(0);
  });
});
