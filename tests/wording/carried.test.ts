import { describe, expect, test } from 'vitest';
import type { CoreUnit } from '../../src/core/sources/derived.ts';
import { carriedText } from '../../src/wording/carried.ts';

describe('carriedText', () => {
  test.each<readonly [number, CoreUnit, string]>([
    [4.25709, 'mm', '4.257 mm'],
    [4.3, 'mm', '4.3 mm'],
    [1234.4, 'N', '1,234 N'],
    [650, 'N·mm', '650 N·mm'],
    [0.20754, '-', '0.2075'],
    [0.00007754321, 'mm/N', '77.54·10⁻⁶ mm/N'],
    [0.000156, 'mm/N', '156·10⁻⁶ mm/N'],
    [0, 'mm/N', '0 mm/N'],
  ])('writes %d %s as %s: one digit more than is known, without idle zeros', (value, unit, text) => {
    expect(carriedText(value, unit)).toBe(text.replace(' ', '\u00a0'));
  });
});
