import { describe, expect, test } from 'vitest';
import type { CouponHole, CouponHost, CouponInsert } from '../../src/core/coupons/coupon.ts';
import { holeGauge } from '../../src/core/coupons/hole-gauge.ts';
import { pullCoupon } from '../../src/core/coupons/pull-coupon.ts';
import { torqueCoupon } from '../../src/core/coupons/torque-coupon.ts';
import { type Coupon, couponMesh } from '../../src/solids/coupon-mesh.ts';
import { meshFindings } from '../../src/solids/mesh-checks.ts';
import { holeOf, LARGER_PART, SMALL_INSERT } from '../support/coupons.ts';
import fc from '../support/fast-check.ts';
import { crossingsIn } from '../support/self-intersection.ts';

const BED = { x: 900, y: 900, z: 900 };
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const ANY = fc.record({
  drawn: real(1.8, 14),
  depth: real(1.5, 30),
  chamfer: fc.constantFrom(0, 0.25, 0.5, 0.7),
  wall: real(0.4, 4),
  layerHeight: fc.constantFrom(0.06, 0.12, 0.2, 0.28, 0.6),
  axis: fc.constantFrom('along-build' as const, 'across-build' as const),
  bossOverDrawn: fc.option(real(1.2, 4)),
  knurlOverDrawn: real(1.01, 1.3),
  knurled: real(1, 20),
  count: fc.integer({ min: 1, max: 12 }),
  step: real(0.01, 0.3),
  number: fc.integer({ min: 0, max: 99_999 }),
  gap: fc.oneof(fc.constant(0), real(0.05, 6)),
  clearanceOverDrawn: real(0.4, 2),
});

type Any = typeof ANY extends fc.Arbitrary<infer Value> ? Value : never;

interface Parts {
  readonly host: CouponHost;
  readonly hole: CouponHole;
  readonly insert: CouponInsert;
}

function partsOf(any: Any): Parts {
  const { drawn, depth, chamfer, wall, layerHeight, axis, bossOverDrawn } = any;
  return {
    host: {
      axis,
      layerHeight,
      wall: { ...LARGER_PART.wall, value: wall },
      ...(bossOverDrawn === null ? {} : { bossDiameter: drawn * bossOverDrawn }),
    },
    hole: holeOf(drawn, depth, chamfer),
    insert: {
      knurlDiameter: { ...SMALL_INSERT.knurlDiameter, value: drawn * any.knurlOverDrawn },
      knurledLength: { ...SMALL_INSERT.knurledLength, value: any.knurled },
    },
  };
}

function couponsOf(any: Any): readonly Coupon[] {
  const { host, hole, insert } = partsOf(any);
  const { count, step, number, gap } = any;
  const common = { host, hole, bed: BED };
  const answers = [
    holeGauge({ ...common, count, step }),
    pullCoupon({ ...common, insert, number }),
    torqueCoupon({ ...common, insert, number, gap, clearanceHole: any.drawn * any.clearanceOverDrawn }),
  ];
  return answers.filter((answer) => answer.kind !== 'refused');
}

describe('every coupon that is not refused', () => {
  test('is a closed mesh without flat triangles, that lies on the bed and is as large as said', () => {
    let made = 0;
    fc.assert(
      fc.property(ANY, (any) => {
        for (const coupon of couponsOf(any)) {
          made += 1;
          const { openEdges, flatTriangles, volume, box } = meshFindings(couponMesh(coupon));
          expect({ openEdges, flatTriangles }).toEqual({ openEdges: 0, flatTriangles: 0 });
          expect(Math.abs(volume / coupon.volume.value - 1)).toBeLessThan(1e-3);
          expect(box.least).toEqual([0, 0, 0]);
          const { x, y, z } = coupon.onBed;
          [x, y, z].forEach((size, axis) => {
            expect(Math.abs((box.greatest[axis] ?? 0) - size)).toBeLessThan(1e-8);
          });
        }
      }),
      { numRuns: 40 },
    );
    expect(made).toBeGreaterThan(70);
  });
  test('does not cut through itself', () => {
    fc.assert(
      fc.property(ANY, (any) => {
        for (const coupon of couponsOf(any)) expect(crossingsIn(couponMesh(coupon))).toBe(0);
      }),
      { numRuns: 8 },
    );
  });
});
