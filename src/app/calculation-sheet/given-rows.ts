import type { Insert, Readings } from '../../core/inserts/insert.ts';
import type { Joint } from '../../core/joint/joint.ts';
import { durationText, percentText } from '../../wording/amount.ts';
import { carriedText } from '../../wording/carried.ts';
import { AXIS_NAMES, SETTING_NAMES } from '../../wording/names.ts';
import { COMPENSATIONS, CONVENTIONS, FRICTIONS, HEADS } from '../joint/choices.ts';

/** One input in words: what it is, and its value with the unit. */
export type GivenRow = readonly [name: string, value: string];

export interface GivenGroup {
  readonly title: string;
  readonly rows: readonly GivenRow[];
}

const mm = (length: number) => carriedText(length, 'mm');
const labelOf = (choices: readonly { readonly value: string; readonly label: string }[], value: string) =>
  choices.find((choice) => choice.value === value)?.label ?? value;
const readingsText = ({ values, permissibleError }: Readings) =>
  `${values.map(mm).join(', ')}; caliper ± ${mm(permissibleError)}`;
const when = (isGiven: boolean, ...row: GivenRow): readonly GivenRow[] => (isGiven ? [row] : []);

/** Everything that a person has given for the joint, before anything is computed. */
export const givenGroups = (joint: Joint, insert: Insert): readonly GivenGroup[] => [
  { title: 'Insert', rows: insertRows(joint, insert) },
  { title: 'Printed part', rows: hostRows(joint) },
  { title: 'Clamped part', rows: clampedRows(joint) },
  { title: 'Screw and tool', rows: screwRows(joint) },
  { title: 'Loads on this joint', rows: loadRows(joint) },
];

function insertRows(joint: Joint, insert: Insert): readonly GivenRow[] {
  const { knurledLength } = insert;
  return [
    ['thread', insert.thread.designation],
    ['knurl diameter', readingsText(insert.knurlDiameter)],
    ['pilot diameter', readingsText(insert.pilotDiameter)],
    ['length', readingsText(insert.length)],
    ['knurled length', knurledLength ? readingsText(knurledLength) : 'not measured, estimated'],
    ['metal', joint.insertMetal.name],
    ['set', SETTING_NAMES[joint.setting]],
    ['from', joint.insertSide === 'far-side' ? 'the far side' : 'the near side'],
    ['below the face', mm(joint.sunk)],
  ];
}

function hostRows({ host, holes }: Joint): readonly GivenRow[] {
  const { wall, infill, bossDiameter } = host;
  return [
    ['material', host.material.name],
    ['insert’s axis', AXIS_NAMES[host.axis]],
    wall.kind === 'lines'
      ? ['walls', `${wall.count} of ${mm(wall.lineWidth)}, ${labelOf(CONVENTIONS, wall.convention)}`]
      : ['wall, measured', `${mm(wall.thickness)}, lines of ${mm(wall.lineWidth)}`],
    ['layer height', mm(host.layerHeight)],
    ['infill', `${infill.pattern}, ${percentText(infill.density)}`],
    ['top skin', mm(host.topSkin)],
    ['thickness', mm(host.thickness)],
    ...(bossDiameter === undefined ? [] : [['boss diameter', mm(bossDiameter)] as const]),
    ['fit over the pilot', mm(holes.fit)],
    ['hole compensated', labelOf(COMPENSATIONS, holes.compensation)],
    ['step of drawn holes', mm(holes.step)],
  ];
}

function clampedRows({ clamped, gap }: Joint): readonly GivenRow[] {
  const { sleeve } = clamped;
  return [
    [
      'material',
      clamped.material.kind === 'metal' ? clamped.material.name : `printed, ${clamped.material.name}`,
    ],
    ['thickness', mm(clamped.thickness)],
    ['clearance hole', mm(clamped.clearanceHole)],
    ...(sleeve ? [['spacer', `${sleeve.material.name}, ⌀ ${mm(sleeve.outsideDiameter)}`] as const] : []),
    ['gap to the printed part', mm(gap)],
  ];
}

function screwRows({ screw, tool, threadLocking, factors }: Joint): readonly GivenRow[] {
  return [
    ['thread', screw.thread.designation],
    ['head', labelOf(HEADS, screw.head.standard)],
    ['property class', screw.propertyClass.designation],
    ['friction in the thread', labelOf(FRICTIONS, screw.friction.id)],
    ['washer', screw.washer ? screw.washer.standard : 'none'],
    ...when(threadLocking === 'fluid', 'thread locking', 'fluid'),
    ...(screw.fixedLength === undefined ? [] : [['length, fixed', mm(screw.fixedLength)] as const]),
    ['tool', `${tool.kind === 'hand' ? 'by hand' : 'torque driver'}, ± ${percentText(tool.deviation)}`],
    tool.settings.length > 0
      ? ['settings', tool.settings.map((setting) => carriedText(setting, 'N·mm')).join(', ')]
      : ['step of the tool', carriedText(tool.step, 'N·mm')],
    ['factor on limits', carriedText(factors.limits, '-')],
    ['factor on staying closed', carriedText(factors.closed, '-')],
  ];
}

function loadRows({ loads, group, vibration }: Joint): readonly GivenRow[] {
  const count = group.loads.screws.length;
  return [
    ...when(count > 1, 'screws in the pattern', `${count}, the worst of them`),
    ['pull', carriedText(loads.pull, 'N')],
    ['across the screw', carriedText(loads.shear, 'N')],
    ['service temperature', carriedText(loads.serviceTemperature, '°C')],
    ['time under load', `${carriedText(loads.duration, 'h')}, ${durationText(loads.duration)}`],
    ['tightened again', `${loads.retightenings} times`],
    ...when(vibration === 'present', 'vibration', 'present'),
  ];
}
