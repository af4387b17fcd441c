import { describe, expect, test } from 'vitest';
import { hostComplianceOf, preloadLeft } from '../../../src/core/joint/clamp-loop.ts';
import { PETG } from '../../../src/data/host-materials.ts';
import { answerableJoint, assessed, type Changes, situationWith } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { situationOfNumbers } from '../../support/situations.ts';

const left = (changes: Changes) => assessed(changes).preloadLeft.value;

describe('hostComplianceOf', () => {
  test('of a bonded ring is ln(Do/Dk)/(2π·G·Lk) (elasticity, hand calculation)', () => {
    // Do 8.8, Dk 5: ln 1.76 = 0.56531; 2π · 3.6 = 22.619
    const G = PETG.modulusInPlane.value / (2 * (1 + PETG.poissonRatio.value));
    expectRelative(
      hostComplianceOf(situationOfNumbers({ wall: 2.25, boss: 8.8 })),
      0.565314 / (22.61947 * G),
      1e-6,
    );
  });
  test('is 0 where no plastic stands round the knurl', () => {
    expect(hostComplianceOf(situationOfNumbers({ wall: 0.21, density: 0 }))).toBe(0);
  });
});

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
    const at = (duration_h: number) => left({ gap_mm: 0.3, loads: { duration_h } });
    expect(at(0)).toBe(1);
    expect(at(100)).toBeLessThan(at(10));
    expect(at(1000)).toBeGreaterThan(PETG.creepRatio1000h.value);
  });
  test('is more the longer the screw is stretched, with all else alike', () => {
    const joint = answerableJoint({ gap_mm: 0.3, loads: { duration_h: 1000 } });
    const at = (grip: number) => preloadLeft(joint, situationWith({ gap_mm: 0.3 }), grip).value;
    expect(at(9.1)).toBeGreaterThan(at(3.1));
    expect(at(3.1)).toBeGreaterThan(PETG.creepRatio1000h.value);
    // A screw a thousand times as springy as the plastic loses next to nothing.
    expect(at(1e6)).toBeGreaterThan(0.99);
  });
});
