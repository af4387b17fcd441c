import type { InsertAxis, WallConvention } from '../../core/host/host.ts';
import type { SettingMethod } from '../../core/inserts/insert.ts';
import type { Catalogue } from '../../core/joint/catalogue.ts';
import type { TorqueTool, Use } from '../../core/joint/joint.ts';
import { DRIVER_DEVIATION, HAND_DEVIATION } from '../../core/torque/tool-deviation.ts';
import { CATALOGUE } from '../../data/catalogue.ts';
import type { JointDocument } from '../../storage/document.ts';
import { decimalText, percentText } from '../../wording/amount.ts';
import { AXIS_NAMES, SETTING_NAMES, USE_NAMES } from '../../wording/names.ts';
import type { Choice } from '../fields/field-props.ts';

type Named = { readonly id: string; readonly name: string };

const named = (rows: readonly Named[]): Choice<string>[] =>
  rows.map(({ id, name }) => ({ value: id, label: name }));

function worded<Value extends string>(names: Readonly<Record<Value, string>>): Choice<Value>[] {
  const entries = Object.entries(names) as [Value, string][];
  return entries.map(([value, label]) => ({ value, label }));
}

export const HOST_MATERIALS = named(CATALOGUE.hostMaterials);
export const INFILL_PATTERNS = named(CATALOGUE.infillPatterns);
export const CLAMPED_MATERIALS: readonly Choice<string>[] = CATALOGUE.clampedMaterials.map(
  ({ id, name, kind }) => ({ value: id, label: name, group: kind === 'metal' ? 'Metal' : 'Printed' }),
);
export const AXES = worded<InsertAxis>(AXIS_NAMES);
export const USES = worded<Use>(USE_NAMES);
export const SETTINGS = worded<SettingMethod>(SETTING_NAMES);

export const THREADS: readonly Choice<string>[] = CATALOGUE.threads.map(({ id, designation, system }) => ({
  value: id,
  label: designation,
  group: system === 'metric' ? 'Metric' : 'Inch',
}));

export const PROPERTY_CLASSES: readonly Choice<string>[] = CATALOGUE.propertyClasses.map(
  ({ id, designation, family }) => ({
    value: id,
    label: designation,
    group: family === 'carbon-steel' ? 'Steel' : 'Stainless',
  }),
);

const HEAD_SHAPES = { cylindrical: 'cylindrical', button: 'button', countersunk: 'countersunk' } as const;

/** Each standard of a head once, with its shape. */
export const HEADS: readonly Choice<string>[] = [
  ...new Map(CATALOGUE.heads.map(({ standard, shape }) => [standard, shape])),
].map(([standard, shape]) => ({ value: standard, label: `${standard}, ${HEAD_SHAPES[shape]}` }));

const CONDITIONS: Readonly<Record<string, string>> = {
  'as-delivered': 'as delivered',
  dry: 'dry',
  oiled: 'oiled',
  greased: 'greased',
};

/** Conditions of the thread with their range of friction. */
export const FRICTIONS: readonly Choice<string>[] = CATALOGUE.frictionConditions.map(
  ({ id, thread }: Catalogue['frictionConditions'][number]) => ({
    value: id,
    label: `${CONDITIONS[id] ?? id}, ${decimalText(thread.low, 2)} to ${decimalText(thread.high, 2)}`,
  }),
);

export const CONVENTIONS: readonly Choice<WallConvention>[] = [
  { value: 'rounded-beads', label: 'beads that overlap' },
  { value: 'plain-beads', label: 'full width each' },
];

export const WALL_KINDS: readonly Choice<'lines' | 'measured'>[] = [
  { value: 'lines', label: 'from its lines' },
  { value: 'measured', label: 'measured' },
];

export const COMPENSATIONS: readonly Choice<'in-cad' | 'in-slicer'>[] = [
  { value: 'in-cad', label: 'in CAD' },
  { value: 'in-slicer', label: 'in the slicer' },
];

export const TOOLS: readonly Choice<TorqueTool['kind']>[] = [
  { value: 'torque-driver', label: `torque driver, ±${percentText(DRIVER_DEVIATION)}` },
  { value: 'hand', label: `by hand, ±${percentText(HAND_DEVIATION)}` },
];

export const WASHERS: readonly Choice<'none' | 'plain'>[] = [
  { value: 'none', label: 'none' },
  { value: 'plain', label: 'plain' },
];

export const SIDES: readonly Choice<'near-side' | 'far-side'>[] = [
  { value: 'near-side', label: 'from this side' },
  { value: 'far-side', label: 'from behind' },
];

export const VIBRATIONS: readonly Choice<'none' | 'present'>[] = [
  { value: 'none', label: 'none' },
  { value: 'present', label: 'shaken in use' },
];

export const THREAD_LOCKINGS: readonly Choice<'none' | 'fluid'>[] = [
  { value: 'none', label: 'none' },
  { value: 'fluid', label: 'locking fluid' },
];

/** When the screw is tightened again, by how often. */
export const RETIGHTENINGS: readonly Choice<string>[] = [
  { value: '0', label: 'never' },
  { value: '1', label: 'after an hour' },
  { value: '2', label: 'an hour, a day' },
  { value: '3', label: 'an hour, a day, a week' },
  { value: '4', label: 'hour, day, week, month' },
];

export const LAYOUTS: readonly Choice<JointDocument['joint']['pattern']['kind']>[] = [
  { value: 'single', label: 'a single screw' },
  { value: 'rectangular', label: 'in rows and columns' },
  { value: 'circular', label: 'on a circle' },
  { value: 'free', label: 'each at its place' },
];

export const PIVOTS: readonly Choice<'centroid' | 'edge'>[] = [
  { value: 'centroid', label: 'middle of the screws' },
  { value: 'edge', label: 'its edge' },
];

export const SLEEVES: readonly Choice<'none' | 'sleeve'>[] = [
  { value: 'none', label: 'none' },
  { value: 'sleeve', label: 'through the part' },
];

export const SLEEVE_MATERIALS: readonly Choice<string>[] = named(
  CATALOGUE.clampedMaterials.filter(({ kind }) => kind === 'metal'),
);
