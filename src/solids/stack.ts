import { faceTriangles } from './face.ts';
import type { Mesh } from './mesh.ts';
import { between, type Outline, surrounds } from './outline.ts';

/**
 * A wall of a body: an outline drawn up from one level to another, straight or towards a second outline with as many
 * corners. What an odd number of walls surrounds is solid. Walls never touch one another but where one goes on from
 * another with the same outline.
 */
export interface Wall {
  readonly from: number;
  readonly to: number;
  readonly foot: Outline;
  /** Absent: the foot itself, straight up. */
  readonly top?: Outline;
}

/** An outline on a level with what it belongs to below and above. */
interface Loop {
  readonly outline: Outline;
  readonly below: boolean;
  readonly above: boolean;
}

interface Building {
  readonly positions: number[];
  readonly triangles: number[];
  /** First vertex of an outline on a level. */
  readonly rings: Map<number, Map<Outline, number>>;
}

const firstCorner = ({ corners }: Outline) => corners[0] ?? ([0, 0] as const);

const isOdd = (count: number): boolean => count % 2 === 1;

function ringOf({ positions, rings }: Building, level: number, outline: Outline): number {
  const onLevel = rings.get(level) ?? new Map<Outline, number>();
  rings.set(level, onLevel);
  const known = onLevel.get(outline);
  if (known !== undefined) return known;
  const first = positions.length / 3;
  for (const [x, y] of outline.corners) positions.push(x, y, level);
  onLevel.set(outline, first);
  return first;
}

/** Outline of a wall on a level of its own; the same object for the same wall and level. */
function outlinesAt(
  walls: readonly Wall[],
  levels: readonly number[],
): (wall: Wall, level: number) => Outline {
  const table = new Map(
    walls.map((wall) => {
      const { from, to, foot, top = foot } = wall;
      const at = levels
        .filter((level) => from <= level && level <= to)
        .map((level): [number, Outline] => {
          if (level === from || foot === top) return [level, foot];
          return [level, level === to ? top : between(foot, top, (level - from) / (to - from))];
        });
      return [wall, new Map(at)];
    }),
  );
  return (wall, level) => table.get(wall)?.get(level) ?? wall.foot;
}

/** A body of nested walls as one closed mesh; the levels are its heights. */
export function stackMesh(walls: readonly Wall[]): Mesh {
  const standing = walls.filter(({ from, to }) => to > from);
  const levels = [...new Set(standing.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  const outlineAt = outlinesAt(standing, levels);
  const building: Building = { positions: [], triangles: [], rings: new Map() };
  levels.forEach((level, place) => {
    const below = standing.filter(({ from, to }) => from < level && level <= to);
    const above = standing.filter(({ from, to }) => from <= level && level < to);
    addFaces(
      building,
      level,
      loopsOf({ below, above }, (wall) => outlineAt(wall, level)),
    );
    const next = levels[place + 1];
    if (next !== undefined) addWalls(building, above, { low: level, high: next, outlineAt });
  });
  return {
    positions: Float64Array.from(building.positions),
    triangles: Uint32Array.from(building.triangles),
  };
}

function loopsOf(
  { below, above }: { readonly below: readonly Wall[]; readonly above: readonly Wall[] },
  outlineOf: (wall: Wall) => Outline,
): readonly Loop[] {
  const lower = new Set(below.map(outlineOf));
  const upper = new Set(above.map(outlineOf));
  return [...new Set([...lower, ...upper])].map((outline) => ({
    outline,
    below: lower.has(outline),
    above: upper.has(outline),
  }));
}

/** Faces between an outline and those next inside it, where it is solid on one side of the level only. */
function addFaces(building: Building, level: number, loops: readonly Loop[]): void {
  const around = (loop: Loop) =>
    loops.filter((other) => other !== loop && surrounds(other.outline, firstCorner(loop.outline)));
  const parents = new Map(loops.map((loop) => [loop, around(loop)]));
  const depth = (loop: Loop) => parents.get(loop)?.length ?? 0;
  for (const loop of loops) {
    const chain = [loop, ...(parents.get(loop) ?? [])];
    const solidBelow = isOdd(chain.filter(({ below }) => below).length);
    const solidAbove = isOdd(chain.filter(({ above }) => above).length);
    if (solidBelow === solidAbove) continue;
    const inner = loops.filter(
      (other) => depth(other) === depth(loop) + 1 && (parents.get(other) ?? []).includes(loop),
    );
    const outlines = [loop, ...inner].map(({ outline }) => outline);
    const vertices = outlines.flatMap((outline) => {
      const first = ringOf(building, level, outline);
      return outline.corners.map((_, place) => first + place);
    });
    const triangles = faceTriangles({
      around: loop.outline.corners,
      openings: inner.map(({ outline }) => outline.corners),
    }).map((corner) => vertices[corner] ?? 0);
    // Counter-clockwise looks up; turned round it looks down.
    building.triangles.push(...(solidBelow ? triangles : triangles.toReversed()));
  }
}

function addWalls(
  building: Building,
  walls: readonly Wall[],
  storey: {
    readonly low: number;
    readonly high: number;
    readonly outlineAt: (wall: Wall, level: number) => Outline;
  },
): void {
  const { low, high, outlineAt } = storey;
  const feet = walls.map((wall) => outlineAt(wall, low));
  walls.forEach((wall, place) => {
    const foot = feet[place] ?? wall.foot;
    const around = feet.filter((other) => other !== foot && surrounds(other, firstCorner(foot)));
    const lower = ringOf(building, low, foot);
    const upper = ringOf(building, high, outlineAt(wall, high));
    const count = foot.corners.length;
    for (let corner = 0; corner < count; corner += 1) {
      const next = (corner + 1) % count;
      const quad = [lower + corner, lower + next, upper + next, lower + corner, upper + next, upper + corner];
      // The solid lies inside an outline within none or two others, outside of one within one.
      building.triangles.push(...(isOdd(around.length) ? quad.toReversed() : quad));
    }
  });
}
