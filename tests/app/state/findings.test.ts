import { describe, expect, test } from 'vitest';
import { CAMERA_BRACKET } from '../../../src/app/demos/camera-bracket.ts';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { findingsOf } from '../../../src/app/state/findings.ts';

describe('findingsOf', () => {
  test('shows the first of the ranking where nothing was picked', () => {
    const { recommendation, shown } = findingsOf(SENSOR_LID);
    const first = recommendation.kind === 'answered' ? recommendation.ranked[0] : undefined;
    expect(shown?.rank).toBe(1);
    expect(shown?.assessment).toBe(first?.assessment);
    expect(shown?.insert.id).toBe(first?.assessment.insertId);
  });
  test('shows the insert that was picked, with its rank', () => {
    const { shown } = findingsOf({ ...SENSOR_LID, chosenInsert: 'low-three' });
    expect(shown?.insert.id).toBe('low-three');
    expect(shown?.rank).toBeGreaterThan(1);
    expect(shown?.rejection).toBeUndefined();
  });
  test('shows a picked insert that is out, with the reason', () => {
    const { shown, passedOver } = findingsOf({ ...CAMERA_BRACKET, chosenInsert: 'low-three' });
    expect(shown?.insert.id).toBe('low-three');
    expect(shown?.rejection?.code).toBe('no-torque');
    expect(shown?.rank).toBeUndefined();
    expect(passedOver).toBeUndefined();
  });
  test('shows the best of the others where the picked one cannot be computed, and says so', () => {
    const { shown, passedOver } = findingsOf({ ...SENSOR_LID, chosenInsert: 'wide-four' });
    expect(shown?.rank).toBe(1);
    expect(passedOver).toMatchObject({ insert: { id: 'wide-four' }, rejection: { code: 'other-thread' } });
  });
  test('shows nothing where no insert has the thread of the screw', () => {
    const drawer = SENSOR_LID.drawer.filter(({ thread }) => thread === 'M4');
    expect(findingsOf({ ...SENSOR_LID, drawer })).not.toHaveProperty('shown');
  });
  test('withholds every answer on a stop', () => {
    const overhead = { ...SENSOR_LID, joint: { ...SENSOR_LID.joint, use: 'overhead' as const } };
    const findings = findingsOf(overhead);
    expect(findings.stop).toEqual({ code: 'use-endangers-people', use: 'overhead' });
    expect(findings).not.toHaveProperty('shown');
  });
});
