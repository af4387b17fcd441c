import { type DimensionId, dimensionDocs } from './dimension-ids.ts';
import { sectionLevels } from './levels.ts';
import type { SectionInput } from './section-input.ts';

/** The number of a place on the section; in the unit of its doc. */
export function dimensionValue(input: SectionInput, id: DimensionId): number {
  const { screw, clamped, insert, hole, host } = input;
  const values: Readonly<Record<DimensionId, number>> = {
    'clamped-thickness': clamped.thickness,
    gap: input.gap,
    sunk: insert.sunk,
    'insert-length': insert.length,
    well: wellLength(input),
    floor: host.floor,
    'screw-length': screw.length,
    'hole-depth': hole.depth,
    'host-thickness': host.thickness,
    'bore-printed': hole.borePrinted,
    'bore-drawn': hole.boreDrawn,
    'boss-least': hole.bossLeast,
    'boss-diameter': host.bossDiameter ?? 0,
    'screw-choice': screw.length,
    'clearance-hole': clamped.clearanceHole,
    'knurl-diameter': insert.knurlDiameter,
    bite: hole.bite,
    'wall-count': host.wallCount,
    'line-width': host.lineWidth,
    wall: host.wallThickness,
    'layer-height': host.layerHeight,
    'melt-volume': hole.meltVolume,
    infill: host.infill.density * 100,
    'top-skin': host.topSkin,
  };
  return values[id];
}

function wellLength(input: SectionInput): number {
  const { well } = sectionLevels(input);
  return well.bottom - well.top;
}

/** The digits of its doc; one more where a length needs it, none for a volume that is known to a tenth only. */
export function plainNumber(input: SectionInput, id: DimensionId): string {
  const value = dimensionValue(input, id);
  const { digits, unit } = dimensionDocs[id];
  if (unit === 'mm³') return value.toFixed(value < 10 ? digits : 0);
  const rounded = value.toFixed(digits);
  if (digits !== 1 || Math.abs(value - Number(rounded)) < 1e-6) return rounded;
  return value.toFixed(2).replace(/0$/, '');
}

const diameters: readonly DimensionId[] = ['bore-printed', 'bore-drawn', 'boss-least', 'boss-diameter'];

/** The sign that stands before a value, with or without a control. */
export function valueSign(id: DimensionId): string {
  return diameters.includes(id) ? '⌀ ' : '';
}

export function plainValue(input: SectionInput, id: DimensionId): string {
  return valueSign(id) + plainNumber(input, id);
}
