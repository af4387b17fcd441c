import { describe, expect, test } from 'vitest';
import { preloadLeftAt } from '../../../src/core/joint/preload-left.ts';
import { tighten } from '../../../src/core/joint/tightening.ts';
import {
  type PreloadCurve,
  preloadCurves,
  preloadWays,
  strengthCurve,
  strengthWays,
} from '../../../src/core/service/curves.ts';
import { HOST_MATERIALS, PETG } from '../../../src/data/host-materials.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { answerableJoint, type Changes, theInsert } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const CREEPING: Changes = {
  clamped: { material: 'petg' },
  gap_mm: 0.3,
  loads: { serviceTemperature_degC: 41 },
};
const curves = (changes: Changes) => preloadCurves(answerableJoint(changes), theInsert());
const shares = (curve: PreloadCurve | undefined) => curve?.points.map(({ careful }) => careful) ?? [];

/** What is left at the last point of a curve that matches. */
const leftAt = (curve: PreloadCurve | undefined, matches: (hours: number) => boolean): number =>
  curve?.points.findLast(({ hours }) => matches(hours))?.careful ?? Number.NaN;

describe('preloadCurves', () => {
  test('run at 23 °C and at service temperature, from 6 minutes to 100,000 h, two points a decade', () => {
    const [cool, warm, ...others] = curves(CREEPING);
    expect([cool?.temperature, warm?.temperature, others.length]).toEqual([23, 41, 0]);
    const hours = cool?.points.map((point) => point.hours) ?? [];
    expect(hours).toHaveLength(13);
    expectRelative(hours[0] ?? 0, 0.1);
    expectRelative(hours[12] ?? 0, 100_000);
    expectRelative((hours[7] ?? 0) / (hours[5] ?? 1), 10);
  });
  test('are one where service is at 23 °C', () => {
    expect(curves({ ...CREEPING, loads: { serviceTemperature_degC: 23 } })).toHaveLength(1);
  });
  test('fall with time and lie lower in the warmth', () => {
    const [cool, warm] = curves(CREEPING).map(shares);
    for (const [index, left] of (cool ?? []).entries()) {
      expect(left).toBeLessThan(cool?.[index - 1] ?? 1);
      expect(warm?.[index]).toBeLessThan(left);
    }
  });
  test('are what is left at each time', () => {
    const joint = answerableJoint(CREEPING);
    const { loop } = tighten(joint, theInsert());
    const warm = curves(CREEPING)[1];
    for (const { hours, careful, expected, best } of warm?.points ?? []) {
      const { value, range } = preloadLeftAt(loop, joint.loads, hours);
      expectRelative(careful, value);
      expectRelative(expected, range?.middle ?? Number.NaN);
      expectRelative(best, range?.high ?? Number.NaN);
      expect(careful).toBeLessThan(expected);
      expect(expected).toBeLessThan(best);
    }
  });
  test('rise again with every re-tightening: whole at 1 h and at 24 h, lost just before', () => {
    const cool = { serviceTemperature_degC: 23 };
    const [twice] = curves({ ...CREEPING, loads: { ...cool, retightenings: 2 } });
    const [never] = curves({ ...CREEPING, loads: cool });
    for (const hours of [1, 24]) {
      expectRelative(
        leftAt(twice, (at) => at === hours),
        1,
      );
      expect(leftAt(twice, (at) => at < hours && at > 0.99 * hours)).toBeLessThan(0.99);
    }
    expectRelative(
      leftAt(twice, (at) => at < 0.9),
      leftAt(never, (at) => at < 0.9),
    );
    expect(leftAt(twice, (at) => at > 99_000)).toBeGreaterThan(leftAt(never, (at) => at > 99_000));
  });
  test('of a metal part on the insert lose nothing', () => {
    for (const curve of curves({})) expect(new Set(shares(curve))).toEqual(new Set([1]));
  });
});

describe('preloadWays', () => {
  test.each<[string, Changes]>([
    ['of a metal part on the insert', {}],
    ['over a gap', { gap_mm: 0.7 }],
    ['of a printed part over a gap', CREEPING],
    ['that are tightened again', { ...CREEPING, loads: { ...CREEPING.loads, retightenings: 3 } }],
    ['of polymers known for certain', { ...CREEPING, host: { material: 'pc' }, clamped: { material: 'pc' } }],
    ['from the far side', { insertSide: 'far-side', clamped: { material: 'asa' } }],
    ['sunk, of a softness that is little known', { sunk_mm: 0.4, host: { material: 'pla-plus' } }],
  ])('lead to the points of the curves %s, by their formulae', (_, changes) => {
    const joint = answerableJoint(changes);
    for (const { temperature, points } of preloadCurves(joint, theInsert())) {
      for (const { hours, careful, best } of points) {
        const ways = preloadWays(joint, theInsert(), { temperature, hours });
        expect(ways.careful.value).toBe(careful);
        expect(ways.best.value).toBe(best);
        for (const way of [ways.careful, ways.best]) expectRelative(evaluated(way) ?? 0, way.value);
      }
    }
  });
});

describe('strengthCurve', () => {
  test('of PETG runs from 1 at 23 °C to 0.175 at 70 °C: (80 − 70)/(80 − 23)', () => {
    const points = strengthCurve(PETG);
    expect(points[0]).toEqual({ temperature: 23, careful: 1, expected: 1, best: 1 });
    expectRelative(points.at(-1)?.temperature ?? 0, 70);
    expectPublished(points.at(-1)?.careful ?? 0, '0.175');
  });
  test.each(
    HOST_MATERIALS.flatMap((material) => (material.melts ? [[material.name, material] as const] : [])),
  )('of %s falls from point to point and stays above 0', (_, material) => {
    const points = strengthCurve(material).map(({ careful }) => careful);
    expect(points).toHaveLength(25);
    for (const [index, share] of points.entries()) {
      expect(share).toBeLessThanOrEqual(points[index - 1] ?? 1);
      expect(share).toBeGreaterThan(0);
    }
  });
});

describe('strengthWays', () => {
  test.each(
    HOST_MATERIALS.flatMap((material) => (material.melts ? [[material.name, material] as const] : [])),
  )('lead to the points of the curve of %s, by their formulae', (_, material) => {
    for (const { temperature, careful, best } of strengthCurve(material)) {
      const ways = strengthWays(material, temperature);
      expect(ways.careful.value).toBe(careful);
      expect(ways.best.value).toBe(best);
      for (const way of [ways.careful, ways.best]) expectRelative(evaluated(way) ?? 0, way.value);
    }
  });
});
