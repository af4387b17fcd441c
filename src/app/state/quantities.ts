import type { KeyQuantity } from './quantity-of-key.ts';

export interface NamedQuantity extends KeyQuantity {
  /** Path in the document. */
  readonly path: string;
  readonly label: string;
  /** Subject of a sentence about it: "A pull". */
  readonly noun?: string;
  readonly note?: string;
}

const length = (
  limit: KeyQuantity['limit'],
  step: number,
): Pick<NamedQuantity, 'limit' | 'unit' | 'step'> => ({
  limit,
  unit: 'mm',
  step,
});

/** Every single number of the joint that a person gives, drawer apart. */
export const QUANTITIES = {
  clampedThickness: {
    path: 'joint.clamped.thickness_mm',
    label: 'Thickness of the part',
    ...length('clampedThickness_mm', 0.1),
    usual: [1, 20],
  },
  clearanceHole: {
    path: 'joint.clamped.clearanceHole_mm',
    label: 'Clearance hole ⌀',
    ...length('clearanceHole_mm', 0.1),
    usual: [2, 12],
    isDiameter: true,
  },
  gap: { path: 'joint.gap_mm', label: 'Gap below it', ...length('gap_mm', 0.1) },
  sunk: { path: 'joint.sunk_mm', label: 'Insert below the face', ...length('sunk_mm', 0.1) },
  wallCount: { path: 'joint.host.wall.count', label: 'Wall lines', limit: 'wallLines', unit: '-', step: 1 },
  lineWidth: {
    path: 'joint.host.wall.lineWidth_mm',
    label: 'Line width',
    ...length('lineWidth_mm', 0.01),
    usual: [0.3, 0.8],
  },
  wallThickness: {
    path: 'joint.host.wall.thickness_mm',
    label: 'Wall, measured',
    ...length('wallThickness_mm', 0.05),
  },
  layerHeight: {
    path: 'joint.host.layerHeight_mm',
    label: 'Layer height',
    ...length('layerHeight_mm', 0.01),
    usual: [0.08, 0.4],
  },
  infill: {
    path: 'joint.host.infill.density_percent',
    label: 'Infill',
    limit: 'infill_percent',
    unit: '%',
    step: 5,
  },
  topSkin: { path: 'joint.host.topSkin_mm', label: 'Solid skin at the face', ...length('topSkin_mm', 0.1) },
  hostThickness: {
    path: 'joint.host.thickness_mm',
    label: 'Part under the face',
    ...length('hostThickness_mm', 0.1),
    usual: [4, 60],
  },
  bossDiameter: {
    path: 'joint.host.bossDiameter_mm',
    label: 'Boss ⌀',
    ...length('bossDiameter_mm', 0.1),
    usual: [5, 40],
    isDiameter: true,
    note: 'Empty: the insert sits in a larger part.',
  },
  fit: { path: 'joint.holes.fit_mm', label: 'Bore over the pilot', ...length('fit_mm', 0.01) },
  holeStep: { path: 'joint.holes.step_mm', label: 'Drawn hole in steps of', ...length('step_mm', 0.01) },
  pull: {
    path: 'joint.loads.pull_N',
    label: 'Pull on this joint',
    noun: 'A pull',
    limit: 'pull_N',
    unit: 'N',
    step: 10,
    note: 'Also as kgf or lbf.',
  },
  shear: {
    path: 'joint.loads.shear_N',
    label: 'Load across it',
    noun: 'A load',
    limit: 'shear_N',
    unit: 'N',
    step: 10,
    note: 'Also as kgf or lbf. Carried by friction.',
  },
  serviceTemperature: {
    path: 'joint.loads.serviceTemperature_degC',
    label: 'Warmest service',
    limit: 'serviceTemperature_degC',
    unit: '°C',
    step: 5,
  },
  toolStep: {
    path: 'joint.tool.step_Nm',
    label: 'Scale in steps of',
    limit: 'toolStep_Nm',
    unit: 'N·m',
    step: 0.01,
  },
  limitsFactor: {
    path: 'joint.factors.limits',
    label: 'Limits divided by',
    noun: 'A factor',
    limit: 'factor',
    unit: '-',
    step: 0.1,
  },
  closedFactor: {
    path: 'joint.factors.closed',
    label: 'Keeps closed by',
    noun: 'A factor',
    limit: 'factor',
    unit: '×',
    step: 0.1,
  },
  caliper: {
    path: 'caliper.permissibleError_mm',
    label: 'Caliper, permissible error ±',
    ...length('permissibleError_mm', 0.01),
  },
} as const satisfies Readonly<Record<string, NamedQuantity>>;

/** The readings of one insert, by their keys in its record. */
export const READINGS = {
  knurlDiameter_mm: {
    label: 'Knurl diameter',
    ...length('insertDiameter_mm', 0.01),
    usual: [2.5, 12],
    isDiameter: true,
  },
  pilotDiameter_mm: {
    label: 'Pilot diameter',
    ...length('insertDiameter_mm', 0.01),
    usual: [2, 12],
    isDiameter: true,
  },
  length_mm: { label: 'Length', ...length('insertLength_mm', 0.01), usual: [2, 15] },
  knurledLength_mm: { label: 'Knurled length', ...length('insertLength_mm', 0.01), usual: [1, 12] },
} as const satisfies Readonly<Record<string, KeyQuantity & { readonly label: string }>>;

export type ReadingKey = keyof typeof READINGS;

/** The torque that a driver can be set to. */
export const DRIVER_SETTING: KeyQuantity = { limit: 'setting_Nm', unit: 'N·m', step: 0.05, usual: [0.05, 5] };

export const DURATION: Omit<NamedQuantity, 'shown'> = {
  path: 'joint.loads.duration_h',
  label: 'Time under load',
  noun: 'A time',
  limit: 'duration_h',
  unit: 'h',
  step: 1,
};
