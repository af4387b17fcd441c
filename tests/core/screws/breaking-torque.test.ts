import { describe, expect, test } from 'vitest';
import {
  breakingTorqueAtTensileStrength,
  isTorsionTested,
  minimumBreakingTorque,
  type TorsionTestedClass,
} from '../../../src/core/screws/breaking-torque.ts';
import { type CoarseSize, coarseThread, threadOf } from '../../fixtures/iso-965/threads.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const STRENGTH = { '8.8': 800, '9.8': 900, '10.9': 1040, '12.9': 1220 } as const;

const classOf = (designation: TorsionTestedClass['designation']): TorsionTestedClass => ({
  id: designation,
  designation,
  tensileStrengthMin: STRENGTH[designation],
  yieldStrengthMin: 637,
  family: 'carbon-steel',
  source: 'iso-898-1',
});

const torqueOf = (size: CoarseSize, designation: TorsionTestedClass['designation']) =>
  minimumBreakingTorque({ thread: coarseThread(size), propertyClass: classOf(designation) });

describe('minimumBreakingTorque', () => {
  test.each([
    ['M2', '8.8', '0.37'],
    ['M2', '10.9', '0.45'],
    ['M2', '12.9', '0.50'],
    ['M2.5', '8.8', '0.82'],
    ['M2.5', '10.9', '1.0'],
    ['M2.5', '12.9', '1.1'],
    ['M3', '8.8', '1.5'],
    ['M3', '10.9', '1.9'],
    ['M3', '12.9', '2.1'],
    ['M4', '8.8', '3.6'],
    ['M4', '10.9', '4.4'],
    ['M4', '12.9', '4.9'],
    ['M5', '8.8', '7.6'],
    ['M5', '10.9', '9.3'],
    ['M5', '12.9', '10'],
    ['M6', '8.8', '13'],
    ['M6', '10.9', '16'],
    ['M6', '12.9', '17'],
    ['M8', '8.8', '33'],
    ['M8', '10.9', '40'],
    ['M8', '12.9', '44'],
  ] as const)(
    'iso898-7.MB.%s.%s is %s N·m after rounding (iso-898-7, table from memory)',
    (size, designation, printed) => {
      expectPublished(torqueOf(size, designation).value / 1000, printed);
    },
  );
  test('uses 0.815 for class 9.8 (iso-898-7, formula)', () => {
    expectRelative(torqueOf('M4', '9.8').value / torqueOf('M4', '10.9').value, (0.815 * 900) / (0.79 * 1040));
  });
  test('grows with the cube of the root diameter', () => {
    const M3 = coarseThread('M3');
    const twice = threadOf(3, 0.5, 'metric', {
      ...M3.limits,
      externalMinorMin: 2 * M3.limits.externalMinorMin,
    });
    const propertyClass = classOf('8.8');
    expectRelative(
      minimumBreakingTorque({ thread: twice, propertyClass }).value,
      8 * torqueOf('M3', '8.8').value,
    );
  });
  test('carries what went in, its unit and its source', () => {
    const torque = torqueOf('M3', '8.8');
    expect(torque).toMatchObject({ symbol: 'M_B', unit: 'N·mm', source: 'iso-898-7', standing: 'published' });
    expect(torque.entries.map(({ symbol, value }) => [symbol, value])).toEqual([
      ['X', 0.84],
      ['R_m', 800],
      ['d_3min', 2.272],
    ]);
    expectPublished(torque.value, '1547');
  });
});

describe('isTorsionTested', () => {
  test.each(['4.8', '5.8', '6.8', 'A2-70', 'toString'])(
    'is false for %s, which iso-898-7 does not cover',
    (designation) => {
      expect(isTorsionTested({ ...classOf('8.8'), designation })).toBe(false);
    },
  );
  test.each(['8.8', '9.8', '10.9', '12.9'] as const)('is true for %s', (designation) => {
    expect(isTorsionTested(classOf(designation))).toBe(true);
  });
});

describe('breakingTorqueAtTensileStrength', () => {
  const stainless = (strength: number) => ({
    id: 'A2',
    designation: 'A2',
    tensileStrengthMin: strength,
    yieldStrengthMin: 431,
    family: 'stainless-steel' as const,
    source: 'iso-3506-1' as const,
  });
  const torqueAt = (size: CoarseSize, strength: number) =>
    breakingTorqueAtTensileStrength({ thread: coarseThread(size), propertyClass: stainless(strength) });
  test('of an M3 at 700 MPa is 700 · π/16 · 2.272³ (hand calculation)', () => {
    expectPublished(torqueAt('M3', 700), '1612');
  });
  test.each([
    ['M3', 500, 1.1],
    ['M3', 800, 1.8],
    ['M4', 700, 3.8],
    ['M5', 800, 8.8],
  ] as const)(
    'of %s at %d MPa lies within 5 %% of %d N·m (iso-3506-1, read in a reprint)',
    (size, strength, least) => {
      expect(Math.abs(torqueAt(size, strength) / 1000 / least - 1)).toBeLessThan(0.05);
    },
  );
  test('is above the least that ISO 898-7 asks of its classes (law)', () => {
    const propertyClass = classOf('8.8');
    const thread = coarseThread('M4');
    expect(breakingTorqueAtTensileStrength({ thread, propertyClass })).toBeGreaterThan(
      minimumBreakingTorque({ thread, propertyClass }).value,
    );
  });
});
