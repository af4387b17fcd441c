import { describe, expect, test } from 'vitest';
import { bellPath, linearScale, placeLabels } from '../../../src/app/answers/scale.ts';

describe('linearScale', () => {
  test('puts its ends at the ends of the line and the rest between in proportion', () => {
    const { at } = linearScale({ least: 2, greatest: 10 }, 300);
    expect([at(2), at(4), at(10)]).toEqual([0, 75, 300]);
  });
  test('keeps what lies outside at the nearer end', () => {
    const { at } = linearScale({ least: 2, greatest: 10 }, 300);
    expect([at(-5), at(11)]).toEqual([0, 300]);
  });
  test('has a middle where its ends are one', () => {
    expect(linearScale({ least: 3, greatest: 3 }, 300).at(3)).toBe(150);
  });
});

describe('placeLabels', () => {
  test('centres a label under its tick', () => {
    const [label] = placeLabels([{ text: 'ab', at: 100 }], 300);
    expect(label?.x).toBe(100 - (2 * 0.56 * 13) / 2);
  });
  test('keeps labels within the line', () => {
    const text = 'a rather long label';
    const [first] = placeLabels([{ text, at: 0 }], 300);
    const [last] = placeLabels([{ text, at: 300 }], 300);
    expect(first?.x).toBe(0);
    expect((last?.x ?? 0) + text.length * 0.56 * 13).toBeLessThanOrEqual(300);
  });
  test('leaves out the later of two that would meet', () => {
    const labels = [
      { text: 'closed 0.22', at: 120 },
      { text: '0.25 knurl shears', at: 130 },
      { text: 'far off', at: 280 },
    ];
    expect(placeLabels(labels, 300).map(({ text }) => text)).toEqual(['closed 0.22', 'far off']);
  });
});

describe('bellPath', () => {
  const ends = { least: 0, greatest: 10 };
  const path = (expected: number) =>
    bellPath({ expected, standardDeviation: 1 }, linearScale(ends, 300), ends, { base: 26, top: 4 });
  test('stands on the line and is highest at what is expected', () => {
    expect(path(5).startsWith('M0 26L')).toBe(true);
    expect(path(5).endsWith('L300 26Z')).toBe(true);
    expect(path(5)).toContain('150.00 4.00');
  });
  test('moves with what is expected', () => {
    expect(path(2.5)).toContain('75.00 4.00');
    expect(path(2.5)).not.toContain('150.00 4.00');
  });
});
