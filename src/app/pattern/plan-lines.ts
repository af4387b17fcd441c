import { type Point, type Polyline, point } from '../drawing/points.ts';
import type { PlanInput } from './plan-input.ts';
import type { PlanView } from './plan-view.ts';

/** How far the axes reach beyond all that is shown, px, and how far off their names stand. */
const OVERRUN = 22;
const NAME_GAP = 8;

export interface PlanAxes {
  readonly lines: readonly Polyline[];
  readonly names: readonly { readonly name: 'x' | 'y'; readonly at: Point }[];
}

/** Centre lines through the origin, beyond the screws and the edges, with the names at their ends. */
export function axesOf(input: PlanInput, view: PlanView): PlanAxes {
  const origin = view.place({ x: 0, y: 0 });
  const screws = input.screws.map(view.place);
  const corners = edgesOf(input, view).outline;
  const reach = (values: readonly number[], edges: readonly number[], side: 1 | -1) =>
    side *
    Math.max(
      ...values.map((value) => side * value + view.screwRadius + OVERRUN),
      ...edges.map((value) => side * value + OVERRUN),
    );
  const xs = [origin.x, ...screws.map(({ x }) => x)];
  const ys = [origin.y, ...screws.map(({ y }) => y)];
  const edgeXs = corners.map(({ x }) => x);
  const edgeYs = corners.map(({ y }) => y);
  const right = point(reach(xs, edgeXs, 1), origin.y);
  const top = point(origin.x, reach(ys, edgeYs, -1));
  return {
    lines: [
      [point(reach(xs, edgeXs, -1), origin.y), right],
      [point(origin.x, reach(ys, edgeYs, 1)), top],
    ],
    names: [
      { name: 'x', at: point(right.x + NAME_GAP, right.y) },
      { name: 'y', at: point(top.x, top.y - NAME_GAP) },
    ],
  };
}

export interface PlanEdges {
  /** Round the part, closed; empty where it turns about the middle of the screws. */
  readonly outline: Polyline;
  /** The sides that stay down. */
  readonly down: readonly Polyline[];
}

/** The edges of the part as they are given: at the same distance on both sides of the middle of the screws. */
export function edgesOf({ edge, centroid, staysDown }: PlanInput, view: PlanView): PlanEdges {
  if (edge === undefined) return { outline: [], down: [] };
  const corner = (x: number, y: number) =>
    view.place({ x: centroid.x + x * edge.x, y: centroid.y + y * edge.y });
  const { x, y } = staysDown;
  return {
    outline: [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1), corner(-1, -1)],
    down: [
      ...(x === 0 ? [] : [[corner(x, -1), corner(x, 1)]]),
      ...(y === 0 ? [] : [[corner(-1, y), corner(1, y)]]),
    ],
  };
}

/** Points on a line, no farther apart than a step. */
export function pointsAlong(line: Polyline, step: number): readonly Point[] {
  return line.slice(1).flatMap((to, index) => {
    const from = line[index] ?? to;
    const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / step));
    return Array.from({ length: count + 1 }, (_, at) =>
      point(from.x + ((to.x - from.x) * at) / count, from.y + ((to.y - from.y) * at) / count),
    );
  });
}

export function middleOf(line: Polyline): Point {
  const sum = line.reduce((total, at) => point(total.x + at.x, total.y + at.y), point(0, 0));
  return point(sum.x / line.length, sum.y / line.length);
}
