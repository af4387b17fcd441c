import { type ClampedShapes, clampedShapes } from './clamped-shapes.ts';
import { type ForcePath, forcePath } from './force-path.ts';
import type { Frame } from './frame.ts';
import { type HostShapes, hostShapes } from './host-shapes.ts';
import { insertProfile } from './insert-profile.ts';
import { type Levels, sectionLevels } from './levels.ts';
import { type MeltShapes, meltShapes } from './melt-shapes.ts';
import { hostStructure, type PlasticStructure } from './plastic-structure.ts';
import { lowered, mirrored, type Outline, type Polyline, point, turnedOver } from './points.ts';
import { type ScrewShapes, screwShapes } from './screw-shapes.ts';
import type { SectionInput } from './section-input.ts';

/** Every shape of the section in mm: x from the axis, y from the printed face downwards. */
export interface SectionGeometry {
  readonly levels: Levels;
  readonly frame: Frame;
  readonly host: HostShapes;
  readonly structure: PlasticStructure;
  readonly clamped: ClampedShapes;
  readonly melt: MeltShapes;
  readonly insert: InsertShapes;
  readonly screw: ScrewShapes;
  readonly force: ForcePath;
}

export interface InsertShapes {
  /** The two cut halves. */
  readonly halves: readonly Outline[];
  /** The major diameter of its thread, seen where no screw covers it. */
  readonly threadLines: readonly Polyline[];
}

/** Lays out the whole section; no mechanics, only where things are. */
export function sectionGeometry(input: SectionInput, frame: Frame): SectionGeometry {
  const levels = sectionLevels(input);
  return {
    levels,
    frame,
    host: hostShapes(input, levels, frame),
    structure: hostStructure(input, levels, frame),
    clamped: clampedShapes(input, levels, frame),
    melt: meltShapes(input, levels),
    insert: insertShapes(input, levels),
    screw: screwShapes(input, levels),
    force: forcePath(input, levels, frame),
  };
}

function insertShapes({ insert, screw }: SectionInput, { insert: { top, bottom } }: Levels): InsertShapes {
  const { half } = insertProfile({ ...insert, ...screw, length: insert.length });
  const placed = lowered(half, top);
  const right = insert.side === 'far-side' ? turnedOver(placed, (top + bottom) / 2) : placed;
  const major = screw.nominalDiameter / 2;
  return {
    halves: [mirrored(right), right],
    threadLines: [-major, major].map((x) => [point(x, top), point(x, bottom)]),
  };
}
