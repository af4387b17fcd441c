import { ENOUGH_READINGS } from '../holes/calibration-notices.ts';
import { FITTED_DIAMETERS } from '../holes/print-error.ts';
import type { NoticeCode } from './assessment.ts';
import type { NoticeRule } from './notice-rule.ts';

/** Below this chance of landing in the window, a coupon is worth more than another calculation, [-]. */
const RARELY_FITS = 0.8;
/** Density of infill in the joining zone above which a study found no more to gain, [-]. */
const PRACTICE_INFILL = 0.7;
/** Wall above which the same study found no more to gain, mm. */
const PRACTICE_WALL = 2.4;
/** How far beyond the diameters read a hole is still among them, mm. */
const READ_BEYOND = 0.25;
/** Floor under a hole that printing services ask for, mm. */
const PRACTICE_FLOOR = 2;

/** What to know about the hole and its surroundings. */
export const HOLE_NOTICES = {
  'boss-below-practice': ({ joint, found }) => {
    const given = joint.host.bossDiameter;
    const least = found.hole.bossDiameter;
    return given !== undefined && given < least.value ? { given, least } : undefined;
  },
  'wall-below-practice': ({ found }) => {
    const { wall } = found.hole;
    return wall.value < PRACTICE_WALL ? { wall, practice: PRACTICE_WALL } : undefined;
  },
  'infill-below-practice': ({ joint }) =>
    joint.host.infill.density < PRACTICE_INFILL
      ? { percent: 100 * joint.host.infill.density, practice: 100 * PRACTICE_INFILL }
      : undefined,
  'floor-below-practice': ({ joint, found }) => {
    const { floor } = found.hole;
    return joint.insertSide === 'near-side' && floor.value < PRACTICE_FLOOR
      ? { floor, practice: PRACTICE_FLOOR }
      : undefined;
  },
  'hole-outside-fit-range': ({ joint, found }) => {
    // A measured bore asks nothing of the printer.
    if (joint.holes.existing?.known === 'as-measured') return undefined;
    const { drawn } = found.hole;
    const { printer, behaviour } = joint.holes;
    // A printer that was read is known between the diameters read on it.
    const read = behaviour.standing === 'measured' ? printer?.calibration.range : undefined;
    const { least, greatest } = read ?? FITTED_DIAMETERS;
    const beyond = read ? READ_BEYOND : 0;
    if (drawn.value >= least - beyond && drawn.value <= greatest + beyond) return undefined;
    return { drawn, least, greatest, of: read ? 'readings' : 'published-fit' };
  },
  'gauge-was-compensated': ({ joint }) =>
    joint.holes.printer?.rule.code === 'gauge-was-compensated'
      ? { printer: joint.holes.printer.name }
      : undefined,
  'printer-of-other-material': ({ joint }) => {
    const { printer } = joint.holes;
    return printer && printer.material.id !== joint.host.material.id
      ? { printer: printer.name, read: printer.material.name, material: joint.host.material.name }
      : undefined;
  },
  'printer-of-other-layers': ({ joint }) => {
    const { printer } = joint.holes;
    return printer && printer.layerHeight !== joint.host.layerHeight
      ? { printer: printer.name, read: printer.layerHeight, layerHeight: joint.host.layerHeight }
      : undefined;
  },
  'few-holes-read': ({ joint }) => {
    const count = joint.holes.printer?.calibration.count ?? ENOUGH_READINGS;
    return count < ENOUGH_READINGS ? { count, enough: ENOUGH_READINGS } : undefined;
  },
  'hole-rarely-fits': ({ joint, found }) => {
    // Of a hole that is there its own section tells, with what to do.
    if (joint.holes.existing) return undefined;
    const { chance } = found.hole.window;
    return chance.value < RARELY_FITS ? { chance } : undefined;
  },
  'insert-across-layers': ({ joint }) =>
    joint.host.axis === 'across-build' ? { material: joint.host.material.name } : undefined,
} as const satisfies Partial<Record<NoticeCode, NoticeRule>>;
