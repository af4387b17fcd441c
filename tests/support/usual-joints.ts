import { CENTRED_LOAD } from '../../src/storage/centred-load.ts';
import type { JointDocument } from '../../src/storage/document.ts';
import fc from './fast-check.ts';
import type { Changes } from './joints.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** M3 joints as people make them, on every seat, in a part without a free boss: to be changed in one input at a time. */
export const usualJoints: fc.Arbitrary<Changes> = fc
  .record({
    seat: fc.constantFrom<JointDocument['joint']['seat'][]>(
      'on-insert',
      'on-plastic',
      'over-gap',
      'far-side',
    ),
    clamped: fc.record({
      material: fc.constantFrom('aluminium', 'petg', 'pla'),
      thickness_mm: between(1, 9),
      clearanceHole_mm: between(3.1, 4.7),
    }),
    host: fc.record({
      material: fc.constantFrom('pla', 'petg', 'abs', 'asa', 'pa12'),
      axis: fc.constantFrom<JointDocument['joint']['host']['axis'][]>('along-build', 'across-build'),
      count: fc.integer({ min: 1, max: 9 }),
      infill: fc.record({
        pattern: fc.constantFrom('grid', 'gyroid'),
        density_percent: fc.integer({ min: 5, max: 90 }),
      }),
      topSkin_mm: between(0.4, 1.6),
      thickness_mm: between(13, 30),
    }),
    setting: fc.constantFrom<JointDocument['joint']['setting'][]>('heat-set', 'cold-pressed', 'hammered'),
    loads: fc.record({
      pull_N: between(1, 150),
      shear_N: between(0.5, 40),
      serviceTemperature_degC: between(10, 40),
      duration_h: between(1, 50_000),
      retightenings: fc.integer({ min: 0, max: 4 }),
    }),
  })
  .map(({ seat, host: { count, ...host }, loads, ...rest }) => ({
    ...rest,
    seat,
    insertSide: seat === 'far-side' ? 'far-side' : 'near-side',
    gap_mm: seat === 'over-gap' ? 0.4 : 0,
    host: { ...host, wall: { kind: 'lines', count, lineWidth_mm: 0.43, convention: 'rounded-beads' } },
    loads: { ...CENTRED_LOAD, ...loads },
  }));
