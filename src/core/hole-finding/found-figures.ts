import { type Derived, type Entry, entry } from '../sources/derived.ts';
import { depthFromFace, type FoundHole } from './hole.ts';

/** The sizes of a hole that was found in a part and how it leans, with where they come from; lengths in mm. */
export interface FoundFigures {
  readonly cornerDiameter: Derived;
  readonly acrossFlats: Derived;
  readonly depth: Derived;
  /** Sine of the angle between the axis and z, [-]. */
  readonly lean: Derived;
  readonly mouth: { readonly x: Derived; readonly y: Derived; readonly z: Derived };
}

/**
 * Sizes of a hole that was found in a file, with their derivations.
 *
 *     D_cf circle through the corners of the facets        D_af twice the least distance of a facet from the axis
 *     T_fa = l_a + c_m + c_e        length of the wall and both chamfers
 *     s_z  = √(n_x² + n_y²)         n the direction of the axis, of length 1
 *
 * @param hole - as it was found
 * @returns both diameters, depth from the face and the place of the mouth [mm]; the sine of the lean [-]
 * @source own-model cylinder through the corners of the facets
 * @example a wall of 6.2 mm with chamfers of 0.5 and 0 mm is 6.7 mm deep
 */
export function foundFigures(hole: FoundHole): FoundFigures {
  const { depth, chamfers, mouth, direction } = hole;
  const facets = entry('N_f', hole.facets, '-');
  const at = (symbol: string, value: number) =>
    figure(symbol, value, 'where the axis of the fitted circle meets the mouth', []);
  return {
    cornerDiameter: figure('D_cf', hole.cornerDiameter, 'circle fitted through the corners of the facets', [
      facets,
    ]),
    acrossFlats: figure('D_af', hole.acrossFlats, 'twice the least distance of a facet from the axis', [
      facets,
    ]),
    depth: figure('T_fa', depthFromFace(hole), 'l_a + c_m + c_e', [
      entry('l_a', depth, 'mm'),
      entry('c_m', chamfers.mouth, 'mm'),
      entry('c_e', chamfers.far, 'mm'),
    ]),
    lean: {
      ...figure('s_z', Math.hypot(direction.x, direction.y), '√(n_x² + n_y²)', [
        entry('n_x', direction.x, '-'),
        entry('n_y', direction.y, '-'),
      ]),
      unit: '-',
    },
    mouth: { x: at('x_m', mouth.x), y: at('y_m', mouth.y), z: at('z_m', mouth.z) },
  };
}

const figure = (symbol: string, value: number, formula: string, entries: readonly Entry[]): Derived => ({
  symbol,
  value,
  unit: 'mm',
  formula,
  entries,
  source: 'own-model',
  standing: 'measured',
});
