import { describe, expect, test } from 'vitest';
import {
  type ProofTestedClass,
  proofLoad,
  ultimateTensileLoad,
} from '../../../src/core/screws/tensile-load.ts';
import { type CoarseSize, coarseThread } from '../../fixtures/iso-965/threads.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

/** Rm and Sp, MPa, as iso-898-1 gives them for d ≤ 16 mm. */
const STRENGTHS = { '4.8': [420, 310], '8.8': [800, 580], '10.9': [1040, 830], '12.9': [1220, 970] } as const;

const screwOf = (size: CoarseSize, designation: keyof typeof STRENGTHS) => {
  const [tensileStrengthMin, proofStress] = STRENGTHS[designation];
  const propertyClass: ProofTestedClass = {
    id: designation,
    designation,
    tensileStrengthMin,
    yieldStrengthMin: 333,
    proofStress,
    family: 'carbon-steel',
    source: 'iso-898-1',
  };
  return { thread: coarseThread(size), propertyClass };
};

/** The tables multiply the rounded area and round again, not strictly to nearest. */
const OF_THE_TABLES = 0.006;

describe('proofLoad', () => {
  test.each([
    ['M3', '8.8', 2920],
    ['M3', '10.9', 4180],
    ['M4', '8.8', 5100],
    ['M4', '10.9', 7290],
    ['M4', '12.9', 8520],
    ['M5', '8.8', 8230],
    ['M5', '12.9', 13800],
    ['M6', '12.9', 19500],
    ['M8', '8.8', 21200],
    ['M8', '12.9', 35500],
  ] as const)(
    'iso898-1.proof.%s.%s is %i N within a part of 0.006 (iso-898-1, table)',
    (size, designation, printed) => {
      expectRelative(proofLoad(screwOf(size, designation)).value, printed, OF_THE_TABLES);
    },
  );
  test('carries the area with its way', () => {
    const load = proofLoad(screwOf('M4', '8.8'));
    expect(load).toMatchObject({ symbol: 'F_p', unit: 'N', source: 'iso-898-1', standing: 'published' });
    expect(load.entries.map(({ symbol, from }) => [symbol, from?.unit])).toEqual([
      ['A_s', 'mm²'],
      ['S_p', undefined],
    ]);
  });
});

describe('ultimateTensileLoad', () => {
  test.each([
    ['M3', '4.8', 2110],
    ['M3', '8.8', 4020],
    ['M3', '10.9', 5230],
    ['M3', '12.9', 6140],
    ['M4', '10.9', 9130],
    ['M5', '8.8', 11350],
    ['M5', '10.9', 14800],
    ['M8', '12.9', 44600],
  ] as const)(
    'iso898-1.ult.%s.%s is %i N within a part of 0.006 (iso-898-1, table)',
    (size, designation, printed) => {
      expectRelative(ultimateTensileLoad(screwOf(size, designation)).value, printed, OF_THE_TABLES);
    },
  );
  test('of A2-70 M3 is 3520 N (iso-3506-1, Rm·As derived)', () => {
    const { thread, propertyClass } = screwOf('M3', '8.8');
    const A2 = {
      ...propertyClass,
      designation: 'A2-70',
      tensileStrengthMin: 700,
      source: 'iso-3506-1',
    } as const;
    const load = ultimateTensileLoad({ thread, propertyClass: A2 });
    expectPublished(load.value / 10, '352');
    expect(load.source).toBe('iso-3506-1');
  });
  test('is above the proof load of the same screw', () => {
    for (const designation of ['4.8', '8.8', '10.9', '12.9'] as const) {
      const screw = screwOf('M5', designation);
      expect(ultimateTensileLoad(screw).value).toBeGreaterThan(proofLoad(screw).value);
    }
  });
});
