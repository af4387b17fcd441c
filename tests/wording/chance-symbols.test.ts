import { describe, expect, test } from 'vitest';
import { chanceModel } from '../../src/core/chance/chance-model.ts';
import { countInThousand, drawnQuantile, endsInThousand, oneAmong } from '../../src/core/chance/counted.ts';
import { entryFrom } from '../../src/core/sources/derived.ts';
import { wayOf } from '../../src/core/steps/steps.ts';
import { derivationsWithin, meaningOf, meaningOfEntry } from '../../src/wording/symbols.ts';
import { sampled } from '../core/chance/only.ts';
import { answerableJoint, given, theInsert } from '../support/joints.ts';

const joint = answerableJoint({ gap_mm: 0.4, clamped: { material: 'petg' } });
const result = sampled(chanceModel(joint, theInsert(), 240), 500);
const draw = { seed: 5, torque: entryFrom(given('T_d', result.torque, 'N·mm')), from: result.drawnFrom };
const { low, high } = endsInThousand(result.anything, draw);

const shown = [
  countInThousand(result.anything, draw),
  low,
  high,
  oneAmong(result.anything, draw, 'happens'),
  ...Object.values(result.clampForceQuantiles).map((one) => drawnQuantile(one, result.samples, draw)),
].flatMap((one) => [...derivationsWithin(one)]);

/** Of the sampling itself: chosen, or asked for. */
const GIVEN = ['n_j', 's_j', 'n_w', 'p_q', 'p'];

describe('the symbols of a sampling', () => {
  test('lead from every number that was worked out to what was chosen or asked for', () => {
    const own = shown.filter(({ symbol }) => /_(?:j|q|low|high|top)$/u.test(symbol));
    const bare = own.flatMap(({ entries }) => entries).filter((one) => wayOf(one) === undefined);
    expect(new Set(bare.map(({ symbol }) => symbol))).toEqual(new Set(GIVEN));
  });
  test('have a meaning each, with what went into them', () => {
    expect(shown.length).toBeGreaterThan(30);
    for (const derived of shown) {
      expect(meaningOf(derived), derived.symbol).not.toBe(derived.symbol);
      for (const entry of derived.entries)
        expect(meaningOfEntry(entry, derived), entry.symbol).not.toBe(entry.symbol);
    }
  });
});
