import { describe, expect, test } from 'vitest';
import {
  type End,
  moduliOf,
  modulusAt,
  polymerAt,
  shareAt,
  sharesOf,
  strengthAt,
  temperatureAt,
} from '../../../src/core/host/little-known.ts';
import type { MaterialValue, PrintedMaterial } from '../../../src/core/host/material.ts';
import { carefulEntry } from '../../../src/core/sources/derived.ts';
import { HOST_MATERIALS, PA6, PC, PETG, PLA, PLA_PLUS } from '../../../src/data/host-materials.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const ENDS: readonly End[] = ['low', 'middle', 'high'];
const printed = HOST_MATERIALS.filter((material): material is PrintedMaterial => material.melts);
const little = (value: number, range: { readonly low?: number; readonly high?: number } = {}) =>
  ({ value, ...range, provenance: 'from-memory', lowConfidence: true }) as const satisfies MaterialValue;
const known = (value: number): MaterialValue => ({ value, low: 0, high: 1, provenance: 'read' });

describe('printed ranges', () => {
  test('of PLA after 1000 h at 23 °C are 0.4 to 0.75 (printed-materials, remembered)', () => {
    expect(ENDS.map((end) => shareAt(PLA.creepRatio1000h, end))).toEqual([0.4, 0.6, 0.75]);
  });
  test('of PLA at 60 °C are 0 to 0.2 (printed-materials, remembered)', () => {
    const row = PLA.strengthRatios.find(({ temperature }) => temperature === 60);
    expect(row && ENDS.map((end) => shareAt(row.ratio, end))).toEqual([0, 0.1, 0.2]);
  });
  test('of the softening of PA6 are 160 to 190 °C (printed-materials, remembered)', () => {
    expect(ENDS.map((end) => temperatureAt(PA6.softening, end))).toEqual([160, 180, 190]);
  });
  test('carry no doubt where the row is read, though it has a range', () => {
    expect(ENDS.map((end) => temperatureAt(PETG.softening, end))).toEqual([80, 80, 80]);
    expect(ENDS.map((end) => shareAt(PC.creepRatio1000h, end))).toEqual([0.792, 0.792, 0.792]);
  });
});

describe('shareAt', () => {
  test('of 0.65 without a range is 0.481 and 0.788 (hand calculation: 0.65/1.35, 0.65/0.825)', () => {
    expectPublished(shareAt(little(0.65), 'low'), '0.481');
    expectPublished(shareAt(little(0.65), 'high'), '0.788');
  });
  test('is as wide as the one range that is given: PLA after 1000 h within 13 % of its loss at both ends', () => {
    const loss = (share: number) => (1 - share) / share;
    const { low, high, ...row } = PLA.creepRatio1000h;
    expectRelative(loss(shareAt(row, 'low')), loss(low ?? 0), 0.13);
    expectRelative(loss(shareAt(row, 'high')), loss(high ?? 0), 0.13);
  });
  test('doubles and halves what is lost over what is left', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1, noNaN: true }), (share) => {
        const loss = (end: End) => 1 / shareAt(little(share), end) - 1;
        expect(Math.abs(loss('low') - 2 * loss('middle'))).toBeLessThan(1e-9 * (1 + loss('low')));
        expect(Math.abs(loss('high') - loss('middle') / 2)).toBeLessThan(1e-9 * (1 + loss('low')));
      }),
    );
  });
  test('leaves a whole share whole, and one of nothing nothing', () => {
    expect(ENDS.map((end) => shareAt(little(1), end))).toEqual([1, 1, 1]);
    expect(ENDS.map((end) => shareAt(little(0), end))).toEqual([0, 0, 0]);
  });
  test('of a known row is its value, whatever range it has', () => {
    expect(ENDS.map((end) => shareAt(known(0.7), end))).toEqual([0.7, 0.7, 0.7]);
  });
  test('takes the end that is given and works out the other', () => {
    expect(shareAt(little(0.65, { low: 0.6 }), 'low')).toBe(0.6);
    expectRelative(shareAt(little(0.65, { low: 0.6 }), 'high'), 0.65 / 0.825);
  });
});

describe('strengthAt', () => {
  test('of 14 MPa without a range is 9.8 and 18.2', () => {
    expectRelative(strengthAt(little(14), 'low'), 9.8);
    expectRelative(strengthAt(little(14), 'high'), 18.2);
    expect(strengthAt(known(14), 'low')).toBe(14);
  });
});

describe('the way to an end', () => {
  const bare = little(0.37);
  test.each([
    ['of a share', sharesOf, (end: End) => shareAt(bare, end)],
    ['of a modulus', moduliOf, (end: End) => modulusAt(bare, end)],
  ] as const)('%s comes to the same number, with the range of all that is known', (_, careful, at) => {
    for (const end of ['low', 'high'] as const) {
      const { from, value } = carefulEntry('v', careful(bare, end), '-');
      expect(value).toBe(at(end));
      expect(from?.range).toEqual({ low: at('low'), middle: 0.37, high: at('high') });
      expectRelative((from && evaluated(from)) ?? Number.NaN, value);
    }
  });
  test('is none where the row gives the end itself', () => {
    const row = little(0.37, { low: 0.21 });
    expect(carefulEntry('v', sharesOf(row, 'low'), '-').from?.formula).toBe('v');
    expect(carefulEntry('v', sharesOf(row, 'high'), '-').from?.formula).not.toBe('v');
  });
  test('is none in the middle, nor of a value that is known well enough', () => {
    expect(carefulEntry('v', sharesOf(bare, 'middle'), '-').from?.formula).toBe('v');
    expect(carefulEntry('v', moduliOf(known(14), 'low'), '-').from).toBeUndefined();
  });
});

describe('every material row', () => {
  test.each(printed)('$id that is little known in softening says between what it lies', ({ softening }) => {
    const { low, high, value, lowConfidence } = softening;
    if (lowConfidence !== true) return;
    expect(low).toBeLessThan(value);
    expect(high).toBeGreaterThan(value);
  });
  test.each(printed)(
    '$id creeps on at every end: ratios fall with time, and its ends are in order',
    (material) => {
      const { creepRatio1h, creepRatio24h, creepRatio1000h } = material;
      for (const end of ENDS) {
        expect(shareAt(creepRatio24h, end)).toBeLessThan(shareAt(creepRatio1h, end));
        expect(shareAt(creepRatio1000h, end)).toBeLessThan(shareAt(creepRatio24h, end));
        expect(shareAt(creepRatio1000h, end)).toBeGreaterThan(0);
      }
      for (const row of [creepRatio1h, creepRatio24h, creepRatio1000h]) {
        const [low = 0, middle = 0, high = 0] = ENDS.map((end) => shareAt(row, end));
        expect(low).toBeLessThanOrEqual(middle);
        expect(middle).toBeLessThanOrEqual(high);
      }
    },
  );
});

describe('polymerAt', () => {
  test('leaves nothing in doubt of warmth and creep, and the strengths as they are', () => {
    const careful = polymerAt(PLA_PLUS, 'low');
    expect(careful.softening).toMatchObject({ value: 55, kind: 'glass-transition' });
    expectRelative(careful.creepRatio1000h.value, 0.55 / (0.55 + 2 * 0.45));
    for (const end of ENDS) {
      expect(shareAt(careful.creepRatio1000h, end)).toBe(careful.creepRatio1000h.value);
      expect(temperatureAt(careful.softening, end)).toBe(55);
    }
    expect(careful.tensileInPlane).toBe(PLA_PLUS.tensileInPlane);
  });
  test('keeps the way to an end that was worked out, and none to one that its row gives', () => {
    const best = polymerAt(PETG, 'high');
    const entry = carefulEntry('r_1000', sharesOf(best.creepRatio1000h, 'low'), '-');
    expect(entry.from).toMatchObject({ entries: [{ symbol: 'r_tab', value: 0.65 }], source: 'own-model' });
    expect(entry.from?.range).toBeUndefined();
    expect(entry.from && evaluated(entry.from)).toBe(best.creepRatio1000h.value);
    expect(sharesOf(polymerAt(PLA, 'low').creepRatio1000h, 'low')).not.toHaveProperty('way');
  });
  test('of the middle has the values of the row', () => {
    const { strengthRatios, creepRatio1h } = polymerAt(PETG, 'middle');
    expect(strengthRatios.map(({ ratio }) => ratio.value)).toEqual([0.85, 0.6, 0.3]);
    expect(creepRatio1h.value).toBe(0.93);
  });
});
