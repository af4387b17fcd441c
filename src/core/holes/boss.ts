import type { Host } from '../host/host.ts';
import { lineSpacingOf } from '../host/wall-thickness.ts';
import type { InsertDimensions } from '../inserts/dimensions.ts';
import { withoutDust } from '../numerics/binary-dust.ts';
import { type Derived, entry, entryBy, entryFrom } from '../sources/derived.ts';

/** Boss over knurl diameter, [-]: data sheets ask 1.72 to 1.96. */
const BOSS_PER_KNURL = 1.75;
/** Boss diameters are given to this step, mm. */
const BOSS_STEP = 0.1;
/** Guards a whole number against binary dust. */
const DUST = 1e-9;
/** Leg of the chamfer at the mouth, mm; circulating values 0.3 to 0.6. */
const CHAMFER = 0.5;

/**
 * Smallest diameter of the boss round an insert.
 *
 *     Db = 1.75 · Dk, up to 0.1 mm
 *
 * Knurl and a wall of 0.37 to 0.5 of its diameter, as data sheets of moulded parts ask.
 *
 * @param insert - knurl diameter Dk [mm]
 * @returns Db [mm]
 * @source insert-data-sheet wall over knurl diameter
 * @example knurl 5 mm gives 8.8 mm
 */
export function leastBossDiameter(insert: InsertDimensions): Derived {
  const knurl = insert.knurlDiameter.estimate;
  return {
    symbol: 'D_b',
    value: withoutDust(Math.ceil((BOSS_PER_KNURL * knurl.value) / BOSS_STEP - DUST) * BOSS_STEP),
    unit: 'mm',
    formula: '⌈1.75 · D_k/(0.1 mm)⌉ · 0.1 mm',
    entries: [entryFrom(knurl)],
    source: 'insert-data-sheet',
    standing: 'common-practice',
  };
}

/**
 * Wall lines that fill the boss from the bore outward.
 *
 *     n = ⌈((Db − Dt)/2 − w)/s⌉ + 1        s = w − h·(1 − π/4), or w for plain beads
 *
 * @param boss - boss diameter Db [mm]
 * @param bore - bore as printed Dt [mm], below Db
 * @param host - line width w and layer height h [mm], bead convention
 * @returns n [-], a whole number ≥ 1
 * @source slicer-flow-note spacing of lines
 * @example boss 8.8, bore 4.3, lines of 0.42 in layers of 0.2 mm gives 6
 */
export function wallLines(boss: Derived, bore: Derived, host: Pick<Host, 'wall' | 'layerHeight'>): Derived {
  const { wall, layerHeight } = host;
  const w = wall.lineWidth;
  const plain = wall.kind === 'lines' && wall.convention === 'plain-beads';
  const spacing = plain ? w : lineSpacingOf({ lineWidth: w, layerHeight });
  const beyondFirst = (boss.value - bore.value) / 2 - w;
  return {
    symbol: 'n',
    value: Math.max(0, Math.ceil(beyondFirst / spacing - DUST)) + 1,
    unit: '-',
    formula: `max(0, ⌈((D_b − D_t)/2 − w)/${plain ? 'w' : 's'}⌉) + 1`,
    entries: [
      entryFrom(boss),
      entryFrom(bore),
      entry('w', w, 'mm'),
      ...(plain ? [] : [entryBy('s', spacing, 'mm', (steps) => steps.lineSpacing(w, layerHeight))]),
    ],
    source: 'slicer-flow-note',
    standing: 'common-practice',
  };
}

/**
 * Leg of the 45° chamfer at the mouth of the hole.
 *
 * Small in printed parts: sources ask 0.3 to 0.6 mm, data sheets of moulded parts none. A mouth that lies on the
 * print bed needs more where the first layer flares.
 *
 * @returns c [mm]
 * @source trade-practice 0.4 × 45° to 0.6 mm
 */
export function mouthChamfer(): Derived {
  return {
    symbol: 'c',
    value: CHAMFER,
    unit: 'mm',
    formula: '0.5 mm, at 45°',
    entries: [],
    source: 'trade-practice',
    standing: 'common-practice',
  };
}
