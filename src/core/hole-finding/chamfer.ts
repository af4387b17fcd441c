import type { End } from './ends.ts';
import type { FacetModel } from './facet-model.ts';
import { against } from './fit-cylinder.ts';
import { NONE, nextEdge } from './neighbours.ts';
import { vertexAt } from './surface.ts';
import { roundRoom, type Wall } from './wall.ts';

/** A cone that is higher than this share of the radius is a countersink: no part of a hole for an insert. */
const HIGHEST_SHARE = 0.5;

/**
 * Height of the chamfer between an end of a wall and the face, along the axis.
 *
 * A chamfer is a ring of triangles round an end that is square to the axis: their far corners lie on a wider circle, all
 * equally far beyond the end. One of several rings, on a slanting face or higher than half of the radius is none.
 *
 * @param model - the surface
 * @param wall - the wall of the hole
 * @param side - where along its axis the end is
 * @param end - that end
 * @returns the height [mm]; 0 where there is none
 */
export function chamferHeight(model: FacetModel, wall: Wall, side: 'low' | 'high', end: End): number {
  const { surface, neighbours } = model;
  const { cylinder, border } = wall;
  const room = roundRoom(model, cylinder);
  if (end.most - end.least > room) return 0;
  const view = against(cylinder);
  const seen = (vertex: number) => view(vertexAt(surface, vertex));
  const isAtEnd = (vertex: number) => Math.abs(seen(vertex).w - end.least) <= room;
  const outward = side === 'high' ? 1 : -1;
  const [heights, radii]: [number[], number[]] = [[], []];
  for (const edge of border) {
    const other = neighbours[edge] ?? NONE;
    if (other === NONE) continue;
    if (!isAtEnd(surface.triangles[edge] ?? 0) || !isAtEnd(surface.triangles[nextEdge(edge)] ?? 0)) continue;
    const { u, v, w } = seen(surface.triangles[nextEdge(nextEdge(other))] ?? 0);
    heights.push(outward * (w - end.least));
    radii.push(Math.sqrt(u * u + v * v));
  }
  const [height, highest] = [Math.min(...heights), Math.max(...heights)];
  const [narrowest, widest] = [Math.min(...radii), Math.max(...radii)];
  const isRing = highest - height <= room && widest - narrowest <= room;
  const isChamfer = height > room && narrowest > cylinder.radius + room;
  return isRing && isChamfer && height <= HIGHEST_SHARE * cylinder.radius ? height : 0;
}
