import { type Coupon, couponMesh } from '../../../solids/coupon-mesh.ts';
import type { Mesh } from '../../../solids/mesh.ts';
import { stlBytes } from '../../../solids/stl-file.ts';
import { threeMfBytes } from '../../../solids/three-mf-file.ts';

export const meshOf = (coupon: Coupon): Mesh => couponMesh(coupon);

/** A file of a coupon, in millimetres, as it lies on the bed. */
export function couponFile(
  mesh: Mesh,
  format: 'stl' | '3mf',
  { name, title }: { readonly name: string; readonly title: string },
): Blob {
  return format === 'stl'
    ? new Blob([stlBytes(mesh, title)], { type: 'model/stl' })
    : new Blob([threeMfBytes([{ name, mesh }], { Title: title, Application: 'Knurlwright' })], {
        type: 'model/3mf',
      });
}
