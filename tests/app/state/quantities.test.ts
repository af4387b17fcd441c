import { describe, expect, test } from 'vitest';
import { MOTOR_PLATE } from '../../../src/app/demos/motor-plate.ts';
import { GROUP_QUANTITIES, screwPlace } from '../../../src/app/state/group-quantities.ts';
import { DRIVER_SETTING, DURATION, QUANTITIES } from '../../../src/app/state/quantities.ts';
import {
  definitionOf,
  durationUnit,
  fromDocument,
  toDocument,
} from '../../../src/app/state/quantity-of-key.ts';
import { valueIn } from '../../../src/app/state/value-in.ts';
import { unitOfPath } from '../../../src/wording/places.ts';

function numbersIn(value: unknown, path: string): string[] {
  if (typeof value === 'number') return [path];
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    numbersIn(inner, path === '' ? key : `${path}.${key}`),
  );
}

describe('the quantities of the document', () => {
  const paths: string[] = [...Object.values(QUANTITIES), ...Object.values(GROUP_QUANTITIES), DURATION].map(
    ({ path }) => path,
  );

  test('are every number of the joint and the caliper, each once', () => {
    const { joint, caliper } = MOTOR_PLATE;
    // A wall is measured or has lines, a pattern is of one kind, and this plate has no spacer.
    const others: readonly string[] = [
      QUANTITIES.wallThickness.path,
      GROUP_QUANTITIES.circleCount.path,
      GROUP_QUANTITIES.circleDiameter.path,
      GROUP_QUANTITIES.sleeveDiameter.path,
    ];
    const asked = paths.filter((path) => !others.includes(path));
    const picked = 'joint.loads.retightenings';
    expect([...asked, picked].toSorted()).toEqual(numbersIn({ joint, caliper }, '').toSorted());
  });
  test.each([
    [GROUP_QUANTITIES.momentZ.path, 'N·m'],
    [GROUP_QUANTITIES.atX.path, 'mm'],
    [screwPlace(2, 'y').path, 'mm'],
    ['drawer.1.length_mm.0', 'mm'],
    ['joint.pattern.columns', ''],
  ])('%s is in %s, as its key or the group it is in says', (path, unit) => {
    expect(unitOfPath(path)).toBe(unit);
  });
  test.each(Object.values(QUANTITIES).map(({ path, unit }) => [path, unit] as const))(
    '%s is in the unit that its key ends in',
    (path, unit) => {
      const endings: Readonly<Record<string, string>> = {
        mm: '_mm',
        N: '_N',
        '°C': '_degC',
        '%': '_percent',
        N·m: '_Nm',
      };
      // A count has no unit and no underscore: its ending is the whole last key.
      expect(path.replace(/^[^_]*/, '')).toBe(endings[unit] ?? '');
    },
  );
});

describe('definitionOf', () => {
  test('has the range of the door in the core unit', () => {
    expect(definitionOf(QUANTITIES.infill)).toMatchObject({
      kind: 'ratio',
      displayUnit: '%',
      min: 0,
      max: 1,
    });
    expect(definitionOf(DRIVER_SETTING)).toMatchObject({ kind: 'torque', min: 5, max: 60_000, step: 0.05 });
  });
  test('shows another unit where one is asked for', () => {
    expect(definitionOf({ ...DURATION, shown: 'year' })).toMatchObject({ displayUnit: 'year', max: 438_000 });
  });
});

describe('conversion between document and core', () => {
  test.each([
    ['%', 7, 0.07],
    ['N·m', 0.6, 600],
    ['mm', 4.25, 4.25],
    ['h', 8760, 8760],
  ] as const)('takes %s there and back without a trace', (unit, value, core) => {
    expect(fromDocument(value, unit)).toBe(core);
    expect(toDocument(core, unit)).toBe(value);
  });
});

describe('durationUnit', () => {
  test.each([
    [8760, 'year'],
    [17_520, 'year'],
    [4380, 'month'],
    [336, 'week'],
    [72, 'day'],
    [5, 'h'],
    [0, 'h'],
  ] as const)('of %i h is %s', (hours, unit) => {
    expect(durationUnit(hours)).toBe(unit);
  });
});

describe('valueIn', () => {
  test('finds a value by its path, in lists too', () => {
    expect(valueIn(MOTOR_PLATE, 'drawer.1.length_mm.0')).toBe(6);
    expect(valueIn(MOTOR_PLATE, 'joint.screw.length_mm')).toBeUndefined();
    expect(valueIn(MOTOR_PLATE, 'name.length')).toBeUndefined();
  });
});
