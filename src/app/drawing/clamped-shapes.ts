import type { Frame } from './frame.ts';
import { uprightFreehand } from './freehand.ts';
import type { Levels } from './levels.ts';
import { infillLines, type PlasticStructure, SOLID_DENSITY, wallLines } from './plastic-structure.ts';
import { bothSides, boxOutline, mirrored, type Outline, type Point, type Polyline, point } from './points.ts';
import type { SectionInput } from './section-input.ts';

export interface ClampedShapes {
  readonly halves: readonly Outline[];
  readonly edges: readonly Polyline[];
  readonly breakEdges: readonly Polyline[];
  /** A printed lid shows its structure; a metal one is hatched. */
  readonly structure?: PlasticStructure;
  /** The two cut halves of a metal spacer; empty without one. */
  readonly sleeve: readonly Outline[];
}

/** The clamped part, cut on both sides of its clearance hole. */
export function clampedShapes(input: SectionInput, levels: Levels, frame: Frame): ClampedShapes {
  const { top, bottom } = levels.clamped;
  const bore = boreEdge(input, levels);
  const breakEdge = uprightFreehand({
    at: frame.halfWidth,
    from: top,
    to: bottom,
    wobble: frame.wobble,
    step: 2.6 * frame.wobble,
    seed: 7,
  });
  const right = [...bore, ...[...breakEdge].reverse()];
  const edge = [point(frame.halfWidth, top), ...bore, point(frame.halfWidth, bottom)];
  return {
    halves: [mirrored(right), right],
    edges: [mirrored(edge), edge],
    breakEdges: [mirrored(breakEdge), breakEdge],
    sleeve: sleeveHalves(input, levels, bore),
    ...(input.clamped.kind === 'printed' ? { structure: lidStructure(input, levels, frame) } : {}),
  };
}

/** A tube as long as the part is thick; a countersink goes into it as into the part. */
function sleeveHalves(
  { clamped }: SectionInput,
  { clamped: { top, bottom } }: Levels,
  bore: readonly Point[],
): readonly Outline[] {
  if (!clamped.sleeve) return [];
  const outer = clamped.sleeve.outsideDiameter / 2;
  const inner = bore.map(({ x, y }) => point(Math.min(x, outer), y));
  const right = [...inner, point(outer, bottom), point(outer, top)];
  return [mirrored(right), right];
}

/** Right edge of the clearance hole from the top, with the countersink that a countersunk head asks for. */
function boreEdge({ screw, clamped }: SectionInput, { clamped: { top, bottom } }: Levels): readonly Point[] {
  const radius = clamped.clearanceHole / 2;
  const { shape, diameter, height } = screw.head;
  if (shape !== 'countersunk') return [point(radius, top), point(radius, bottom)];
  const outer = diameter / 2;
  const slope = (outer - screw.nominalDiameter / 2) / height;
  const depth = (outer - radius) / slope;
  if (depth <= 0) return [point(radius, top), point(radius, bottom)];
  if (top + depth >= bottom) return [point(outer, top), point(outer - slope * (bottom - top), bottom)];
  return [point(outer, top), point(radius, top + depth), point(radius, bottom)];
}

function lidStructure(input: SectionInput, { clamped }: Levels, { halfWidth }: Frame): PlasticStructure {
  const { host } = input;
  const { top, bottom } = clamped;
  const full = 1.2 * halfWidth;
  const skin = Math.min(host.topSkin, (bottom - top) / 2);
  const radius = (input.clamped.sleeve?.outsideDiameter ?? input.clamped.clearanceHole) / 2;
  const wall = { left: radius, right: radius + host.wallThickness, top, bottom, count: host.wallCount };
  const whole = { left: -full, right: full, top, bottom };
  const solid = host.infill.density >= SOLID_DENSITY || bottom - top - 2 * skin < host.layerHeight;
  const skins = [
    { ...whole, bottom: top + skin },
    { ...whole, top: bottom - skin },
  ];
  return {
    solids: solid ? [boxOutline(whole)] : [...skins.map(boxOutline), ...bothSides(wall)],
    wallLines: wallLines(wall),
    bounds: solid
      ? []
      : [
          ...[-wall.right, wall.right].map((x) => [point(x, top), point(x, bottom)]),
          ...[top + skin, bottom - skin].map((y) => [point(-full, y), point(full, y)]),
        ],
    infill: solid
      ? []
      : infillLines({ ...whole, ...host.infill, axis: 'along-build', lineWidth: host.lineWidth }),
  };
}
