import { describe, expect, test } from 'vitest';
import { leastHalfWidth } from '../../../src/app/drawing/frame.ts';
import { sectionLevels } from '../../../src/app/drawing/levels.ts';
import { CUT_GAP, outsideCuts, sectionView, sheets } from '../../../src/app/drawing/view.ts';
import { sectionGrid } from './odd-sections.ts';
import { section } from './section-inputs.ts';

const variants = ['wide', 'narrow'] as const;
const cases = sectionGrid().flatMap(([name, input]) =>
  variants.map((variant) => [name, variant, input] as const),
);

describe('sectionView', () => {
  test.each(cases)('of %s, %s, fills its window in one direction', (_, variant, input) => {
    const view = sectionView(input, variant);
    const { window, mostHeight, top } = sheets[variant];
    const levels = sectionLevels(input);
    const width = 2 * leastHalfWidth(input, variant === 'wide' ? 'ample' : 'tight') * view.scale;
    const height = view.y(Math.max(levels.host.bottom, levels.shank.bottom)) - top;
    const filled = Math.max(width / (window.right - window.left), height / mostHeight);
    expect(Math.abs(filled - 1)).toBeLessThan(1e-9);
  });

  test.each(cases)('of %s, %s, draws the whole window from edge to edge', (_, variant, input) => {
    const view = sectionView(input, variant);
    const { window } = sheets[variant];
    expect(Math.abs(view.x(view.frame.halfWidth) - window.right)).toBeLessThan(1e-9);
    expect(Math.abs(view.x(-view.frame.halfWidth) - window.left)).toBeLessThan(1e-9);
  });

  test('is to the same scale in both directions', () => {
    const view = sectionView(section(), 'wide');
    const across = view.x(1.7) - view.x(0.4);
    const down = view.y(3.1) - view.y(1.8);
    expect(Math.abs(across - down)).toBeLessThan(1e-9);
    expect(Math.abs(across / 1.3 - view.scale)).toBeLessThan(1e-9);
  });

  test('leaves out the middle of what is long without events, and nothing else', () => {
    const input = section({ clamped: { thickness: 23 }, host: { thickness: 61, floor: 53.8 } });
    const { cuts } = sectionView(input, 'wide');
    const levels = sectionLevels(input);
    expect(cuts).toHaveLength(2);
    const [lid, floor] = cuts;
    expect(lid?.from).toBeGreaterThan(levels.clamped.top);
    expect(lid?.to).toBeLessThan(levels.clamped.bottom);
    expect(floor?.from).toBeGreaterThan(levels.hole.bottom);
    expect(floor?.to).toBeLessThan(levels.host.bottom);
    expect(sectionView(section(), 'wide').cuts).toEqual([]);
  });

  test('takes a cut out to the width of its gap', () => {
    const view = sectionView(section({ host: { thickness: 61, floor: 53.8 } }), 'wide');
    const [cut = { from: 0, to: 0 }] = view.cuts;
    expect(Math.abs(view.y(cut.to) - view.y(cut.from) - CUT_GAP)).toBeLessThan(1e-9);
  });
});

describe('outsideCuts', () => {
  const line = [
    { x: 0, y: 0 },
    { x: 10, y: 10 },
    { x: 0, y: 20 },
  ];

  test('ends a line at both edges of a cut', () => {
    expect(outsideCuts(line, [{ from: 4, to: 13 }])).toEqual([
      [
        { x: 0, y: 0 },
        { x: 4, y: 4 },
      ],
      [
        { x: 7, y: 13 },
        { x: 0, y: 20 },
      ],
    ]);
  });

  test('leaves a line alone where there is no cut', () => {
    expect(outsideCuts(line, [])).toEqual([line]);
  });
});
