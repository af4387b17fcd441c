import { describe, expect, test } from 'vitest';
import { faceOnSpacer, holeUnderWasher } from '../../../src/core/screws/bearing-face-steps.ts';
import { expectWays } from '../../support/ways.ts';

describe('faceOnSpacer', () => {
  test('is that of the head, but no wider than the spacer', () => {
    expect(faceOnSpacer(5.07, 7.3).value).toBe(5.07);
    expect(faceOnSpacer(7, 5.4).value).toBe(5.4);
    expectWays([faceOnSpacer(5.07, 7.3), faceOnSpacer(7, 5.4)]);
  });
});

describe('holeUnderWasher', () => {
  test('is that of the washer, or of the part where it is wider', () => {
    expect(holeUnderWasher(3.1, 3.2).value).toBe(3.2);
    expect(holeUnderWasher(3.6, 3.2).value).toBe(3.6);
    expectWays([holeUnderWasher(3.1, 3.2), holeUnderWasher(3.6, 3.2)]);
  });
});
