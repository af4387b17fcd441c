import { describe, expect, test } from 'vitest';
import { slipFriction, torqueToForce } from '../../../src/core/joint/demand.ts';
import type { Derived } from '../../../src/core/sources/derived.ts';
import { answerableJoint, type Changes, situationWith } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays, wayTo } from '../../support/ways.ts';

const conversionOf = (changes: Changes) => torqueToForce(answerableJoint(changes), situationWith(changes));
const slipOf = (changes: Changes) => slipFriction(answerableJoint(changes), situationWith(changes));

describe('torqueToForce', () => {
  test('of M3 under a cap head as delivered, metal on metal (vdi-2230, hand calculation)', () => {
    // P/(2π) 0.079577; d2/(2 · cos 30°) 1.544527; DKm/2 = (5.07 + 3.4)/4 = 2.1175; friction 0.10 to 0.24
    const found = conversionOf({});
    expectRelative(found.slippery, 0.079577 + 0.1 * 1.544527 + 0.1 * 2.1175, 1e-5);
    expectRelative(found.sticky, 0.079577 + 0.24 * 1.544527 + 0.24 * 2.1175, 1e-5);
    // Thread sticky, head slippery: 0.450264/(0.450264 + 0.21175)
    expectRelative(found.threadShare, 0.680145, 1e-5);
    expectRelative(found.bearingDiameter, 4.235);
  });
  test('carries the way of each, with the friction of its end (vdi-2230, hand calculation)', () => {
    const { slippery, sticky, threadShare } = conversionOf({}).ways;
    const frictions = ({ entries }: Derived) =>
      entries.filter(({ symbol }) => symbol.startsWith('μ')).map(({ value }) => value);
    expectRelative(slippery.value, 0.079577 + 0.1 * 1.544527 + 0.1 * 2.1175, 1e-5);
    expect(frictions(slippery)).toEqual([0.1, 0.1]);
    expectRelative(sticky.value, 0.079577 + 0.24 * 1.544527 + 0.24 * 2.1175, 1e-5);
    expect(frictions(sticky)).toEqual([0.24, 0.24]);
    expectRelative(threadShare.value, 0.680145, 1e-5);
    expect(frictions(threadShare)).toEqual([0.24, 0.1]);
    expect(slippery.entries.at(-1)?.from).toMatchObject({ symbol: 'D_Km', formula: '(d_w + d_h)/2' });
  });
  test.each([
    ['the hole of a washer', { screw: { washer: 'plain' }, clamped: { clearanceHole_mm: 3.1 } }, 'd_h', 3.2],
    ['a wide clearance hole', { screw: { washer: 'plain' }, clamped: { clearanceHole_mm: 3.6 } }, 'd_h', 3.6],
    [
      'a spacer',
      { clamped: { material: 'petg', sleeve: { material: 'steel', outsideDiameter_mm: 4.9 } } },
      'd_w',
      4.9,
    ],
    [
      'a head on a spacer',
      { clamped: { material: 'petg', sleeve: { material: 'steel', outsideDiameter_mm: 7.3 } } },
      'd_w',
      5.07,
    ],
  ] as const)('shows which face it is: %s', (_, changes, symbol, diameter) => {
    const bearing = conversionOf(changes).ways.slippery.entries.at(-1)?.from;
    const found = bearing?.entries.find((entry) => entry.symbol === symbol);
    expect(wayTo(found)?.entries.map(({ value }) => value)).toContain(diameter);
    expect(found?.value).toBe(diameter);
    expectWays(bearing ? [bearing] : []);
  });
  test('is stickier under a head on plastic, unless a washer lies between', () => {
    const plastic = conversionOf({ clamped: { material: 'petg' } });
    expect(plastic.headFriction).toEqual({ low: 0.2, high: 0.45 });
    expect(plastic.sticky).toBeGreaterThan(conversionOf({}).sticky);
    const washer = conversionOf({ clamped: { material: 'petg' }, screw: { washer: 'plain' } });
    expect(washer.headFriction).toEqual({ low: 0.1, high: 0.24 });
    // (7 + 3.4)/2
    expectRelative(washer.bearingDiameter, 5.2);
  });
});

describe('slipFriction', () => {
  test('is that of metal where metal sits on the brass, of plastic elsewhere', () => {
    expect(slipOf({})).toBe(0.1);
    expect(slipOf({ gap_mm: 0.3 })).toBe(0.2);
    expect(slipOf({ clamped: { material: 'petg' } })).toBe(0.2);
  });
});
