import type { InsertAxis } from '../core/host/host.ts';
import type { InsertDimensions } from '../core/inserts/dimensions.ts';
import type { SettingMethod } from '../core/inserts/insert.ts';
import type { Opening } from '../core/joint/assessment.ts';
import type { Use } from '../core/joint/joint.ts';
import type { FailureMode, SeatKind } from '../core/pull-out/limit.ts';
import { decimalText } from './amount.ts';

export const MODE_NAMES = {
  'knurl-shear': 'Knurl shear',
  'wall-plug': 'Wall plug pulls out',
  'boss-tear': 'Boss tears at the hole’s bottom',
  'boss-split': 'Boss splits',
  'shoulder-yield': 'Shoulder yields',
  'shoulder-punch': 'Shoulder punched through',
  'insert-thread': 'Insert thread strips',
  'screw-thread': 'Screw thread strips',
  'screw-yield': 'Screw yields',
  'head-bearing': 'Part yields under the head',
  'seat-bearing': 'Part yields on the insert’s ring',
  'torque-out': 'Insert turns in the plastic',
} as const satisfies Record<FailureMode, string>;

export const nameOfMode = (mode: FailureMode): string => MODE_NAMES[mode];

/** What gives way, as the subject of a sentence: "the insert’s thread sets the top". */
export const MODE_AGENTS = {
  'knurl-shear': 'the knurl',
  'wall-plug': 'the plug of walls round the insert',
  'boss-tear': 'the boss at the hole’s bottom',
  'boss-split': 'the boss, which would split,',
  'shoulder-yield': 'the shoulder behind the insert',
  'shoulder-punch': 'the shoulder behind the insert',
  'insert-thread': 'the insert’s thread',
  'screw-thread': 'the screw’s thread',
  'screw-yield': 'the screw',
  'head-bearing': 'the part under the head',
  'seat-bearing': 'the part on the insert’s ring',
  'torque-out': 'the knurl, which would turn,',
} as const satisfies Record<FailureMode, string>;

/** What happens at the end of the window, short enough for a line: "0.71 insert thread strips". */
export const MODE_EVENTS = {
  'knurl-shear': 'knurl shears',
  'wall-plug': 'wall plug pulls out',
  'boss-tear': 'boss tears',
  'boss-split': 'boss splits',
  'shoulder-yield': 'shoulder yields',
  'shoulder-punch': 'shoulder punched through',
  'insert-thread': 'insert thread strips',
  'screw-thread': 'screw thread strips',
  'screw-yield': 'screw yields',
  'head-bearing': 'part yields under the head',
  'seat-bearing': 'part yields on the insert',
  'torque-out': 'insert turns',
} as const satisfies Record<FailureMode, string>;

/** Follows "The part bears". */
export const SEAT_NAMES = {
  'on-insert': 'on the insert',
  'on-plastic': 'on the plastic',
  'over-gap': 'over a gap',
  'far-side': 'on the far side',
} as const satisfies Record<SeatKind, string>;

export const nameOfSeat = (seat: SeatKind): string => SEAT_NAMES[seat];

export const USE_NAMES = {
  general: 'general use',
  overhead: 'a load over people',
  lifting: 'lifting',
  vehicle: 'a vehicle',
  climbing: 'climbing or fall protection',
  pressure: 'pressure',
  mains: 'mains voltage',
} as const satisfies Record<Use, string>;

export const SETTING_NAMES = {
  'heat-set': 'set with a hot iron',
  'cold-pressed': 'pressed in cold',
  hammered: 'hammered in',
} as const satisfies Record<SettingMethod, string>;

export const AXIS_NAMES = {
  'along-build': 'along the build',
  'across-build': 'across the build',
} as const satisfies Record<InsertAxis, string>;

/** One change that opens a torque window, as an instruction. */
export const OPENINGS = {
  'seat-on-insert':
    'Let the part bear on the insert: close the gap, or make its hole smaller than the knurl.',
  'oiled-thread': 'Oil the thread: friction then scatters less.',
  'finer-settings': 'Use a tool that can be set in finer steps.',
  'torque-driver': 'Use a torque driver instead of tightening by feel.',
  'stronger-screw': 'Take a screw of a higher property class.',
  'more-walls': 'Print more walls round the hole.',
  'solid-infill': 'Print the zone round the insert solid.',
  washer: 'Put a plain washer under the head.',
  'less-pull': 'Take load off this joint, or share it among more screws.',
} as const satisfies Record<Opening, string>;

export const sentenceOfOpening = (opening: Opening): string => OPENINGS[opening];

/** An insert as its drawer names it: thread, knurl diameter and length. */
export const nameOfInsert = (thread: string, dimensions: InsertDimensions): string =>
  `${thread} ${sizeOfInsert(dimensions)}`;

/** Knurl diameter and length to a tenth, as inserts are sold. */
export const sizeOfInsert = ({ knurlDiameter, length }: InsertDimensions): string =>
  `${decimalText(knurlDiameter.estimate.value, 1)} × ${decimalText(length.estimate.value, 1)}`;
