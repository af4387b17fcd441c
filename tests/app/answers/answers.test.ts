import { describe, expect, test } from 'vitest';
import { holdingLimit } from '../../../src/app/answers/margins.ts';
import { shortAnswer } from '../../../src/app/answers/short-answer.ts';
import { CAMERA_BRACKET } from '../../../src/app/demos/camera-bracket.ts';
import { NEW_JOINT } from '../../../src/app/demos/new-joint.ts';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { findingsOf } from '../../../src/app/state/findings.ts';
import type { JointDocument } from '../../../src/storage/document.ts';

const withUse = (document: JointDocument, use: JointDocument['joint']['use']): JointDocument => ({
  ...document,
  joint: { ...document.joint, use },
});
describe('shortAnswer', () => {
  test('is the value with its unit', () => {
    const findings = findingsOf({ ...SENSOR_LID, chosenInsert: 'tall-five' });
    expect(shortAnswer('insert', findings)).toBe('M3 5.0 × 5.0');
    expect(shortAnswer('hole', findings)).toMatch(/^⌀ \d\.\d\d mm$/);
    expect(shortAnswer('tight', findings)).toMatch(/^\d\.\d\d N·m$/);
  });
  test('is no number where no torque fits', () => {
    const findings = findingsOf({ ...CAMERA_BRACKET, chosenInsert: 'low-three' });
    expect(shortAnswer('tight', findings)).toBe('none fits');
  });
  test.each(['insert', 'hole', 'tight'] as const)('to %s is withheld on a stop', (id) => {
    expect(shortAnswer(id, findingsOf(withUse(SENSOR_LID, 'lifting')))).toBe('withheld');
  });
  test('is none where no insert can be computed', () => {
    const drawer = SENSOR_LID.drawer.filter(({ thread }) => thread === 'M4');
    expect(shortAnswer('insert', findingsOf({ ...SENSOR_LID, drawer }))).toBe('none');
  });
});

describe('holdingLimit', () => {
  test('is the pull’s where the pull loads what holds least', () => {
    const { shown } = findingsOf(SENSOR_LID);
    expect(shown && holdingLimit(shown.assessment)).toMatchObject({ path: 'pull', demand: { value: 70 } });
  });
  test('is absent where no load is given', () => {
    const { shown } = findingsOf(NEW_JOINT);
    expect(shown?.assessment.seat.kind).toBe('on-insert');
    expect(shown && holdingLimit(shown.assessment)).toBeUndefined();
  });
});
