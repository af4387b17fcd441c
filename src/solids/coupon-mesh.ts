import type { HoleGauge } from '../core/coupons/hole-gauge.ts';
import { type Corner, type Label, labelOutlines } from '../core/coupons/label.ts';
import type { PullCoupon } from '../core/coupons/pull-coupon.ts';
import type { TorqueCoupon } from '../core/coupons/torque-coupon.ts';
import type { InsertAxis } from '../core/host/host.ts';
import type { Mesh } from './mesh.ts';
import { circle, type Outline, rectangle } from './outline.ts';
import { stackMesh, type Wall } from './stack.ts';

export type Coupon = HoleGauge | PullCoupon | TorqueCoupon;

interface Bore {
  readonly drawn: number;
  readonly depth: number;
  readonly chamfer: number;
  readonly at: Corner;
}

/** Walls of a blind bore that opens on a level, and its mouth. */
function boreWalls({ drawn, depth, chamfer, at }: Bore, level: number): readonly Wall[] {
  const foot = circle(drawn, at);
  if (chamfer === 0) return [{ from: level - depth, to: level, foot }];
  const mouth = circle(drawn + 2 * chamfer, at);
  return [
    { from: level - depth, to: level - chamfer, foot },
    { from: level - chamfer, to: level, foot, top: mouth },
  ];
}

const labelWalls = (label: Label, level: number): readonly Wall[] =>
  labelOutlines(label).map((corners) => ({ from: level, to: level + label.raised, foot: { corners } }));

function gaugeWalls(gauge: HoleGauge): readonly Wall[] {
  const { length, width, thickness, bores, labels, depth, chamfer } = gauge;
  return [
    { from: 0, to: thickness, foot: rectangle(length, width) },
    ...bores.flatMap(({ drawn, at }) => boreWalls({ drawn, depth, chamfer, at }, thickness)),
    ...labels.flatMap((label) => labelWalls(label, thickness)),
  ];
}

function pullWalls(coupon: PullCoupon): readonly Wall[] {
  const { length, width, flangeThickness, boss, bore, label } = coupon;
  const face = flangeThickness + (boss?.height ?? 0);
  return [
    { from: 0, to: flangeThickness, foot: rectangle(length, width) },
    ...(boss ? [{ from: flangeThickness, to: face, foot: circle(boss.diameter, bore.at) }] : []),
    ...boreWalls(bore, face),
    ...labelWalls(label, flangeThickness),
  ];
}

function torqueWalls(coupon: TorqueCoupon): readonly Wall[] {
  const { length, width, baseThickness, boss, bore, flatAt, rimAt, rim, rimInner, label } = coupon;
  const face = baseThickness + (boss?.height ?? 0);
  const bossWall = (foot: Outline): readonly Wall[] =>
    boss ? [{ from: baseThickness, to: face, foot }] : [];
  const outside = circle(rim.outer, rimAt);
  return [
    { from: 0, to: baseThickness, foot: rectangle(length, width) },
    ...(boss ? bossWall(circle(boss.diameter, flatAt)) : []),
    ...bossWall(outside),
    ...boreWalls({ ...bore, at: flatAt }, face),
    ...boreWalls({ ...bore, at: rimAt }, face),
    { from: face, to: face + rim.height, foot: outside },
    { from: face, to: face + rim.height, foot: circle(rimInner.value, rimAt) },
    ...labelWalls(label, baseThickness),
  ];
}

function wallsOf(coupon: Coupon): readonly Wall[] {
  switch (coupon.kind) {
    case 'hole-gauge':
      return gaugeWalls(coupon);
    case 'pull-coupon':
      return pullWalls(coupon);
    case 'torque-coupon':
      return torqueWalls(coupon);
  }
}

/** Lies a body that was stacked upward on its back edge: what faced up faces the front, y = 0, and up is where y was. */
function turnedToFront({ positions, triangles }: Mesh): Mesh {
  const turned = new Float64Array(positions.length);
  let height = 0;
  for (let at = 2; at < positions.length; at += 3) height = Math.max(height, positions[at] ?? 0);
  for (let at = 0; at < positions.length; at += 3) {
    turned[at] = positions[at] ?? 0;
    turned[at + 1] = height - (positions[at + 2] ?? 0);
    turned[at + 2] = positions[at + 1] ?? 0;
  }
  return { positions: turned, triangles };
}

const placed = (mesh: Mesh, axis: InsertAxis): Mesh => (axis === 'along-build' ? mesh : turnedToFront(mesh));

/** A coupon as a closed mesh in mm, as it lies on the bed: lowest z is 0, no coordinate is negative. */
export const couponMesh = (coupon: Coupon): Mesh => placed(stackMesh(wallsOf(coupon)), coupon.axis);
