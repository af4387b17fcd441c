import earcut, { refine } from 'earcut';
import type { Corner, Corners } from '../core/coupons/label.ts';

/** An outline and what is left open in it. */
export interface FaceRegion {
  readonly around: Corners;
  readonly openings: readonly Corners[];
}

/** How far corners are moved for the cutting, a mm² of their place: far below what a printer shows, far above rounding. */
const BOW = 1e-9;

/**
 * Rows of bores and feet of digits lie on lines, and a cut along a line would leave out the corners on it. Bowed a little,
 * no three of them do.
 */
const bowed = ([x, y]: Corner): Corner => [x + BOW * y * y, y - 1.7 * BOW * x * x];

/**
 * Triangles that fill a face, as places in the list of its corners: those around first, then those of each opening.
 * Counter-clockwise; every corner of every outline is used, so that faces and walls meet edge to edge.
 */
export function faceTriangles({ around, openings }: FaceRegion): readonly number[] {
  const outlines = [around, ...openings];
  const corners = outlines.flat();
  const starts: number[] = [];
  let start = around.length;
  for (const opening of openings) {
    starts.push(start);
    start += opening.length;
  }
  const triangles = earcut(corners.flatMap(bowed), starts);
  // Cuts along a line leave triangles without width where the bow is undone: turning their longest edge gives them one.
  refine(triangles, corners.flat());
  return triangles;
}
