import { describe, expect, test } from 'vitest';
import { type InsertReadings, insertFault } from '../../../src/core/inserts/insert-faults.ts';
import fc from '../../support/fast-check.ts';
import { expectRelative } from '../../support/published.ts';

const SOUND: InsertReadings = {
  threadDiameter: 3,
  knurlDiameter: 4.6,
  pilotDiameter: 4.02,
  length: 5.7,
  fit: 0.05,
};
const faultOf = (changes: Partial<InsertReadings>) => insertFault({ ...SOUND, ...changes });

describe('insertFault', () => {
  // Thread, L, D, pilot; the data sheets give the hole B, and the miniature ones a pilot 0.05 mm below it.
  test.each([
    ['2-56', 2.184, 3.94, 3.48, 3.15],
    ['4-40', 2.845, 5.79, 4.42, 3.94],
    ['6-32', 3.505, 7.14, 5.23, 4.75],
    ['8-32', 4.166, 8.13, 6.07, 5.54],
    ['10-32', 4.826, 9.5, 6.86, 6.35],
    ['1/4-20', 6.35, 12.7, 8.46, 7.95],
    ['5/16-18', 7.938, 12.7, 9.98, 9.55],
    ['M2', 2, 3, 3, 2.6],
    ['M2.5', 2.5, 4, 3.65, 3.15],
  ])('finds none in the insert %s of the data sheets (insert-data-sheet)', (_, d, length, knurl, pilot) => {
    expect(
      faultOf({ threadDiameter: d, length, knurlDiameter: knurl, pilotDiameter: pilot }),
    ).toBeUndefined();
  });
  test.each([
    [4.1, 3.7],
    [4.45, 4.0],
    [5.0, 4.25],
    [5.6, 4.9],
  ])(
    'finds none in an M3 insert of outer diameter %f mm (sizes found for M3, common practice)',
    (knurl, pilot) => {
      expect(faultOf({ knurlDiameter: knurl, pilotDiameter: pilot })).toBeUndefined();
    },
  );

  test('knurl 4.1 with pilot 4.25 is swapped', () => {
    expect(faultOf({ knurlDiameter: 4.1, pilotDiameter: 4.25 })).toEqual({
      code: 'pilot-not-below-knurl',
      pilotDiameter: 4.25,
      knurlDiameter: 4.1,
    });
  });
  test('a knurl that leaves less than 0.4 mm of brass, with a length that could be one, is swapped with it', () => {
    expect(faultOf({ knurlDiameter: 3.3, pilotDiameter: 3.2, length: 4.6 })).toEqual({
      code: 'length-and-knurl-swapped',
      knurlDiameter: 3.3,
      length: 4.6,
    });
  });
  test('the same with a length that could be no knurl has no brass left', () => {
    const fault = faultOf({ knurlDiameter: 3.3, pilotDiameter: 3.2, length: 2.1 });
    expect(fault).toMatchObject({ code: 'no-brass-left', knurlDiameter: 3.3 });
    expectRelative(fault?.code === 'no-brass-left' ? fault.least : 0, 3.4);
  });
  test.each([
    ['knurlDiameter', 0.181, 4.5974],
    ['pilotDiameter', 0.157, 3.9878],
    ['length', 0.226, 5.7404],
  ] as const)('a %s of %f reads as inches: %f mm', (feature, value, inMillimetres) => {
    const fault = faultOf({ [feature]: value });
    expect(fault).toMatchObject({ code: 'looks-like-inches', feature, value });
    expectRelative(fault?.code === 'looks-like-inches' ? fault.inMillimetres : 0, inMillimetres);
  });
  test('a knurl beyond 3.2 d, a length beyond 5 d and one below 0.5 d are none', () => {
    expect(faultOf({ knurlDiameter: 9.7 })).toMatchObject({ code: 'knurl-too-wide', knurlDiameter: 9.7 });
    expect(faultOf({ length: 15.1 })).toEqual({ code: 'too-long', length: 15.1, greatest: 15 });
    expect(faultOf({ length: 1.4, knurledLength: 1.1 })).toEqual({
      code: 'too-short',
      length: 1.4,
      least: 1.5,
    });
  });
  test('too short for an estimated knurl, 0.4 · Dk, may still be measured', () => {
    expect(faultOf({ length: 1.8 })).toMatchObject({ code: 'too-short', length: 1.8 });
    expect(faultOf({ length: 1.8, knurledLength: 0.9 })).toBeUndefined();
  });
  test('a pilot not above the thread lets no screw through', () => {
    expect(faultOf({ pilotDiameter: 3 })).toEqual({
      code: 'pilot-below-thread',
      pilotDiameter: 3,
      threadDiameter: 3,
    });
  });
  test('a bore as wide as the knurl leaves no bite, and the fit counts', () => {
    expect(faultOf({ pilotDiameter: 4.52, fit: 0.11 })).toMatchObject({
      code: 'no-bite',
      knurlDiameter: 4.6,
    });
    expect(faultOf({ pilotDiameter: 4.52, fit: 0.03 })).toBeUndefined();
  });
  test('a knurled part longer than the whole is none', () => {
    expect(faultOf({ knurledLength: 5.8 })).toEqual({
      code: 'knurled-longer-than-insert',
      knurledLength: 5.8,
      length: 5.7,
    });
    expect(faultOf({ knurledLength: 5.7 })).toBeUndefined();
  });
  test('does not depend on the size of everything: 1.7 times as large is as sound', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 1.7, noNaN: true }), (times) => {
        const brassKept = 4.6 * times - 3 * times >= 0.4;
        const fault = faultOf({
          threadDiameter: 3 * times,
          knurlDiameter: 4.6 * times,
          pilotDiameter: 4.02 * times,
          length: 5.7 * times,
        });
        expect(fault === undefined).toBe(brassKept);
      }),
    );
  });
});
