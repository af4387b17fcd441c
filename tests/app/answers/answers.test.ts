import { describe, expect, test } from 'vitest';
import { dialMargin, holdingLimit } from '../../../src/app/answers/margins.ts';
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
const torque = (symbol: string, value: number) =>
  ({
    symbol,
    value,
    unit: 'N·mm',
    formula: '',
    entries: [],
    source: 'own-model',
    standing: 'estimate',
  }) as const;
const window = (least: number, most: number, dial: number) =>
  ({
    kind: 'window',
    least: torque('a', least),
    most: torque('b', most),
    mostAtOnce: torque('b', most),
    dial: torque('c', dial),
    limitedBy: 'screw-yield',
    clampForceLow: torque('d', 1),
    clampForceHigh: torque('e', 2),
  }) as const;

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

describe('dialMargin', () => {
  test('says how far a dial stays below the top of its window', () => {
    expect(dialMargin(window(200, 800, 600))).toEqual({ kind: 'below-top', share: 0.25 });
  });
  test('says how wide a window is that is hard to hit', () => {
    expect(dialMargin(window(700, 800, 750))).toEqual({ kind: 'narrow', width: 100 });
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
