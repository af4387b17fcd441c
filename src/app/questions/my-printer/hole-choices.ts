import type { HoleAxis, HoleInstrument } from '../../../core/holes/hole-reading.ts';
import type { GaugeCompensation } from '../../../core/holes/slicer-compensation.ts';
import type { JointDocument } from '../../../storage/document.ts';
import { HOLE_AXIS_NAMES, INSTRUMENT_NAMES } from '../../../wording/my-printer.ts';
import type { Choice } from '../../fields/field-props.ts';

/** Where the fields of this section stand. */
export const PLACE = 'my-printer';

const worded = <Value extends string>(values: readonly Value[], names: Readonly<Record<Value, string>>) =>
  values.map((value): Choice<Value> => ({ value, label: names[value] }));

export const INSTRUMENTS = worded<HoleInstrument>(
  ['caliper-jaws', 'pin-gauge', 'drill-shank'],
  INSTRUMENT_NAMES,
);
export const HOLE_AXES = worded<HoleAxis>(['vertical', 'horizontal'], HOLE_AXIS_NAMES);

export const GAUGES: readonly Choice<GaugeCompensation>[] = [
  { value: 'none', label: 'without compensation' },
  { value: 'slicer', label: 'with the slicer’s own' },
];

/** The choice that stands for a joint of an unknown printer. */
export const UNKNOWN = '';
export const printersOf = ({ printers }: Pick<JointDocument, 'printers'>): readonly Choice<string>[] => [
  { value: UNKNOWN, label: 'an unknown printer' },
  ...printers.map(({ id, name }) => ({ value: id, label: name })),
];
