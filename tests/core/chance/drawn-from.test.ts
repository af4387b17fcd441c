import { describe, expect, test } from 'vitest';
import { chanceModel } from '../../../src/core/chance/chance-model.ts';
import type { DrawnFrom, DrawnRange } from '../../../src/core/chance/drawn-from.ts';
import type { Lognormal } from '../../../src/core/chance/scatter.ts';
import { tighten } from '../../../src/core/joint/tightening.ts';
import type { Derived } from '../../../src/core/sources/derived.ts';
import { answerableJoint, type Changes, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const insert = theInsert();
const overGap = answerableJoint({ gap_mm: 0.4, clamped: { material: 'petg' } });
const model = chanceModel(overGap, insert, 240);

/** 95 % quantile of the normal distribution, as printed in tables. */
const NINE_OF_TEN = 1.6448536269514722;

function expectDrawn(range: DrawnRange | undefined, { centre, deviation }: Lognormal): void {
  expectRelative(range?.low.value ?? Number.NaN, Math.exp(centre - NINE_OF_TEN * deviation));
  expectRelative(range?.high.value ?? Number.NaN, Math.exp(centre + NINE_OF_TEN * deviation));
}

const everyOne = ({ threadFriction, headFriction, slipFriction, preloadLeft, ...single }: DrawnFrom) => [
  ...[threadFriction, headFriction, slipFriction, preloadLeft].flatMap((range) =>
    range ? [range.low, range.high] : [],
  ),
  ...Object.values(single),
];

describe('what joints were drawn from', () => {
  const { drawnFrom } = model;
  test('is what the model draws: ends of the frictions, bore, knurl and tool', () => {
    expectDrawn(drawnFrom.threadFriction, model.threadFriction);
    expectDrawn(drawnFrom.headFriction, model.headFriction);
    expectDrawn(drawnFrom.slipFriction, model.slipFriction);
    expectRelative(drawnFrom.toolDeviation.value, model.toolDeviation);
    expectRelative(drawnFrom.expectedBore.value, model.expectedBore);
    expectRelative(drawnFrom.boreDeviation.value, model.boreDeviation);
    expectRelative(drawnFrom.knurlDiameter.value, model.knurlDiameter);
    expectRelative(drawnFrom.knurlDeviation.value, model.knurlDeviation);
  });
  test('gives back the ranges that the joint names', () => {
    const { friction } = overGap.screw;
    expect(drawnFrom.threadFriction.low).toMatchObject({
      value: friction.thread.low,
      source: friction.source,
    });
    expect(drawnFrom.headFriction.high.value).toBe(friction.headOnPlastic.high);
    // δ of 95 of 100 tools over 1.960.
    expectRelative(drawnFrom.toolDeviation.value * 1.9599639845400545, overGap.tool.deviation);
    const { range } = tighten(overGap, insert).left.from;
    expectRelative(drawnFrom.preloadLeft?.low.value ?? 0, range?.low ?? Number.NaN);
    expectRelative(drawnFrom.preloadLeft?.high.value ?? 0, range?.high ?? Number.NaN);
  });
  test('draws what is left of the clamp force between its ends: 9 of 10 losses over what is left', () => {
    const { median, deviation } = model.lost;
    const reach = Math.exp(NINE_OF_TEN * deviation);
    expectRelative(drawnFrom.preloadLeft?.low.value ?? 0, 1 / (1 + median * reach));
    expectRelative(drawnFrom.preloadLeft?.high.value ?? 0, 1 / (1 + median / reach));
  });
  const PLACES: readonly Changes[] = [
    {},
    { holes: { existing: { diameter_mm: 4.37, known: 'as-measured' } } },
    { gap_mm: 0.4, clamped: { material: 'petg' }, holes: { facets: 16 } },
  ];
  test.each(PLACES)('comes to what its formulae come to: %j', (changes) => {
    const all: readonly Derived[] = everyOne(
      chanceModel(answerableJoint(changes), insert, 240).drawnFrom,
    ).filter(({ formula, symbol }) => formula !== symbol);
    expect(all.length).toBeGreaterThan(3);
    expectWays(all);
  });
  test('leaves out what is not asked', () => {
    const joint = answerableJoint({ loads: { shear_N: 0 } });
    const { slipFriction, preloadLeft } = chanceModel(joint, insert, 310).drawnFrom;
    expect(slipFriction).toBeUndefined();
    // A metal part on the insert: no plastic creeps in the loop.
    expect(preloadLeft).toBeUndefined();
  });
});
