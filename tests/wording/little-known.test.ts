import { describe, expect, test } from 'vitest';
import { littleKnownText } from '../../src/wording/little-known.ts';

const percent = (value: number) => `${100 * value} %`;

describe('littleKnownText', () => {
  test('says both ends, what is expected, and that the careful end counts', () => {
    expect(littleKnownText({ value: 0.25, range: { low: 0.25, middle: 0.5, high: 0.75 } }, percent)).toBe(
      'Little is known of it: between 25 % and 75 %, 50 % as expected. The careful end is used.',
    );
  });
  test('does not call the middle careful', () => {
    expect(littleKnownText({ value: 0.5, range: { low: 0.25, middle: 0.5, high: 0.75 } }, percent)).toBe(
      'Little is known of it: between 25 % and 75 %, 50 % as expected. The expected value is used.',
    );
  });
  test('says of a strength that its range is in the scatter', () => {
    expect(littleKnownText({ value: 31, range: { low: 24, high: 48 } }, (value) => `${value} MPa`)).toBe(
      'Little is known of it: between 24 MPa and 48 MPa. The range is part of the scatter of what is worked out with it.',
    );
  });
  test('says nothing of what is known', () => {
    expect(littleKnownText({ value: 0.5 }, percent)).toBeUndefined();
  });
});
