import { describe, expect, test } from 'vitest';
import { screwComplianceOf } from '../../../src/core/joint/screw-compliance.ts';
import { screwCompliance, stretchedScrew } from '../../../src/core/joint/screw-compliance-steps.ts';
import { answerableJoint, given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const JOINT = answerableJoint();
const ENGAGED = given('L_E', 4.6, 'mm');
const GRIP = given('g', 2.7, 'mm');

describe('stretchedScrew', () => {
  test('of M3 over 2.7 mm with 4.6 mm engaged is 206 265 N/mm (hand calculation, iso-898-1 As 5.03 mm²)', () => {
    // 205 000 · 5.0309/(2.7 + 2.3)
    expectPublished(stretchedScrew(JOINT, ENGAGED, GRIP).value, '206265');
  });
  test('leads to stress area and stretched length', () => {
    const { entries } = stretchedScrew(JOINT, ENGAGED, GRIP);
    expect(entries.map(({ symbol, from }) => [symbol, from?.symbol])).toEqual([
      ['A_d', 'A_s'],
      ['A_t', 'A_s'],
      ['l_d', undefined],
      ['l_t', 'l_t'],
      ['E', undefined],
    ]);
  });
});

describe('screwCompliance', () => {
  test('is one over the stiffness, and the plain number', () => {
    const shown = screwCompliance(JOINT, ENGAGED, GRIP);
    expectRelative(shown.value * stretchedScrew(JOINT, ENGAGED, GRIP).value, 1);
    expect(shown.value).toBe(screwComplianceOf(JOINT, 4.6, 2.7));
    expect(shown.entries[0]?.from).toEqual(stretchedScrew(JOINT, ENGAGED, GRIP));
  });
  test('grows with the stretched length', () => {
    expect(screwComplianceOf(JOINT, 4.6, 3.1)).toBeGreaterThan(screwComplianceOf(JOINT, 4.6, 2.9));
    expect(screwComplianceOf(JOINT, 5.2, 3.1)).toBeGreaterThan(screwComplianceOf(JOINT, 4.6, 3.1));
  });
});
