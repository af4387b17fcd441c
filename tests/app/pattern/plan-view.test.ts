import { describe, expect, test } from 'vitest';
import { edgesOf } from '../../../src/app/pattern/plan-lines.ts';
import { PLAN_SHEETS, type PlanVariant, planView } from '../../../src/app/pattern/plan-view.ts';
import { expectRelative } from '../../support/published.ts';
import { FOUR, planOf } from './joints-in-plan.ts';

const VARIANTS = Object.keys(PLAN_SHEETS) as PlanVariant[];
const PLANS = [
  ['four screws', planOf(FOUR)],
  ['one screw', planOf({ kind: 'single' })],
  ['a column', planOf({ kind: 'rectangular', columns: 1, rows: 3, spacingX_mm: 12, spacingY_mm: 700 })],
  ['a row', planOf({ kind: 'rectangular', columns: 9, rows: 1, spacingX_mm: 150, spacingY_mm: 12 })],
  [
    'a load far off',
    planOf(FOUR, { at_mm: { x: 900, y: -350, z: 0 }, pivot: { kind: 'edge', x_mm: 52, y_mm: 27 } }),
  ],
] as const;

describe('planView', () => {
  test.each(PLANS.flatMap(([name, input]) => VARIANTS.map((variant) => [name, variant, input] as const)))(
    'keeps %s on the %s sheet',
    (_, variant, input) => {
      const view = planView(input, variant);
      const shown = [...input.screws, input.load.at, input.centroid].map(view.place);
      for (const { x, y } of [...shown, ...edgesOf(input, view).outline]) {
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(view.width);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(view.height);
      }
      expect(view.height).toBeLessThanOrEqual(PLAN_SHEETS[variant].mostHeight + 1);
    },
  );
  test('is to scale, the same along x and y, with y upwards', () => {
    const input = planOf(FOUR);
    const { place, scale } = planView(input, 'wide');
    const [first, second, third] = input.screws.map(place);
    expectRelative((second?.x ?? 0) - (first?.x ?? 0), 60 * scale);
    expectRelative((first?.y ?? 0) - (third?.y ?? 0), 34 * scale);
  });
});
