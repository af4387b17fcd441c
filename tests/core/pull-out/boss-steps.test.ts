import { describe, test } from 'vitest';
import { innerDiameter, ringRatio } from '../../../src/core/pull-out/boss-steps.ts';
import { entry } from '../../../src/core/sources/derived.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

describe('ringRatio', () => {
  test('of 8.8 round 5 mm is 1.9535 (hand calculation: (77.44 + 25)/(77.44 − 25))', () => {
    const ratio = ringRatio(given('D_o', 8.8, 'mm'), given('D_k', 5, 'mm'));
    expectPublished(ratio.value, '1.9535');
    expectWays([ratio]);
  });
});

describe('innerDiameter', () => {
  test('of a boss of 12 with walls of 1.2 mm is 9.6 mm (hand calculation)', () => {
    const inner = innerDiameter(entry('D_b', 12, 'mm'), given('t', 1.2, 'mm'));
    expectRelative(inner.value, 9.6);
    expectWays([inner]);
  });
});
