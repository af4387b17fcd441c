import { describe, expect, test } from 'vitest';
import { insertThreadStrips, screwThreadStrips } from '../../../src/core/pull-out/thread-strip.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { given, situationWith } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const engaged = (length: number) => ({ ...situationWith(), engagement: given('L_E', length, 'mm') });

describe('insertThreadStrips', () => {
  test('of M3 in brass over 4.1 mm (fed-std-h28-2, hand calculation with the limits of M3)', () => {
    // ASn = π · 4.1/0.5 · 2.874 · (0.25 + (2.874 − 2.775)/√3) = 74.037 · 0.307158 = 22.741 mm²; brass 220, low 207 MPa
    const found = insertThreadStrips.capacity(engaged(4.1));
    expectRelative(found?.median.value ?? 0, 220 * 22.741, 2e-4);
    expectRelative(found?.characteristic.value ?? 0, 207 * 22.741, 2e-4);
  });
});

describe('screwThreadStrips', () => {
  test('of M3 8.8 over 4.1 mm (fed-std-h28-2, hand calculation with the limits of M3)', () => {
    // ASs = π · 4.1/0.5 · 2.599 · (0.25 + (2.58 − 2.599)/√3) = 66.953 · 0.239030 = 16.004 mm²; 800/√3 = 461.88 MPa
    const found = screwThreadStrips.capacity(engaged(4.1));
    expectRelative(found?.median.value ?? 0, 461.88 * 16.004, 2e-4);
    expect(found?.characteristic.value).toBe(found?.median.value);
  });
});

test('both show how long the thread is engaged, as it was worked out', () => {
  const worked = situationWith();
  for (const rule of [insertThreadStrips, screwThreadStrips]) {
    const { median } = rule.capacity(worked) ?? {};
    expect(median?.entries[1]?.from?.entries[0]?.from).toBe(worked.engagement);
    const area = median?.entries[1]?.from;
    expectRelative((area && evaluated(area)) ?? Number.NaN, area?.value ?? 0);
  }
});

test('both are proportional to the engagement, at every seat', () => {
  for (const rule of [insertThreadStrips, screwThreadStrips]) {
    const at = (length: number) => rule.capacity(engaged(length))?.characteristic.value ?? 0;
    expectRelative(at(6.3) / at(2.1), 3);
    expect(rule.path('far-side')).toBe('clamp');
  }
});
