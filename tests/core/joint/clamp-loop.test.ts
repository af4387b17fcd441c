import { describe, expect, test } from 'vitest';
import { preloadLeft } from '../../../src/core/joint/clamp-loop.ts';
import { PETG } from '../../../src/data/host-materials.ts';
import { answerableJoint, assessed, type Changes, situationWith } from '../../support/joints.ts';

const left = (changes: Changes) => assessed(changes).preloadLeft.value;

describe('preloadLeft', () => {
  test('loses nothing under a metal part on the insert: no plastic in the loop', () => {
    expect(left({})).toBe(1);
    expect(left({ loads: { duration_h: 438_000 } })).toBe(1);
  });
  test('loses something wherever plastic is in the loop', () => {
    expect(left({ gap_mm: 0.3 })).toBeLessThan(1);
    expect(left({ clamped: { material: 'petg' } })).toBeLessThan(1);
    expect(left({ clamped: { material: 'petg' }, gap_mm: 0.3 })).toBeGreaterThan(0.3);
  });
  test('falls with time, never below what the plastic alone would keep', () => {
    const at = (duration_h: number) => left({ gap_mm: 0.3, loads: { duration_h, serviceTemperature_degC: 23 } });
    expect(at(0)).toBe(1);
    expect(at(100)).toBeLessThan(at(10));
    expect(at(1000)).toBeGreaterThan(PETG.creepRatio1000h.value);
  });
  test('is more the longer the screw is stretched, with all else alike', () => {
    const joint = answerableJoint({ gap_mm: 0.3, loads: { duration_h: 1000, serviceTemperature_degC: 23 } });
    const at = (grip: number) => preloadLeft(joint, situationWith({ gap_mm: 0.3 }), grip).value;
    expect(at(9.1)).toBeGreaterThan(at(3.1));
    expect(at(3.1)).toBeGreaterThan(PETG.creepRatio1000h.value);
    // A screw a thousand times as springy as the plastic loses next to nothing.
    expect(at(1e6)).toBeGreaterThan(0.99);
  });
});
