import { describe, expect, test } from 'vitest';
import { describePlan, edgeWords, pullWords, screwLines } from '../../../src/app/pattern/plan-words.ts';
import { FOUR, planOf } from './joints-in-plan.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('describePlan', () => {
  test('says the loads, the edge and the worst screws', () => {
    // Pull: 80/4 = 20 on each. About the lower edge, 23 mm from the middle, the arms are 23 ± 17 = 6 and 40 mm:
    // 1300 · 40/(2 · 6² + 2 · 40²) = 15.9 on screws 3 and 4. Nothing turns in the plane: 18/4 = 4.5 across each.
    const input = planOf(FOUR, {
      pull_N: 80,
      shear_N: 18,
      moment_Nm: { x: 1.3, y: 0, z: 0 },
      pivot: { kind: 'edge', x_mm: 41, y_mm: 23 },
    });
    expect(plain(describePlan(input))).toBe(
      'Four screws in plan. At x 0.0 mm, y 0.0 mm act a pull of 80 N, 18 N along x, a moment of 1.30 N·m about x. ' +
        'The lower edge stays down. Most pull on screws 3 and 4, 35.9 N; the same shear on every screw, 4.5 N.',
    );
  });
  test('says where the loads act, and how high', () => {
    const input = planOf(FOUR, { pull_N: 80, shear_N: 0, at_mm: { x: 5, y: -2.5, z: 31 } });
    expect(plain(describePlan(input))).toContain(
      'At x 5.0 mm, y −2.5 mm, 31.0 mm above the joint acts a pull of 80 N.',
    );
  });
  test('says that no load is given', () => {
    expect(describePlan(planOf(FOUR, { pull_N: 0, shear_N: 0 }))).toBe(
      'Four screws in plan. No load is given.',
    );
  });
});

describe('edgeWords', () => {
  test('names both edges under two moments', () => {
    const pivot = { kind: 'edge', x_mm: 41, y_mm: 23 } as const;
    expect(edgeWords(planOf(FOUR, { moment_Nm: { x: -1.3, y: 0.7, z: 0 }, pivot }))).toBe(
      'The upper and the right edge stay down.',
    );
  });
});

describe('the words of a screw', () => {
  test('say where the part presses', () => {
    expect(pullWords(-17.3)).toBe('pressed 17.3');
    expect(pullWords(17.3)).toBe('17.3');
  });
  test('mark the most', () => {
    const base = { number: 2, x: 1, y: 3, pull: 41.2, shear: 7.6, hasMostPull: true, hasMostShear: false };
    expect(screwLines(base)).toEqual(['pull 41.2, most', 'shear 7.6']);
  });
});
