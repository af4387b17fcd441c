import { type Derived, entry } from '../sources/derived.ts';
import { inPlaneForces } from './in-plane.ts';
import { outOfPlanePulls, type Pivot } from './out-of-plane.ts';
import { centroidOf, type ScrewPattern, screwPositions } from './pattern.ts';

/** Smaller than this a load is binary dust of arms that cancel, N. */
const DUST = 1e-6;

const withoutDust = (force: number): number => (Math.abs(force) < DUST ? 0 : force);

/** A load on the clamped part: force [N] at a point [mm] from the pattern's origin, and a moment besides [N·mm]. */
export interface PartLoad {
  readonly force: { readonly x: number; readonly y: number; readonly pull: number };
  /** z is the height above the face of the joint. */
  readonly at: { readonly x: number; readonly y: number; readonly z: number };
  readonly moment: { readonly x: number; readonly y: number; readonly z: number };
}

/** What one screw has to hold. */
export interface ScrewLoad {
  readonly x: number;
  readonly y: number;
  /** Along the screw, N; negative where the part presses. */
  readonly pull: number;
  /** Across the screw, N. */
  readonly shear: number;
}

/** What the worst screw of the pattern has to hold, and all of them for the drawing. */
export interface PatternLoads {
  readonly screws: readonly ScrewLoad[];
  readonly pull: Derived;
  readonly shear: Derived;
}

/**
 * Moments of a load about the centroid of the screws.
 *
 *     M = M0 + (r − c) × F
 *
 * @param load - force [N], point r [mm], moment M0 [N·mm]
 * @param centre - centroid c [mm]
 * @returns moments about x, y and z [N·mm]
 * @source elasticity statics
 */
export function momentsAbout(
  load: PartLoad,
  centre: { readonly x: number; readonly y: number },
): { readonly x: number; readonly y: number; readonly z: number } {
  const { force, at, moment } = load;
  const x = at.x - centre.x;
  const y = at.y - centre.y;
  return {
    x: moment.x + y * force.pull - at.z * force.y,
    y: moment.y + at.z * force.x - x * force.pull,
    z: moment.z + x * force.y - y * force.x,
  };
}

/**
 * Pull and shear on the screws of a pattern; the joint is then asked with the largest of each.
 *
 *     pull = max ti (not below 0)      shear = max |F' + F''|
 *
 * The two may belong to different screws: taking them together is on the careful side.
 *
 * @param pattern - layout of the screws [mm]
 * @param load - what acts on the clamped part [N, mm, N·mm]
 * @param pivot - what the part turns about when a moment lifts it
 * @returns loads of every screw, and the largest pull and shear [N]
 * @source shigley ch. 8, bolt groups
 * @source nasa-rp-1228 rotation about the compression edge
 */
export function screwLoads(pattern: ScrewPattern, load: PartLoad, pivot: Pivot): PatternLoads {
  const positions = screwPositions(pattern);
  const moments = momentsAbout(load, centroidOf(positions));
  const shears = inPlaneForces(
    positions.map((position) => ({ ...position, area: 1 })),
    { x: load.force.x, y: load.force.y, moment: moments.z },
  );
  const pulls = outOfPlanePulls(
    positions,
    { pull: load.force.pull, aboutX: moments.x, aboutY: moments.y },
    pivot,
  );
  const screws = positions.map((position, index) => {
    const shear = shears[index];
    return {
      ...position,
      pull: withoutDust(pulls[index] ?? 0),
      shear: withoutDust(shear ? Math.hypot(shear.x, shear.y) : 0),
    };
  });
  return { screws, pull: greatestPull(screws, load, moments), shear: greatestShear(screws, load, moments) };
}

type Moments = ReturnType<typeof momentsAbout>;

const greatestPull = (screws: readonly ScrewLoad[], load: PartLoad, moments: Moments): Derived => ({
  symbol: 'P',
  value: Math.max(0, ...screws.map(({ pull }) => pull)),
  unit: 'N',
  formula: screws.length === 1 ? 'F_z + M_x/L_y + M_y/L_x' : 'max(F_z/n + M_x · L_y/ΣL_y² + M_y · L_x/ΣL_x²)',
  entries: [
    entry('F_z', load.force.pull, 'N'),
    entry('n', screws.length, '-'),
    entry('M_x', moments.x, 'N·mm'),
    entry('M_y', moments.y, 'N·mm'),
  ],
  source: 'nasa-rp-1228',
  standing: 'published',
});

const greatestShear = (screws: readonly ScrewLoad[], load: PartLoad, moments: Moments): Derived => ({
  symbol: 'Q',
  value: Math.max(...screws.map(({ shear }) => shear)),
  unit: 'N',
  formula: 'max |V/n + M_z · r/Σr²|',
  entries: [
    entry('V', Math.hypot(load.force.x, load.force.y), 'N'),
    entry('n', screws.length, '-'),
    entry('M_z', moments.z, 'N·mm'),
  ],
  source: 'shigley',
  standing: 'published',
});
