import { describe, expect, test } from 'vitest';
import { PLAN_LINE, placeLabels, type WantedLabel } from '../../../src/app/pattern/plan-labels.ts';

const SHEET = { width: 300, height: 200 };
const label = (id: string, x: number, y: number): WantedLabel => ({
  id,
  lines: ['pull 51.5', 'shear 8.2'],
  at: { x, y },
  reach: 9,
  mayStray: false,
});

describe('placeLabels', () => {
  test('puts a label to the right of its point where there is room', () => {
    const [placed] = placeLabels([label('a', 110, 90)], [], SHEET);
    expect(placed).toMatchObject({ id: 'a', left: 110 + 9 + 5, top: 90 - PLAN_LINE });
  });
  test('takes the left side at the right end of the sheet', () => {
    const [placed] = placeLabels([label('a', 284, 90)], [], SHEET);
    expect(placed?.left).toBeLessThan(284 - 9);
  });
  test('keeps off what stands there already', () => {
    const taken = [{ left: 124, right: 190, top: 70, bottom: 110 }];
    const [placed] = placeLabels([label('a', 110, 90)], taken, SHEET);
    expect(placed?.left).toBeLessThan(110);
  });
  test('lets only what cannot be mistaken stand farther off', () => {
    // All round the point is taken, as far as a label at its side reaches.
    const ring = [{ left: 75, right: 145, top: 55, bottom: 115 }];
    expect(placeLabels([label('a', 110, 90)], ring, SHEET)).toEqual([]);
    const [strayed] = placeLabels([{ ...label('a', 110, 90), mayStray: true }], ring, SHEET);
    expect(strayed?.top).toBeGreaterThanOrEqual(115);
  });
  test('leaves out a label that finds no place', () => {
    const full = [{ left: 0, right: SHEET.width, top: 0, bottom: SHEET.height }];
    expect(placeLabels([label('a', 110, 90)], full, SHEET)).toEqual([]);
  });
});
