import { describe, expect, test } from 'vitest';
import { lineSpacingOf, wallThickness } from '../../../src/core/host/wall-thickness.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const wallOf = (lineWidth: number, layerHeight: number, count: number) =>
  wallThickness({
    wall: { kind: 'lines', count, lineWidth, convention: 'rounded-beads' },
    layerHeight,
  });

describe('wallThickness', () => {
  test.each([
    [0.42, 0.2, ['0.42', '0.80', '1.17', '1.55', '1.93', '2.31']],
    [0.45, 0.2, ['0.45', '0.86', '1.26', '1.67', '2.08', '2.49']],
    [0.6, 0.3, ['0.60', '1.14', '1.67', '2.21', '2.74', '3.28']],
  ] as const)(
    'of 1 to 6 lines %f wide in layers of %f mm (slicer-flow-note, walls of n lines)',
    (w, h, printed) => {
      printed.forEach((text, index) => {
        expectPublished(wallOf(w, h, index + 1).value, text);
      });
    },
  );
  test('of two lines of 0.4 mm is 0.757 mm edge to edge (slicer-flow-note)', () => {
    expectPublished(wallOf(0.4, 0.2, 2).value, '0.757');
  });
  test('of plain beads side by side is 0.8 mm for two of 0.4 mm (slicer-flow-note, other convention)', () => {
    const plain = wallThickness({
      wall: { kind: 'lines', count: 2, lineWidth: 0.4, convention: 'plain-beads' },
      layerHeight: 0.2,
    });
    expectPublished(plain.value, '0.8');
    expect(plain.formula).toBe('n · w');
  });
  test('as measured is what was measured', () => {
    expect(
      wallThickness({ wall: { kind: 'measured', thickness: 1.87, lineWidth: 0.42 }, layerHeight: 0.2 }),
    ).toMatchObject({ value: 1.87, unit: 'mm', standing: 'measured', source: 'your-measurement' });
  });
  test('grows by one spacing a line', () => {
    const spacing = lineSpacingOf({ lineWidth: 0.47, layerHeight: 0.23 });
    for (const count of [1, 2, 7, 29]) {
      expectRelative(wallOf(0.47, 0.23, count + 1).value - wallOf(0.47, 0.23, count).value, spacing, 1e-11);
    }
  });
  test('is one line wide for one line, whatever the layer', () => {
    expect(wallOf(0.51, 0.07, 1).value).toBe(0.51);
    expect(wallOf(0.51, 0.38, 1).value).toBe(0.51);
  });
});

describe('lineSpacingOf', () => {
  test.each([
    [0.42, 0.2, '0.377'],
    [0.45, 0.2, '0.407'],
    [0.6, 0.3, '0.536'],
    [0.4, 0.2, '0.357'],
  ])('of lines %f wide in layers of %f mm is %s mm (slicer-flow-note)', (lineWidth, layerHeight, printed) => {
    expectPublished(lineSpacingOf({ lineWidth, layerHeight }), printed);
  });
  test('leaves the bead its own section: spacing times height is its area', () => {
    // Rectangle (w − h) · h and two half circles of diameter h.
    const [w, h] = [0.53, 0.27];
    expectRelative(lineSpacingOf({ lineWidth: w, layerHeight: h }) * h, (w - h) * h + (Math.PI / 4) * h ** 2);
  });
});
