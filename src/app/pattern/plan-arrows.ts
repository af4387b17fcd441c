import { type Point, point } from '../drawing/points.ts';
import { arrowPath, openPath } from '../drawing/svg-path.ts';
import type { PlanInput } from './plan-input.ts';
import type { PlanView } from './plan-view.ts';

/** One load of the plan: its line, its arrowheads, and where its amount is written. */
export interface PlanArrow {
  readonly id: 'shear' | 'pull' | 'moment-x' | 'moment-y' | 'moment-z';
  readonly line: string;
  readonly heads: string;
  readonly tip: Point;
  /** Points that no amount may lie on. */
  readonly way: readonly Point[];
}

const LENGTH = 44;
const HEAD = { length: 11, half: 4 };
/** A moment's vector stands beside the force's, px, with two heads so far apart. */
const ASIDE = 9;
const SECOND_HEAD = 8;
const TURN_RADIUS = 17;
/** How far the arrow of a moment in the plane goes round, rad. */
const TURN = (3 / 2) * Math.PI;
const PULL_RADIUS = 6;
const WAY_STEPS = 6;

const along = (from: Point, to: Point): readonly Point[] =>
  Array.from({ length: WAY_STEPS + 1 }, (_, index) =>
    point(from.x + ((to.x - from.x) * index) / WAY_STEPS, from.y + ((to.y - from.y) * index) / WAY_STEPS),
  );

/** What acts on the part, drawn at the point where it acts; lengths of arrows say nothing, the amounts do. */
export function planArrows({ load }: PlanInput, view: PlanView): readonly PlanArrow[] {
  const at = view.place(load.at);
  const { force, moment } = load;
  return [
    ...(force.x !== 0 || force.y !== 0 ? [forceArrow(at, force)] : []),
    ...(force.pull === 0 ? [] : [pullMark(at)]),
    ...(moment.x === 0 ? [] : [momentVector('moment-x', at, point(Math.sign(moment.x), 0))]),
    ...(moment.y === 0 ? [] : [momentVector('moment-y', at, point(0, -Math.sign(moment.y)))]),
    ...(moment.z === 0 ? [] : [turnArrow(at, moment.z > 0)]),
  ];
}

function forceArrow(at: Point, force: { readonly x: number; readonly y: number }): PlanArrow {
  const size = Math.hypot(force.x, force.y);
  const tip = point(at.x + (LENGTH * force.x) / size, at.y - (LENGTH * force.y) / size);
  return {
    id: 'shear',
    line: openPath([at, tip]),
    heads: arrowPath(tip, at, HEAD),
    tip,
    way: along(at, tip),
  };
}

/** A ring with a point: an arrow that comes towards the eye. */
function pullMark(at: Point): PlanArrow {
  const ring = Array.from({ length: 25 }, (_, index) =>
    onCircle(at, PULL_RADIUS, (index / 24) * 2 * Math.PI),
  );
  return { id: 'pull', line: openPath(ring), heads: '', tip: at, way: ring };
}

function momentVector(id: 'moment-x' | 'moment-y', at: Point, direction: Point): PlanArrow {
  const root = point(at.x + ASIDE * Math.abs(direction.y), at.y + ASIDE * Math.abs(direction.x));
  const tip = point(root.x + LENGTH * direction.x, root.y + LENGTH * direction.y);
  const second = point(tip.x - SECOND_HEAD * direction.x, tip.y - SECOND_HEAD * direction.y);
  return {
    id,
    line: openPath([root, second]),
    heads: arrowPath(tip, root, HEAD) + arrowPath(second, root, HEAD),
    tip,
    way: along(root, tip),
  };
}

const onCircle = (at: Point, radius: number, angle: number): Point =>
  point(at.x + radius * Math.cos(angle), at.y - radius * Math.sin(angle));

function turnArrow(at: Point, isCounterClockwise: boolean): PlanArrow {
  const side = isCounterClockwise ? 1 : -1;
  const start = Math.PI / 2 - (side * Math.PI) / 4;
  const arc = Array.from({ length: 33 }, (_, index) =>
    onCircle(at, TURN_RADIUS, start + side * TURN * (index / 32)),
  );
  const tip = arc.at(-1) ?? at;
  const before = arc.at(-6) ?? at;
  return {
    id: 'moment-z',
    line: openPath(arc.slice(0, -4)),
    heads: arrowPath(tip, before, HEAD),
    tip,
    way: arc,
  };
}
