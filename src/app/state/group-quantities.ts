import type { NamedQuantity } from './quantities.ts';

const place = (axis: 'x' | 'y' | 'z', label: string) =>
  ({ path: `joint.loads.at_mm.${axis}`, label, limit: 'place_mm', unit: 'mm', step: 1 }) as const;

const moment = (axis: 'x' | 'y' | 'z', label: string, note: string) =>
  ({
    path: `joint.loads.moment_Nm.${axis}`,
    label,
    noun: 'A moment',
    limit: 'moment_Nm',
    unit: 'N·m',
    step: 0.1,
    note,
  }) as const;

/** The numbers of the screws of a part, of where its loads act, and of a spacer. */
export const GROUP_QUANTITIES = {
  sleeveDiameter: {
    path: 'joint.clamped.sleeve.outsideDiameter_mm',
    label: 'Spacer ⌀',
    limit: 'sleeveDiameter_mm',
    unit: 'mm',
    step: 0.1,
    usual: [3, 20],
    isDiameter: true,
  },
  columns: {
    path: 'joint.pattern.columns',
    label: 'Screws along x',
    limit: 'patternCount',
    unit: '-',
    step: 1,
  },
  rows: { path: 'joint.pattern.rows', label: 'Screws along y', limit: 'patternCount', unit: '-', step: 1 },
  spacingX: {
    path: 'joint.pattern.spacingX_mm',
    label: 'Spacing along x',
    limit: 'spacing_mm',
    unit: 'mm',
    step: 1,
  },
  spacingY: {
    path: 'joint.pattern.spacingY_mm',
    label: 'Spacing along y',
    limit: 'spacing_mm',
    unit: 'mm',
    step: 1,
  },
  circleCount: {
    path: 'joint.pattern.count',
    label: 'Screws on the circle',
    limit: 'patternCount',
    unit: '-',
    step: 1,
    note: 'The first on the x axis.',
  },
  circleDiameter: {
    path: 'joint.pattern.diameter_mm',
    label: 'Circle ⌀',
    limit: 'spacing_mm',
    unit: 'mm',
    step: 1,
  },
  shearAcross: {
    path: 'joint.loads.shearAcross_N',
    label: 'Load across it, along y',
    noun: 'A load',
    limit: 'shear_N',
    unit: 'N',
    step: 10,
    note: 'Also as kgf or lbf. Carried by friction.',
  },
  atX: place('x', 'Loads act at x'),
  atY: place('y', 'Loads act at y'),
  atZ: place('z', 'Height above the joint'),
  momentX: moment('x', 'Moment about x', 'Positive lifts the side of positive y.'),
  momentY: moment('y', 'Moment about y', 'Positive lifts the side of negative x.'),
  momentZ: moment('z', 'Moment in the plane', 'Positive turns counter-clockwise.'),
  pivotX: {
    path: 'joint.loads.pivot.x_mm',
    label: 'Edge along x at',
    noun: 'The distance to the edge',
    limit: 'edge_mm',
    unit: 'mm',
    step: 1,
    note: 'From the middle of the screws, beyond every screw.',
  },
  pivotY: {
    path: 'joint.loads.pivot.y_mm',
    label: 'Edge along y at',
    noun: 'The distance to the edge',
    limit: 'edge_mm',
    unit: 'mm',
    step: 1,
    note: 'From the middle of the screws, beyond every screw.',
  },
} as const satisfies Readonly<Record<string, NamedQuantity>>;

/** One coordinate of one screw of a free pattern. */
export const screwPlace = (index: number, axis: 'x' | 'y'): NamedQuantity => ({
  path: `joint.pattern.positions_mm.${index}.${axis}`,
  label: `Screw ${index + 1}, ${axis}`,
  limit: 'place_mm',
  unit: 'mm',
  step: 1,
});
