import { couponMesh } from '../../src/solids/coupon-mesh.ts';
import { stlBytes } from '../../src/solids/stl-file.ts';
import { threeMfBytes } from '../../src/solids/three-mf-file.ts';
import { couponSet } from './coupon-set.ts';

export const COUPON_METADATA = { Title: 'Coupons', Application: 'Knurlwright' } as const;

/** A coupon as files, with what another program must find in them. */
export interface CouponFile {
  readonly name: string;
  readonly triangles: number;
  /** Of solid plastic with round bores, mm³. */
  readonly volume: number;
  readonly onBed: readonly [number, number, number];
  readonly stl: Uint8Array;
}

export interface CouponFiles {
  readonly coupons: readonly CouponFile[];
  /** All of them in one file. */
  readonly threeMf: Uint8Array;
  /** One of them with a triangle that asks for a vertex that is not there. */
  readonly damagedThreeMf: Uint8Array;
}

/** The files of every coupon of the set, and one that no reader may take. */
export function couponFiles(): CouponFiles {
  const meshes = Object.entries(couponSet()).map(([name, coupon]) => ({
    name,
    coupon,
    mesh: couponMesh(coupon),
  }));
  const damaged = meshes.slice(0, 1).map(({ name, mesh }) => {
    const triangles = mesh.triangles.slice();
    triangles[0] = mesh.positions.length / 3;
    return { name, mesh: { ...mesh, triangles } };
  });
  return {
    coupons: meshes.map(({ name, coupon, mesh }) => ({
      name,
      triangles: mesh.triangles.length / 3,
      volume: coupon.volume.value,
      onBed: [coupon.onBed.x, coupon.onBed.y, coupon.onBed.z],
      stl: stlBytes(mesh, name),
    })),
    threeMf: threeMfBytes(meshes, COUPON_METADATA),
    damagedThreeMf: threeMfBytes(damaged, COUPON_METADATA),
  };
}
