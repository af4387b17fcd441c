import { type Point, point } from './points.ts';

const digits = (px: number) => String(Math.round(px * 100) / 100);

const at = ({ x, y }: Point) => `${digits(x)} ${digits(y)}`;

export function closedPath(points: readonly Point[]): string {
  return points.length === 0 ? '' : `M${points.map(at).join('L')}Z`;
}

export function openPath(points: readonly Point[]): string {
  return points.length === 0 ? '' : `M${points.map(at).join('L')}`;
}

/** A closed line whose corners are rounded as far as their sides allow. */
export function roundedPath(corners: readonly Point[], radius: number): string {
  const count = corners.length;
  const steps = corners.map((corner, index) => {
    const before = corners[(index + count - 1) % count] ?? corner;
    const after = corners[(index + 1) % count] ?? corner;
    const enter = towards(corner, before, radius);
    const leave = towards(corner, after, radius);
    return `${index === 0 ? 'M' : 'L'}${at(enter)}Q${at(corner)} ${at(leave)}`;
  });
  return `${steps.join('')}Z`;
}

/** The point at most `radius` from one corner towards the next, never past the middle between them. */
function towards(from: Point, to: Point, radius: number): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const share = length === 0 ? 0 : Math.min(radius, length / 2) / length;
  return point(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
}

const ARROW = { length: 10, half: 1.9 };

/** An arrowhead whose tip is at a point, pointing away from another. */
export function arrowPath(tip: Point, from: Point, size = ARROW): string {
  const length = Math.hypot(tip.x - from.x, tip.y - from.y) || 1;
  const along = point((from.x - tip.x) / length, (from.y - tip.y) / length);
  const root = point(tip.x + along.x * size.length, tip.y + along.y * size.length);
  return closedPath([
    tip,
    point(root.x - along.y * size.half, root.y + along.x * size.half),
    point(root.x + along.y * size.half, root.y - along.x * size.half),
  ]);
}
