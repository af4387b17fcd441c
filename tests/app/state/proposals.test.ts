import { describe, expect, test } from 'vitest';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { admit } from '../../../src/app/state/admit.ts';
import { withEdits } from '../../../src/app/state/edit.ts';
import {
  patternOfKind,
  proposedEdge,
  proposedSleeve,
  sleeveAround,
  withScrew,
} from '../../../src/app/state/proposals.ts';

const KINDS = ['single', 'rectangular', 'circular', 'free'] as const;
const { clamped } = SENSOR_LID.joint;

describe('patternOfKind', () => {
  test.each(KINDS.flatMap((from) => KINDS.map((to) => [from, to] as const)))(
    'from %s to %s is one that the door takes',
    (from, to) => {
      const value = patternOfKind(patternOfKind({ kind: 'single' }, from), to);
      expect(value.kind).toBe(to);
      expect(admit(withEdits(SENSOR_LID, [{ path: 'joint.pattern', value }]))).toMatchObject({
        kind: 'admitted',
      });
    },
  );
  test('leaves the screws where they were when each gets a place of its own', () => {
    const row = { kind: 'rectangular', columns: 2, rows: 1, spacingX_mm: 33, spacingY_mm: 8 } as const;
    expect(patternOfKind(row, 'free')).toEqual({
      kind: 'free',
      positions_mm: [
        { x: -16.5, y: 0 },
        { x: 16.5, y: 0 },
      ],
    });
  });
});

describe('proposedEdge', () => {
  test('is two holes beyond the outermost screw, to whole millimetres', () => {
    // 33/2 + 2 · 3.4 = 23.3 and 14/2 + 2 · 3.4 = 13.8.
    const pattern = { kind: 'rectangular', columns: 2, rows: 2, spacingX_mm: 33, spacingY_mm: 14 } as const;
    expect(proposedEdge({ pattern, clamped })).toEqual({ kind: 'edge', x_mm: 24, y_mm: 14 });
  });
  test('is measured from the middle of the screws', () => {
    const positions_mm = [
      { x: 100, y: 7 },
      { x: 110, y: 7 },
    ];
    expect(proposedEdge({ pattern: { kind: 'free', positions_mm }, clamped })).toMatchObject({
      x_mm: 12,
      y_mm: 7,
    });
  });
});

describe('a proposed spacer', () => {
  test('is of steel, two millimetres wider than its hole', () => {
    expect(proposedSleeve(3.4)).toEqual({ material: 'steel', outsideDiameter_mm: 5.4 });
    // Binary fractions leave no trace.
    expect(sleeveAround(4.3)).toBe(6.3);
  });
});

describe('withScrew', () => {
  test('puts one more beside the last', () => {
    expect(withScrew([{ x: 3, y: -4.5 }])).toEqual([
      { x: 3, y: -4.5 },
      { x: 23, y: -4.5 },
    ]);
  });
});
