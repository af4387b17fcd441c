import { describe, expect, test } from 'vitest';
import { planArrows } from '../../../src/app/pattern/plan-arrows.ts';
import { planView } from '../../../src/app/pattern/plan-view.ts';
import { arrowWords } from '../../../src/app/pattern/plan-words.ts';
import { FOUR, planOf } from './joints-in-plan.ts';

const arrowsOf = (input: ReturnType<typeof planOf>) => planArrows(input, planView(input, 'wide'));

describe('planArrows', () => {
  test('are one for each load that is given', () => {
    const moment_Nm = { x: 0.4, y: -0.3, z: 1.1 };
    const all = planOf(FOUR, { pull_N: 70, shear_N: 12, shearAcross_N: 5, moment_Nm });
    expect(arrowsOf(all).map(({ id }) => id)).toEqual(['shear', 'pull', 'moment-x', 'moment-y', 'moment-z']);
    expect(arrowsOf(planOf(FOUR, { pull_N: 0, shear_N: 0 }))).toEqual([]);
  });
  test('point along x to the right and along y upwards', () => {
    const input = planOf(FOUR, { shear_N: 30, shearAcross_N: 40, at_mm: { x: 7, y: -3, z: 0 } });
    const at = planView(input, 'wide').place(input.load.at);
    const [shear] = arrowsOf(input);
    expect(Math.sign((shear?.tip.x ?? 0) - at.x)).toBe(1);
    expect(Math.sign((shear?.tip.y ?? 0) - at.y)).toBe(-1);
  });
  test('turn with the sign of a moment', () => {
    const tipOf = (x: number) =>
      arrowsOf(planOf(FOUR, { moment_Nm: { x, y: 0, z: 0 }, shear_N: 0, pull_N: 0 }))[0]?.tip.x;
    expect(tipOf(0.6) ?? 0).toBeGreaterThan(tipOf(-0.6) ?? 0);
  });
  test('have their amounts in words', () => {
    // The hypotenuse of 30 and 40 is 50.
    const input = planOf(FOUR, {
      pull_N: 70,
      shear_N: 30,
      shearAcross_N: 40,
      moment_Nm: { x: -0.4, y: 0, z: 0 },
    });
    expect(arrowWords('pull', input)).toBe('pull 70\u00a0N');
    expect(arrowWords('shear', input)).toBe('across 50\u00a0N');
    expect(arrowWords('moment-x', input)).toBe('tilts 0.40\u00a0N·m');
  });
});
