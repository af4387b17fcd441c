import { describe, expect, test } from 'vitest';
import { estimatedKnurledLength, insertDimensions } from '../../../src/core/inserts/insert-dimensions.ts';
import { measuredLength } from '../../../src/core/inserts/measured-length.ts';
import { theInsert } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const measured = (symbol: string, value: number, permissibleError = 0.03) =>
  measuredLength(symbol, { values: [value], permissibleError });

describe('estimatedKnurledLength', () => {
  test('of an insert of 5 by 5 mm is 3.6 mm (hand calculation: 5 − 0.28 · 5)', () => {
    expectPublished(estimatedKnurledLength(measured('L', 5), measured('D_k', 5)).estimate.value, '3.6');
  });
  test('takes the length off for the knurl, not the other way round (hand calculation: 5.7 − 0.28 · 4.6)', () => {
    expectPublished(estimatedKnurledLength(measured('L', 5.7), measured('D_k', 4.6)).estimate.value, '4.412');
  });
  test('passes both uncertainties on, the knurl 0.28 times (jcgm-100 5.1.2; hand calculation)', () => {
    // u(L) = 0.06/√3, u(Dk) = 0.1/√3: √(0.06² + 0.028²)/√3 = 0.03823 mm
    const found = estimatedKnurledLength(measured('L', 5.7, 0.06), measured('D_k', 4.6, 0.1));
    expectPublished(found.standardUncertainty.value, '0.0382');
    expect(found.standardUncertainty.source).toBe('jcgm-100');
    expect(found.readings).toBe(0);
  });
  test('stays above 0 at the shortest insert that the door takes, 0.4 · Dk', () => {
    expectRelative(
      estimatedKnurledLength(measured('L', 0.4 * 5.3), measured('D_k', 5.3)).estimate.value,
      0.12 * 5.3,
    );
  });
});

describe('insertDimensions', () => {
  test('gives each feature its own readings and symbol', () => {
    const { knurlDiameter, pilotDiameter, length, knurledLength } = insertDimensions(
      theInsert({
        knurlDiameter_mm: [4.9, 4.94],
        pilotDiameter_mm: [4.21],
        length_mm: [5.3, 5.36, 5.33],
        knurledLength_mm: [3.8],
      }),
    );
    expect(
      [knurlDiameter, pilotDiameter, length, knurledLength].map(({ estimate }) => estimate.symbol),
    ).toEqual(['D_k', 'D_p', 'L', 'L_k']);
    expectRelative(knurlDiameter.estimate.value, 4.92);
    expect(pilotDiameter.estimate.value).toBe(4.21);
    expectRelative(length.estimate.value, 5.33);
    expect(knurledLength.estimate.value).toBe(3.8);
    expect([knurlDiameter, pilotDiameter, length, knurledLength].map(({ readings }) => readings)).toEqual([
      2, 1, 3, 1,
    ]);
    expect(knurledLength.estimate.standing).toBe('measured');
  });
  test('estimates the knurled length where nobody measured it', () => {
    const { knurledLength } = insertDimensions(theInsert());
    expect(knurledLength.estimate.standing).toBe('estimate');
    // 5.3 − 0.28 · 4.93
    expectPublished(knurledLength.estimate.value, '3.9196');
  });
});
