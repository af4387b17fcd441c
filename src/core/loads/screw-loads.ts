import { type Derived, entryBy } from '../sources/derived.ts';
import { inPlaneForces } from './in-plane.ts';
import { outOfPlanePulls, type Pivot } from './out-of-plane.ts';
import { centroidOf, type ScrewPattern, type ScrewPosition, screwPositions } from './pattern.ts';

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

/** About x, y and z, N·mm. */
export interface Moments {
  readonly x: number;
  readonly y: number;
  readonly z: number;
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
export function momentsAbout(load: PartLoad, centre: { readonly x: number; readonly y: number }): Moments {
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
  const on = { pattern, load, pivot };
  return { screws, pull: greatestPull(screws, on), shear: greatestShear(shears, on) };
}

/** A load on a pattern. */
export interface LoadOnPattern {
  readonly pattern: ScrewPattern;
  readonly load: PartLoad;
  readonly pivot: Pivot;
}

/** Place of the largest in a list. */
const placeOfLargest = (values: readonly number[]): number => values.indexOf(Math.max(...values));

function greatestPull(screws: readonly ScrewLoad[], on: LoadOnPattern): Derived {
  const pulls = screws.map(({ pull }) => pull);
  const index = placeOfLargest(pulls);
  const worst = pulls[index] ?? 0;
  return {
    symbol: 'P',
    value: Math.max(0, worst),
    unit: 'N',
    formula: worst === 0 ? '0, nothing pulls at a screw' : 'max(0, F_s)',
    entries: [entryBy('F_s', worst, 'N', (steps) => steps.pullOnScrew({ ...on, index }))],
    source: 'nasa-rp-1228',
    standing: 'published',
  };
}

function greatestShear(shears: readonly ScrewPosition[], on: LoadOnPattern): Derived {
  const sizes = shears.map(({ x, y }) => withoutDust(Math.hypot(x, y)));
  const index = placeOfLargest(sizes);
  const worst = sizes[index] ?? 0;
  const { x, y } = shears[index] ?? { x: 0, y: 0 };
  return {
    symbol: 'Q',
    value: worst,
    unit: 'N',
    formula: worst === 0 ? '0, nothing acts across a screw' : '√(Q_x² + Q_y²)',
    entries: [
      entryBy('Q_x', x, 'N', (steps) => steps.shearOnScrew({ ...on, index }).x),
      entryBy('Q_y', y, 'N', (steps) => steps.shearOnScrew({ ...on, index }).y),
    ],
    source: 'shigley',
    standing: 'published',
  };
}
