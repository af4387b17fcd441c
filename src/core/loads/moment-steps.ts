import { type CoreUnit, type Derived, type Entry, entry } from '../sources/derived.ts';
import { centroidOf, screwPositions } from './pattern.ts';
import { type LoadOnPattern, type Moments, momentsAbout } from './screw-loads.ts';

const MOMENTS = {
  x: { symbol: 'M_x', given: 'M_x0' },
  y: { symbol: 'M_y', given: 'M_y0' },
  z: { symbol: 'M_z', given: 'M_z0' },
} as const;

/**
 * Moments of a load about the centroid of the screws, each with its derivation; see momentsAbout.
 *
 *     Mx = Mx0 + yF · Fz − zF · Fy        and so on
 *
 * @param on - layout and load [mm, N, N·mm]
 * @returns moments about x, y and z [N·mm]
 * @source elasticity statics
 */
export function momentsOf({ pattern, load }: LoadOnPattern): Readonly<Record<'x' | 'y' | 'z', Derived>> {
  const centre = centroidOf(screwPositions(pattern));
  const { force, at, moment } = load;
  const values: Moments = momentsAbout(load, centre);
  const arms = {
    x: entry('x_F', at.x - centre.x, 'mm'),
    y: entry('y_F', at.y - centre.y, 'mm'),
    z: entry('z_F', at.z, 'mm'),
  };
  const forces = {
    x: entry('F_x', force.x, 'N'),
    y: entry('F_y', force.y, 'N'),
    z: entry('F_z', force.pull, 'N'),
  };
  const about = (axis: 'x' | 'y' | 'z', one: 'x' | 'y' | 'z', other: 'x' | 'y' | 'z'): Derived => {
    const { symbol, given } = MOMENTS[axis];
    const [arm, further] = [arms[one], arms[other]];
    const text = `${given} + ${arm.symbol} · ${forces[other].symbol} − ${further.symbol} · ${forces[one].symbol}`;
    const putIn = [entry(given, moment[axis], 'N·mm'), arm, forces[other], further, forces[one]];
    return ofStatics(symbol, { text, value: values[axis] }, putIn, 'N·mm');
  };
  return { x: about('x', 'y', 'z'), y: about('y', 'z', 'x'), z: about('z', 'x', 'y') };
}

/** A step of statics. */
export const ofStatics = (
  symbol: string,
  { text, value }: { readonly text: string; readonly value: number },
  entries: readonly Entry[],
  unit: CoreUnit,
): Derived => ({ symbol, value, unit, formula: text, entries, source: 'elasticity', standing: 'published' });
