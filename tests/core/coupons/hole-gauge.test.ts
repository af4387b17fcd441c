import { describe, expect, test } from 'vitest';
import type { GaugeWish } from '../../../src/core/coupons/gauge-row.ts';
import { holeGauge } from '../../../src/core/coupons/hole-gauge.ts';
import { LABEL_HEIGHT, labelVolume } from '../../../src/core/coupons/label.ts';
import { BOSS, holeOf, LARGER_PART, lyingDown, made, SMALL_HOLE, USUAL_BED } from '../../support/coupons.ts';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const WISH: GaugeWish = { host: LARGER_PART, hole: SMALL_HOLE, count: 7, step: 0.1, bed: USUAL_BED };
const gaugeOf = (changes: Partial<GaugeWish> = {}) => made(holeGauge({ ...WISH, ...changes }));
const drawnOf = (changes: Partial<GaugeWish>) => gaugeOf(changes).bores.map(({ drawn }) => drawn);

describe('the row of bores', () => {
  test('has the joint’s own drawn diameter in its middle, in steps without dust', () => {
    expect(drawnOf({ count: 5, step: 0.05 })).toEqual([4.45, 4.5, 4.55, 4.6, 4.65]);
  });
  test('of an even number has it as the last of the first half', () => {
    expect(drawnOf({ count: 4, step: 0.2 })).toEqual([4.35, 4.55, 4.75, 4.95]);
  });
  test('of one is the joint’s own', () => {
    expect(drawnOf({ count: 1 })).toEqual([4.55]);
  });
  test('is numbered from 1, the numbers in line with the bores and above them', () => {
    const { bores, labels } = gaugeOf({ count: 3 });
    expect(bores.map(({ number }) => number)).toEqual([1, 2, 3]);
    expect(labels.map(({ number, at }) => [number, at[0]])).toEqual(
      bores.map(({ number, at }) => [number, at[0]]),
    );
    const mouth = (bores[0]?.at[1] ?? 0) + 4.65 / 2 + 0.5;
    for (const { at } of labels) expect(at[1]).toBeGreaterThan(mouth + 1);
  });
});

describe('the ways to the sizes of a gauge', () => {
  test.each<[string, Partial<GaugeWish>]>([
    ['a larger part', {}],
    ['a boss', { host: BOSS }],
    ['a part lying down', { host: lyingDown(LARGER_PART) }],
    [
      'a small boss, where the numbers need the room',
      { host: { ...BOSS, bossDiameter: 5 }, hole: holeOf(2.6, 4, 0.3), count: 11, step: 0.02 },
    ],
    ['thick layers', { host: { ...LARGER_PART, layerHeight: 0.28 } }],
  ])('lead to what is drawn, by their formulae: %s', (_what, changes) => {
    const gauge = gaugeOf(changes);
    const { x, y, z } = gauge.sides;
    expect({ x: x.value, y: y.value, z: z.value }).toEqual(gauge.onBed);
    expect(gauge.diameters.map(({ value }) => value)).toEqual(gauge.bores.map(({ drawn }) => drawn));
    expect(gauge.floorUnder.value).toBe(gauge.floor);
    expect(gauge.hole.depth.value).toBe(gauge.depth);
    expectWays([x, y, z, gauge.floorUnder, ...gauge.diameters]);
  });
});

describe('the block', () => {
  test('leaves both walls of 1.17 mm and a strip of 2 mm round a bore of a larger part', () => {
    const { surround, pitch, bores, floor, thickness } = gaugeOf();
    expectRelative(surround, 2 * 1.17 + 2);
    expectRelative(pitch, 4.85 + 2 * 1.17 + 2);
    expectRelative(bores[0]?.at[0] ?? 0, 4.85 / 2 + 2 * 1.17 + 2);
    expectRelative(floor, 2);
    expectRelative(thickness, 2 + 6.2);
  });
  test('leaves as much as the joint’s boss does', () => {
    expectRelative(gaugeOf({ host: BOSS }).surround, (8.8 - 4.55) / 2);
  });
  test('has its floor in whole layers when layers lie across the bore', () => {
    const host = { ...LARGER_PART, layerHeight: 0.28 };
    expectRelative(gaugeOf({ host }).floor, 2.24);
    expectRelative(gaugeOf({ host: lyingDown(host) }).floor, 2);
  });
  test('lies as it was drawn, or turned so that the bores run along y', () => {
    const upright = gaugeOf();
    const lying = gaugeOf({ host: lyingDown(LARGER_PART) });
    expectRelative(upright.onBed.z, upright.thickness + 0.6);
    expect(lying.onBed).toEqual({ x: upright.onBed.x, y: upright.onBed.z, z: upright.onBed.y });
  });
  test('keeps two-digit numbers apart by the room two labels need', () => {
    const { pitch } = gaugeOf({
      count: 11,
      step: 0.02,
      hole: holeOf(2.6, 4, 0.3),
      host: { ...BOSS, bossDiameter: 5 },
    });
    expectRelative(pitch, 8.1 + 3);
  });
  test('holds block less bores plus numbers: one bore by hand', () => {
    const { volume, length, width, thickness } = gaugeOf({ count: 1 });
    const cylinder = Math.PI * 2.275 ** 2 * 5.7;
    // A frustum is the cone of the mouth less the cone that is missing at its tip; both stand at 45°.
    const frustum = (Math.PI / 3) * (2.775 ** 3 - 2.275 ** 3);
    const number = labelVolume({ number: 1, raised: 0.6 });
    expectRelative(volume.value, length * width * thickness - cylinder - frustum + number);
    expect(volume).toMatchObject({ symbol: 'V_c', unit: 'mm³', standing: 'estimate' });
  });
  test('is the same plastic whichever way it lies, but for floor and number in whole layers', () => {
    expectRelative(gaugeOf().volume.value, gaugeOf({ host: lyingDown(LARGER_PART) }).volume.value);
  });
});

describe('every gauge that is made', () => {
  test('keeps bores, numbers and edges apart', () => {
    fc.assert(
      fc.property(
        fc.record({
          drawn: fc.double({ min: 2.5, max: 14, noNaN: true }),
          step: fc.double({ min: 0.01, max: 0.3, noNaN: true }),
          count: fc.integer({ min: 1, max: 14 }),
          depth: fc.double({ min: 1.5, max: 25, noNaN: true }),
          chamfer: fc.constantFrom(0, 0.3, 0.6),
          boss: fc.option(fc.double({ min: 1.4, max: 4, noNaN: true })),
        }),
        ({ drawn, step, count, depth, chamfer, boss }) => {
          const host = boss === null ? LARGER_PART : { ...LARGER_PART, bossDiameter: drawn * boss };
          const bed = { x: 2000, y: 2000, z: 2000 };
          const answer = holeGauge({ host, hole: holeOf(drawn, depth, chamfer), count, step, bed });
          if (answer.kind === 'refused') return;
          const { bores, labels, length, width, pitch } = answer;
          const reach = (bores.at(-1)?.drawn ?? 0) / 2 + chamfer;
          const [first, last] = [bores[0]?.at[0] ?? 0, bores.at(-1)?.at[0] ?? 0];
          expect(first - reach).toBeGreaterThan(0);
          expect(length - last - reach).toBeGreaterThan(0);
          expect(pitch).toBeGreaterThan(2 * reach + 1);
          const [label] = labels;
          expect(label?.at[1]).toBeGreaterThan((bores[0]?.at[1] ?? 0) + reach + 1);
          expect(width).toBeGreaterThan((label?.at[1] ?? 0) + LABEL_HEIGHT + 1);
          expect(Math.min(...bores.map(({ at }) => at[1])) - reach).toBeGreaterThan(0);
        },
      ),
    );
  });
});

describe('a gauge that cannot be made', () => {
  test.each<[string, Partial<GaugeWish>, object]>([
    [
      'a bore below 1 mm',
      { hole: holeOf(1.6, 3, 0), count: 9, step: 0.25 },
      { code: 'bore-too-small', bore: { value: 0.6 }, least: 1 },
    ],
    [
      'a chamfer as deep as the hole',
      { hole: holeOf(4.4, 0.6, 0.6) },
      { code: 'chamfer-deeper-than-hole', chamfer: { value: 0.6 }, depth: { value: 0.6 } },
    ],
    [
      'a mouth as wide as the boss',
      { host: { ...BOSS, bossDiameter: 5.5 }, hole: holeOf(4.5, 6, 0.5) },
      { code: 'boss-without-wall', mouth: { value: 5.5 }, bossDiameter: 5.5 },
    ],
    [
      'more bores than the bed is long for',
      { count: 30, step: 0.02, bed: { x: 120, y: 110, z: 90 } },
      { code: 'too-many-bores', count: 30, most: { value: 10 }, bed: { x: 120, y: 110, z: 90 } },
    ],
    [
      'a block that is too high for the printer',
      { hole: holeOf(4.4, 30, 0.5), bed: { x: 210, y: 200, z: 31 } },
      { code: 'larger-than-bed', bed: { x: 210, y: 200, z: 31 } },
    ],
  ])('is refused: %s', (_what, changes, refusal) => {
    expect(holeGauge({ ...WISH, ...changes })).toMatchObject({ kind: 'refused', refusal });
  });
  test('of too many bores fits with as many as the refusal says, and not with one more', () => {
    const small = { step: 0.02, bed: { x: 120, y: 110, z: 90 } };
    const answer = holeGauge({ ...WISH, ...small, count: 30 });
    const most =
      answer.kind === 'refused' && answer.refusal.code === 'too-many-bores' ? answer.refusal.most.value : 0;
    expect(holeGauge({ ...WISH, ...small, count: most }).kind).toBe('hole-gauge');
  });
});
