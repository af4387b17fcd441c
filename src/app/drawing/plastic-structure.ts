import type { InfillFamily, InsertAxis } from '../../core/host/host.ts';
import { bossSpans, type Frame } from './frame.ts';
import { throughRadius } from './host-shapes.ts';
import type { Levels } from './levels.ts';
import { type Box, bothSides, boxOutline, mirrored, type Outline, type Polyline, point } from './points.ts';
import type { SectionInput } from './section-input.ts';

/** What a printed part shows when it is cut: it has no hatch, but its own structure. */
export interface PlasticStructure {
  /** Solid plastic: walls, skins, floor. */
  readonly solids: readonly Outline[];
  /** Lines between neighbouring wall lines. */
  readonly wallLines: readonly Polyline[];
  /** Where walls and skins end. */
  readonly bounds: readonly Polyline[];
  /** Middle lines of the infill's walls, each one line wide. */
  readonly infill: readonly Polyline[];
}

/** From this density on the infill has no openings left to draw. */
export const SOLID_DENSITY = 0.99;

/** Walls round the hole down to its end, skins at both faces, solid floor, infill between. */
export function hostStructure(input: SectionInput, levels: Levels, frame: Frame): PlasticStructure {
  const { host } = input;
  const full = 1.2 * frame.halfWidth;
  const whole = { left: -full, right: full, ...levels.host };
  const walls = wallBands(input, levels);
  const beads = host.axis === 'along-build' ? walls : [];
  if (host.infill.density >= SOLID_DENSITY) {
    return {
      solids: [boxOutline(whole)],
      wallLines: beads.flatMap(wallLines),
      bounds: [],
      infill: [],
    };
  }
  const solids = [...skins(input, full), ...walls, ...floorSkin(input, levels)];
  return {
    solids: solids.flatMap(bothSides),
    wallLines: beads.flatMap(wallLines),
    bounds: [...walls, ...floorSkin(input, levels), ...boundedSkins(input, full, walls)].flatMap(boxBounds),
    infill: infillLines({ ...whole, ...host.infill, axis: host.axis, lineWidth: host.lineWidth }),
  };
}

export interface WallBand extends Box {
  /** Lines side by side in it. */
  readonly count: number;
}

/** Right half: walls round the hole, above a shoulder, and those of a free boss; one band where they meet. */
function wallBands(input: SectionInput, { hole, floor }: Levels): readonly WallBand[] {
  const { host } = input;
  const count = host.wallCount;
  const bore = input.hole.borePrinted / 2;
  const through = throughRadius(input);
  const isFar = input.insert.side === 'far-side';
  const shoulder = { left: through, right: through + host.wallThickness, ...floor, count };
  const inner = { left: bore, right: bore + host.wallThickness, ...hole, count };
  const above = isFar && floor.bottom > floor.top ? [shoulder] : [];
  const spans = bossSpans(input);
  const outside = (host.bossDiameter ?? 0) / 2;
  if (!spans) return [...above, inner];
  const outer = { left: Math.max(0, outside - host.wallThickness), right: outside, count };
  if (inner.right > outer.left) {
    const lines = Math.round(((outside - bore) / host.wallThickness) * count);
    const beyond = { top: Math.max(spans.boss.top, hole.bottom), bottom: spans.boss.bottom };
    const before = { top: spans.boss.top, bottom: Math.min(spans.boss.bottom, hole.top) };
    const rest = [beyond, before].filter(({ top, bottom }) => bottom > top);
    const merged = { ...inner, right: outside, count: Math.max(1, lines) };
    return [...above, merged, ...rest.map((span) => ({ ...outer, ...span }))];
  }
  return [...above, inner, { ...outer, ...spans.boss }];
}

/** Solid layers at the outer faces, a plate's own face among them; right half. */
function skins(input: SectionInput, full: number): readonly Box[] {
  const { topSkin, thickness, bossDiameter } = input.host;
  const skin = Math.min(topSkin, thickness / 2);
  const spans = bossSpans(input);
  const faces = [
    { left: 0, right: full, top: 0, bottom: skin },
    { left: 0, right: full, top: thickness - skin, bottom: thickness },
  ];
  if (!spans) return faces;
  const { plate } = spans;
  const depth = Math.min(skin, plate.bottom - plate.top);
  const isUnder = plate.top > 0;
  const top = isUnder ? plate.top : plate.bottom - depth;
  return [...faces, { left: (bossDiameter ?? 0) / 2, right: full, top, bottom: top + depth }];
}

/** The skins' ends are seen only where no wall runs through them. */
function boundedSkins(input: SectionInput, full: number, walls: readonly WallBand[]): readonly Box[] {
  return skins(input, full).map((skin) => {
    const crossing = walls.filter(({ top, bottom }) => top < skin.bottom && bottom > skin.top);
    return { ...skin, left: Math.max(skin.left, ...crossing.map(({ right }) => right)) };
  });
}

/** Solid layers that carry the bottom of the hole, a little wider than it; right half. */
function floorSkin({ host, hole, insert }: SectionInput, { floor }: Levels): readonly Box[] {
  if (insert.side === 'far-side') return [];
  const right = hole.borePrinted / 2 + 2 * host.lineWidth;
  return [{ left: 0, right, top: floor.top, bottom: Math.min(floor.bottom, floor.top + host.topSkin) }];
}

/** Outline of a box on both sides, open towards the axis. */
function boxBounds({ left, right, top, bottom }: Box): readonly Polyline[] {
  if (right <= left || bottom <= top) return [];
  const corners = [point(left, top), point(right, top), point(right, bottom), point(left, bottom)];
  const line = left > 0 ? [...corners, point(left, top)] : corners;
  return [mirrored(line), line];
}

/** Lines inside a band that stand for its beads; both sides of the axis. */
export function wallLines({ left, right, top, bottom, count }: WallBand): readonly Polyline[] {
  return Array.from({ length: Math.max(0, count - 1) }, (_, index) => {
    const x = left + ((right - left) * (index + 1)) / count;
    return [point(x, top), point(x, bottom)];
  }).flatMap((line) => [mirrored(line), line]);
}

export interface InfillArea extends Box {
  readonly density: number;
  readonly family: InfillFamily;
  readonly axis: InsertAxis;
  readonly lineWidth: number;
}

/** Corners of one wave of a cellular infill. */
const WAVE_CORNERS = 16;

/**
 * Infill to scale: lines one bead wide, as far apart as the density asks. Prismatic walls stand along the build;
 * cellular ones wave and touch their neighbours.
 */
export function infillLines(area: InfillArea): readonly Polyline[] {
  const { density, family, axis, lineWidth, left, right, top, bottom } = area;
  if (density <= 0) return [];
  const spacing = lineWidth / density;
  if (family === 'prismatic' && axis === 'across-build') {
    const first = Math.ceil(top / spacing);
    return numbered(first, Math.floor(bottom / spacing)).map((index) => [
      point(left, (index + 0.5) * spacing),
      point(right, (index + 0.5) * spacing),
    ]);
  }
  const columns = numbered(Math.floor(left / spacing), Math.ceil(right / spacing));
  if (family === 'prismatic') {
    return columns.map((index) => [
      point((index + 0.5) * spacing, top),
      point((index + 0.5) * spacing, bottom),
    ]);
  }
  const amplitude = Math.max(0, (spacing - lineWidth) / 2);
  const wave = 2.6 * spacing;
  const corners = numbered(0, Math.ceil(((bottom - top) * WAVE_CORNERS) / wave));
  return columns.map((column) =>
    corners.map((corner) => {
      const swing = Math.cos((2 * Math.PI * corner) / WAVE_CORNERS) * (column % 2 === 0 ? 1 : -1);
      return point((column + 0.5) * spacing + amplitude * swing, top + (corner * wave) / WAVE_CORNERS);
    }),
  );
}

function numbered(first: number, last: number): readonly number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index);
}
