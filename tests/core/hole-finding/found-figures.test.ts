import { describe, expect, test } from 'vitest';
import { foundFigures } from '../../../src/core/hole-finding/found-figures.ts';
import type { FoundHole } from '../../../src/core/hole-finding/hole.ts';
import { meaningOf, meaningOfEntry } from '../../../src/wording/symbols.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { expectRelative } from '../../support/published.ts';

const HOLE: FoundHole = {
  mouth: { x: 3.1, y: -4.2, z: 9.3 },
  direction: { x: 0, y: 0, z: -1 },
  lie: 'vertical',
  tilt: 0,
  cornerDiameter: 4.45,
  acrossFlats: 4.41,
  depth: 6.2,
  chamfers: { mouth: 0.5, far: 0.3 },
  depthAllRound: 6.1,
  facets: 22,
  turn: 6.2832,
  ends: { mouth: 'open', far: 'open' },
};

describe('foundFigures', () => {
  const { cornerDiameter, acrossFlats, depth, lean, mouth } = foundFigures(HOLE);
  test('are the sizes that were found; the depth is the wall and both chamfers', () => {
    expect([cornerDiameter.value, acrossFlats.value]).toEqual([4.45, 4.41]);
    expect([mouth.x.value, mouth.y.value, mouth.z.value]).toEqual([3.1, -4.2, 9.3]);
    // 6.2 + 0.5 + 0.3 mm
    expectRelative(depth.value, 7);
    expectRelative(evaluated(depth) ?? Number.NaN, 7);
  });
  test('of an upright hole lean by nothing, of one along 0.48, −0.36, −0.8 by a sine of 0.6 (hand calculation)', () => {
    expect(lean.value).toBe(0);
    const oblique = { ...HOLE, lie: 'oblique', direction: { x: 0.48, y: -0.36, z: -0.8 } } as const;
    const { lean: leaning } = foundFigures(oblique);
    expectRelative(leaning.value, 0.6);
    expectRelative(evaluated(leaning) ?? Number.NaN, 0.6);
    expectRelative(Math.acos(0.8), Math.asin(leaning.value));
  });
  test('have a meaning for each symbol', () => {
    for (const one of [cornerDiameter, acrossFlats, depth, lean, mouth.x, mouth.y, mouth.z]) {
      expect(meaningOf(one)).not.toBe(one.symbol);
      for (const entry of one.entries) expect(meaningOfEntry(entry, one)).not.toBe(entry.symbol);
    }
  });
});
