import { describe, expect, test } from 'vitest';
import { proofRows } from '../../../src/core/bench/proof-rows.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const RIG = { leverRatio: 4, scaleLimit: 490.3325 };
const [one, three, five] = proofRows(600, [1, 3, 5], RIG);

describe('proofRows', () => {
  test('of one coupon is exp(0.10 · (1.645 + 1.645)) times the load (hand calculation)', () => {
    // exp(0.32897) = 1.38954: 833.7 N; a quarter of it at the scale
    expectPublished(one?.proofLoad.value ?? 0, '833.7');
    if (one?.reading.kind !== 'reading') throw new Error('the scale is large enough');
    expectPublished(one.reading.reading.value, '208.4');
    expectPublished(one.shareAtProofLoad.value, '0.050');
  });
  test('asks less of each coupon the more are pulled', () => {
    expect(three?.proofLoad.value).toBeLessThan(one?.proofLoad.value ?? 0);
    expect(five?.proofLoad.value).toBeLessThan(three?.proofLoad.value ?? 0);
    expect(five?.proofLoad.value).toBeGreaterThan(600);
  });
  test('says which lever a scale needs that is too small', () => {
    const [straight] = proofRows(600, [1], { ...RIG, leverRatio: 1 });
    if (straight?.reading.kind !== 'refused') throw new Error('833.7 N is more than 50 kg');
    expectRelative(straight.reading.leverRatio.value, 833.72 / 490.3325, 1e-4);
  });
});
