import { describe, expect, test } from 'vitest';
import {
  DEFAULT_TORQUE_SETTINGS,
  DEFAULT_TORQUE_STEP,
  TORQUE_TOOL_CLASSES,
} from '../../src/data/torque-tools.ts';
import { theRow } from '../support/the-row.ts';

const classOf = (kind: string) => theRow(TORQUE_TOOL_CLASSES, (tool) => tool.kind === kind);

describe('TORQUE_TOOL_CLASSES', () => {
  test('allow a driver ±6 % up to 10 N·m (iso-6789)', () => {
    expect(classOf('torque-driver')).toMatchObject({
      deviation: 0.06,
      largestTorque: 10 * 1000,
      source: 'iso-6789',
    });
  });
  test('allow the hand ±35 %, without a limit of torque (machinery-handbook)', () => {
    expect(classOf('hand')).toMatchObject({ deviation: 0.35, source: 'machinery-handbook' });
    expect(classOf('hand')).not.toHaveProperty('largestTorque');
  });
});

describe('DEFAULT_TORQUE_SETTINGS', () => {
  test('ascend without a repeat and stay where the driver class holds', () => {
    expect(DEFAULT_TORQUE_SETTINGS).toEqual([...new Set(DEFAULT_TORQUE_SETTINGS)].sort((a, b) => a - b));
    expect(DEFAULT_TORQUE_SETTINGS.at(-1)).toBeLessThan(classOf('torque-driver').largestTorque ?? 0);
  });
  test('lie no more than a half apart, but further than the deviation of a driver', () => {
    for (const [index, setting] of DEFAULT_TORQUE_SETTINGS.entries()) {
      const previous = DEFAULT_TORQUE_SETTINGS[index - 1];
      if (previous === undefined) continue;
      expect(setting / previous).toBeLessThanOrEqual(1.5);
      expect(setting / previous).toBeGreaterThan(1 + classOf('torque-driver').deviation);
    }
  });
  test('start no lower than the step of a driver with a scale', () => {
    expect(DEFAULT_TORQUE_SETTINGS[0]).toBeGreaterThanOrEqual(DEFAULT_TORQUE_STEP);
    expect(DEFAULT_TORQUE_STEP).toBeGreaterThan(0);
  });
});
