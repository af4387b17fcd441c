import { describe, expect, test } from 'vitest';
import { ringDiameter } from '../../../src/core/pull-out/ring-diameter.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { situationOfNumbers } from '../../support/situations.ts';

describe('ringDiameter', () => {
  test('counts infill beyond the walls by its density (hand calculation: 6.7 + 0.37 · (11.3 − 6.7))', () => {
    expectPublished(ringDiameter(situationOfNumbers({ wall: 1.2, boss: 11.3 })).value, '8.402');
  });
  test('is the boss filled by its walls, and three knurls at most', () => {
    expect(ringDiameter(situationOfNumbers({ wall: 3.1, boss: 9.7 })).value).toBe(9.7);
    expect(ringDiameter(situationOfNumbers({ wall: 7.1 })).value).toBe(15);
    expectRelative(ringDiameter(situationOfNumbers({ density: 1, boss: 31 })).value, 15);
  });
});
