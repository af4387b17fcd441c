import { describe, expect, test } from 'vitest';
import { chanceModel } from '../../src/core/chance/chance-model.ts';
import { countInThousand, endsInThousand, oneAmong } from '../../src/core/chance/counted.ts';
import { derivationsWithin, meaningOf, meaningOfEntry } from '../../src/wording/symbols.ts';
import { sampled } from '../core/chance/only.ts';
import { answerableJoint, theInsert } from '../support/joints.ts';

const joint = answerableJoint({ gap_mm: 0.4, clamped: { material: 'petg' } });
const result = sampled(chanceModel(joint, theInsert(), 240), 500);
const draw = { seed: 5, torque: result.torque, from: result.drawnFrom };
const { low, high } = endsInThousand(result.anything, draw);

describe('the symbols of a sampling', () => {
  test('have a meaning each, with what went into them', () => {
    const shown = [
      countInThousand(result.anything, draw),
      low,
      high,
      oneAmong(result.anything, draw, 'happens'),
      ...Object.values(result.clampForceQuantiles),
    ].flatMap((one) => [...derivationsWithin(one)]);
    expect(shown.length).toBeGreaterThan(30);
    for (const derived of shown) {
      expect(meaningOf(derived), derived.symbol).not.toBe(derived.symbol);
      for (const entry of derived.entries)
        expect(meaningOfEntry(entry, derived), entry.symbol).not.toBe(entry.symbol);
    }
  });
});
