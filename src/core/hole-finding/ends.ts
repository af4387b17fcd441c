import { type FacetModel, TURN } from './facet-model.ts';
import { against } from './fit-cylinder.ts';
import { nextEdge } from './neighbours.ts';
import { vertexAt } from './surface.ts';
import type { Wall } from './wall.ts';

/** One end of a wall. */
export interface End {
  /** Least and most place along the axis, mm: apart where the end is not square to it. */
  readonly least: number;
  readonly most: number;
  /** Share of the way round at which the surface turns outward or ends, 0 to 1. */
  readonly openShare: number;
  /** Share of the way round at which the surface goes on inward without a sharp edge, 0 to 1. */
  readonly smoothShare: number;
  /** Edges round the end. */
  readonly edges: number;
  /** How far they go round, rad. */
  readonly round: number;
}

interface BorderEdge {
  readonly from: number;
  readonly to: number;
  readonly turn: number;
  /** Angle round the axis, with its sign, rad. */
  readonly angle: number;
  readonly low: number;
  readonly high: number;
}

function borderOf({ surface, turns }: FacetModel, { cylinder, border }: Wall): BorderEdge[] {
  const view = against(cylinder);
  return border.map((edge) => {
    const from = surface.triangles[edge] ?? 0;
    const to = surface.triangles[nextEdge(edge)] ?? 0;
    const [a, b] = [view(vertexAt(surface, from)), view(vertexAt(surface, to))];
    const angle = Math.atan2(a.u * b.v - a.v * b.u, a.u * b.u + a.v * b.v);
    const [low, high] = [Math.min(a.w, b.w), Math.max(a.w, b.w)];
    return { from, to, turn: turns[edge] ?? TURN.open, angle, low, high };
  });
}

/** Edges joined to closed lines, each from its end to the next one's start. */
function linesOf(border: readonly BorderEdge[]): readonly BorderEdge[][] {
  const byStart = new Map<number, BorderEdge[]>();
  for (const edge of border) {
    const others = byStart.get(edge.from);
    if (others === undefined) byStart.set(edge.from, [edge]);
    else others.push(edge);
  }
  const lines: BorderEdge[][] = [];
  for (const first of border) {
    const line: BorderEdge[] = [];
    let starts = byStart.get(first.from);
    // Already in a line unless it still waits at its start.
    if (starts?.includes(first) !== true) continue;
    for (let edge = starts.pop(); edge !== undefined; edge = starts?.pop()) {
      line.push(edge);
      starts = byStart.get(edge.to);
    }
    lines.push(line);
  }
  return lines;
}

function endOf(edges: readonly BorderEdge[]): End | undefined {
  let [least, most, round, open, smooth] = [Infinity, -Infinity, 0, 0, 0];
  for (const { low, high, angle, turn } of edges) {
    least = Math.min(least, low);
    most = Math.max(most, high);
    round += Math.abs(angle);
    if (turn === TURN.open || turn === TURN.outward) open += Math.abs(angle);
    if (turn === TURN.smooth || turn === TURN.flat) smooth += Math.abs(angle);
  }
  return round > 0
    ? { least, most, openShare: open / round, smoothShare: smooth / round, edges: edges.length, round }
    : undefined;
}

/**
 * The two ends of a wall along its axis. Lines that go once round the axis are the ends, one each way round; a cross
 * hole's line does not. A wall that is open along its side has a single line: its edges belong to the end they are nearer to.
 */
export function endsOf(model: FacetModel, wall: Wall): { readonly low: End; readonly high: End } | undefined {
  const border = borderOf(model, wall);
  const rounds = linesOf(border).map((line) => ({
    line,
    turn: line.reduce((sum, { angle }) => sum + angle, 0),
  }));
  const oneWay = endOf(rounds.flatMap(({ line, turn }) => (turn > Math.PI ? line : [])));
  const otherWay = endOf(rounds.flatMap(({ line, turn }) => (turn < -Math.PI ? line : [])));
  if (oneWay !== undefined && otherWay !== undefined)
    return oneWay.least < otherWay.least ? { low: oneWay, high: otherWay } : { low: otherWay, high: oneWay };
  const least = border.reduce((bound, { low }) => Math.min(bound, low), Infinity);
  const most = border.reduce((bound, { high }) => Math.max(bound, high), -Infinity);
  const isLow = ({ low, high }: BorderEdge) => low + high < least + most;
  const low = endOf(border.filter(isLow));
  const high = endOf(border.filter((edge) => !isLow(edge)));
  return low === undefined || high === undefined ? undefined : { low, high };
}
