import { describe, expect, test } from 'vitest';
import { insertDimensions } from '../../../src/core/inserts/insert-dimensions.ts';
import { chooseScrew, engagement, gripLength } from '../../../src/core/joint/screw-choice.ts';
import { type Changes, given, givenJoint, theInsert } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays, wayTo } from '../../support/ways.ts';

const dimensionsOf = (length: number) => insertDimensions(theInsert({ length_mm: [length] }));
const MELT = given('m', 0.61, 'mm');
const gripOf = (changes: Changes) => gripLength(givenJoint(changes), dimensionsOf(5.3)).value;
function chosen(changes: Changes, length = 5.3) {
  const choice = chooseScrew(givenJoint(changes), dimensionsOf(length), MELT);
  if (choice.kind === 'refused')
    throw new Error(`${choice.code} ${choice.leastLength} ${choice.greatestLength}`);
  return choice;
}

describe('gripLength', () => {
  test('adds washer, part, gap and sunk (hand calculation: 0.5 + 2.7 + 0.3 + 0.2)', () => {
    expectRelative(gripOf({}), 2.7);
    expectRelative(gripOf({ screw: { washer: 'plain' }, gap_mm: 0.3, sunk_mm: 0.2 }), 3.7);
  });
  test('from the far side reaches through the printed part to the insert (hand calculation: 2.7 + 11.3 − 5.3 − 0.2)', () => {
    expectRelative(gripOf({ insertSide: 'far-side', sunk_mm: 0.2 }), 8.5);
  });
});

describe('engagement', () => {
  test('of M3 × 8 through 3 mm into 5 mm is 4.6 mm (vdi-2230 run-out 0.8 P, hand calculation)', () => {
    const grip = given('g', 3, 'mm');
    expectPublished(engagement(given('l', 8, 'mm'), grip, given('L', 5, 'mm'), 0.5).value, '4.6');
    expect(engagement(given('l', 10, 'mm'), grip, given('L', 5.1, 'mm'), 0.5).value).toBe(5.1);
  });
});

describe('chooseScrew', () => {
  test('takes the shortest length that engages 1.5 d: M3 × 8 through 2.7 mm (iso-888)', () => {
    // × 6 engages 2.9 mm, × 8 4.9 mm; 1.5 · 3 = 4.5 mm.
    const { length, engagement: carries, overrun, choice } = chosen({});
    expect(length.value).toBe(8);
    expectRelative(carries.value, 4.9);
    expectRelative(overrun.value, 0);
    expect(choice).toBe('standard');
  });
  test('is content with nine tenths of a short insert', () => {
    // 0.9 · 3.3 = 2.97 mm: × 6 engages 2.9 mm only.
    expect(chosen({}, 3.3).length.value).toBe(8);
    expect(chosen({ clamped: { thickness_mm: 2.5 } }, 3.3).length.value).toBe(6);
  });
  test('leads to both ends that the length lies between', () => {
    const { length, engagement: carries, overrun } = chosen({});
    expectWays([length, carries, overrun]);
    const [least, most] = length.entries.map(wayTo);
    // 2.7 + 3, and 2.7 + 11.3 − 1 − 0.61 − 0.5
    expectRelative(least?.value ?? 0, 5.7);
    expectRelative(most?.value ?? 0, 11.89);
  });
  test('takes the one that engages most where none engages enough', () => {
    // Part 7.5 mm: greatest max(2.7 + 7.5 − 1 − 0.61 − 0.5, 2.7 + 5.3) = 8.09 mm, × 8 fits; through 4.1 mm it engages 3.5.
    const { length, engagement: carries } = chosen({
      clamped: { thickness_mm: 4.1 },
      host: { thickness_mm: 6.9 },
    });
    expect(length.value).toBe(8);
    expectRelative(carries.value, 3.5);
  });
  test('checks a length that a person has fixed', () => {
    const { length, choice } = chosen({ screw: { length_mm: 7.1 } });
    expect(choice).toBe('fixed');
    expect(length).toMatchObject({ value: 7.1, formula: 'l', source: 'your-measurement' });
  });
  test('refuses a screw too short, with both ends (hand calculation)', () => {
    const choice = chooseScrew(givenJoint({ screw: { length_mm: 5.6 } }), dimensionsOf(5.3), MELT);
    expect(choice).toMatchObject({ kind: 'refused', code: 'too-short', available: [5.6] });
    if (choice.kind === 'refused') {
      expectRelative(choice.leastLength, 2.7 + 3);
      // 2.7 + 11.3 − 1 − 0.61 − 0.5
      expectRelative(choice.greatestLength, 11.89);
    }
  });
  test('refuses a screw that bottoms', () => {
    const choice = chooseScrew(givenJoint({ screw: { length_mm: 12.1 } }), dimensionsOf(5.3), MELT);
    expect(choice).toMatchObject({ kind: 'refused', code: 'bottoms' });
  });
  test('lets a far-side screw stand out by two diameters', () => {
    // Grip 8.7, insert 5.3, 2 d: 20.0 mm.
    expect(chosen({ insertSide: 'far-side', screw: { length_mm: 19.9 } }).overrun.value).toBeGreaterThan(5.8);
    const choice = chooseScrew(
      givenJoint({ insertSide: 'far-side', screw: { length_mm: 20.2 } }),
      dimensionsOf(5.3),
      MELT,
    );
    expect(choice).toMatchObject({ kind: 'refused', code: 'bottoms' });
  });
});
