import { edgeVector } from './axis-candidates.ts';
import { chamferHeight } from './chamfer.ts';
import { type End, endsOf } from './ends.ts';
import type { FacetModel } from './facet-model.ts';
import { against, cornersAgainst } from './fit-cylinder.ts';
import type { FoundHole, Lie } from './hole.ts';
import { nextEdge } from './neighbours.ts';
import { along, dot, type Point, vertexAt } from './surface.ts';
import type { Wall } from './wall.ts';

/** A wall that is open along its side by more than this is no hole, rad. */
const LEAST_TURN = (300 * Math.PI) / 180;
/** Facets of a hexagon with one side open. */
const LEAST_FACETS = 5;
/** Corners nearer than this are on one line along the axis, rad: a 400th of a turn is eight times as much. */
const SAME_ANGLE = 0.002;
/** A gap between corners is no facet where it is wider than so many usual ones, and wider than any fine facet. */
const GAP_OVER_USUAL = 2.5;
const LEAST_GAP = (20 * Math.PI) / 180;
/** Share of the turning edges, by length, that run along the axis of a drawn hole. */
const DRAWN_SHARE = 0.8;
const PARALLEL_COSINE = Math.cos((2 * Math.PI) / 180);
const LIE_SINE = Math.sin((5 * Math.PI) / 180);
/** A ring of a ball or a torus passes for a cylinder as far as this share of its diameter. */
const RING_DEPTH = 0.1;

const UP: Point = { x: 0, y: 0, z: 1 };

/** Angles round the axis with those that are the same taken together, rising. */
function distinctAngles(angles: readonly number[]): readonly number[] {
  const sorted = new Float64Array(angles).sort();
  const distinct = Array.from(
    sorted.filter((angle, place) => angle - (sorted[place - 1] ?? -Infinity) > SAME_ANGLE),
  );
  const [first = 0] = distinct;
  const last = distinct.at(-1) ?? 0;
  return distinct.length > 1 && first + 2 * Math.PI - last <= SAME_ANGLE ? distinct.slice(1) : distinct;
}

/** Facets between angles, and how far they go round. */
function facetsBetween(angles: readonly number[]): { readonly facets: number; readonly turn: number } {
  const gaps = angles.map((angle, place) => (angles[place + 1] ?? (angles[0] ?? 0) + 2 * Math.PI) - angle);
  const usual = [...gaps].sort((one, other) => one - other)[Math.floor(gaps.length / 2)] ?? 0;
  const filled = gaps.filter((gap) => gap <= Math.max(GAP_OVER_USUAL * usual, LEAST_GAP));
  return { facets: filled.length, turn: filled.reduce((sum, gap) => sum + gap, 0) };
}

/** The triangles of a round wall that was meshed freely share no lines: its rims say how many and how far. */
function facetsOfRims({ low, high }: { readonly low: End; readonly high: End }) {
  return {
    facets: Math.min(low.edges, high.edges),
    turn: Math.min(2 * Math.PI, low.round, high.round),
  };
}

/** Distance from the axis to the side of a triangle between two of its corners. */
function distanceToSide(seen: Float64Array, from: number, to: number): number {
  const fromU = seen[3 * from] ?? 0;
  const fromV = seen[3 * from + 1] ?? 0;
  const du = (seen[3 * to] ?? 0) - fromU;
  const dv = (seen[3 * to + 1] ?? 0) - fromV;
  const squared = du * du + dv * dv;
  const share = squared > 0 ? Math.min(1, Math.max(0, -(fromU * du + fromV * dv) / squared)) : 0;
  const u = fromU + share * du;
  const v = fromV + share * dv;
  return Math.sqrt(u * u + v * v);
}

/** What the triangles of a wall say seen along its axis. */
function outline(model: FacetModel, wall: Wall) {
  const { surface } = model;
  const view = against(wall.cylinder);
  const cornersOf = cornersAgainst(surface, wall.cylinder);
  let [least, most, flat] = [Infinity, -Infinity, Infinity];
  for (const face of wall.faces) {
    const corners = cornersOf(face);
    for (let corner = 0; corner < 3; corner += 1) {
      const w = corners[3 * corner + 2] ?? 0;
      least = Math.min(least, w);
      most = Math.max(most, w);
      flat = Math.min(flat, distanceToSide(corners, corner, (corner + 1) % 3));
    }
  }
  let [length, drawnLength] = [0, 0];
  const drawn: number[] = [];
  const angleOf = (vertex: number) => {
    const { u, v } = view(vertexAt(surface, vertex));
    return Math.atan2(v, u);
  };
  for (const edge of wall.edges) {
    const vector = edgeVector(model, edge);
    const long = Math.sqrt(dot(vector, vector));
    length += long;
    if (Math.abs(dot(vector, wall.cylinder.axis)) < PARALLEL_COSINE * long) continue;
    drawnLength += long;
    drawn.push(angleOf(surface.triangles[edge] ?? 0), angleOf(surface.triangles[nextEdge(edge)] ?? 0));
  }
  const isDrawn = drawnLength >= DRAWN_SHARE * length;
  return { least, most, flat, isDrawn, angles: distinctAngles(drawn) };
}

function lieOf(axis: Point): { readonly lie: Lie; readonly tilt: number } {
  const rise = Math.min(1, Math.abs(dot(axis, UP)));
  const tilt = Math.acos(rise);
  if (Math.sin(tilt) <= LIE_SINE) return { lie: 'vertical', tilt };
  return { lie: rise <= LIE_SINE ? 'horizontal' : 'oblique', tilt };
}

/** Of two directions of one axis the one whose first coordinate that matters is negative, z before y before x. */
function downward(axis: Point): boolean {
  const [significant = 0] = [axis.z, axis.y, axis.x].filter((value) => Math.abs(value) > 1e-6);
  return significant < 0;
}

/** Whether the mouth is at the low end; undefined where neither end is open. */
function mouthIsLow(
  axis: Point,
  { low, high }: { readonly low: End; readonly high: End },
): boolean | undefined {
  const [lowOpen, highOpen] = [low.openShare > 0.5, high.openShare > 0.5];
  if (!lowOpen && !highOpen) return undefined;
  // Of a through hole the upper mouth: an insert is most easily set from above.
  return lowOpen && highOpen ? downward(axis) : lowOpen;
}

/**
 * A wall as a hole. A wall that does not go round far enough, that is closed at both ends, or that is the rim of a
 * round pocket is none.
 */
export function holeOf(model: FacetModel, wall: Wall): FoundHole | undefined {
  const { axis, centre, radius } = wall.cylinder;
  const { least, most, flat, isDrawn, angles } = outline(model, wall);
  const ends = endsOf(model, wall);
  if (ends === undefined) return undefined;
  const { facets, turn } = isDrawn ? facetsBetween(angles) : facetsOfRims(ends);
  if (turn < LEAST_TURN || facets < LEAST_FACETS) return undefined;
  const isLow = mouthIsLow(axis, ends);
  if (isLow === undefined) return undefined;
  const [near, far] = isLow ? [ends.low, ends.high] : [ends.high, ends.low];
  const chamfers = {
    low: ends.low.openShare > 0.5 ? chamferHeight(model, wall, 'low', ends.low) : 0,
    high: ends.high.openShare > 0.5 ? chamferHeight(model, wall, 'high', ends.high) : 0,
  };
  const depth = most - least;
  if (far.smoothShare > 0.5 && depth < RING_DEPTH * 2 * radius) return undefined;
  return {
    mouth: along(centre, (near.least + near.most) / 2, axis),
    direction: isLow ? axis : { x: -axis.x, y: -axis.y, z: -axis.z },
    ...lieOf(axis),
    cornerDiameter: 2 * radius,
    acrossFlats: 2 * flat,
    depth,
    chamfers: isLow
      ? { mouth: chamfers.low, far: chamfers.high }
      : { mouth: chamfers.high, far: chamfers.low },
    depthAllRound: Math.max(0, ends.high.least - ends.low.most),
    facets,
    turn,
    ends: { mouth: 'open', far: far.openShare > 0.5 ? 'open' : 'closed' },
  };
}
