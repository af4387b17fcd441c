import { type Derived, entry } from '../sources/derived.ts';
import type { SourceId } from '../sources/sources.ts';
import type { Thread } from './thread.ts';

/** Height of the 60° fundamental triangle over the pitch, H/P, [-]. */
const TRIANGLE_HEIGHT_PER_PITCH = Math.sqrt(3) / 2;

/** How many heights H the nominal diameter is above each basic diameter, [-]. */
const HEIGHTS_TO_PITCH_DIAMETER = 3 / 4;
const HEIGHTS_TO_INTERNAL_MINOR = 5 / 4;
const HEIGHTS_TO_EXTERNAL_MINOR = { metric: 17 / 12, unified: 11 / 8 } as const;

const belowNominal = (thread: Thread, heights: number): number =>
  thread.nominalDiameter - heights * TRIANGLE_HEIGHT_PER_PITCH * thread.pitch;

const basicSizes = (thread: Thread): SourceId => (thread.system === 'metric' ? 'iso-724' : 'asme-b1.1');

/**
 * Basic pitch diameter as a plain number.
 * @param thread - nominal diameter d [mm] and pitch P [mm], 0 < P ≤ d/2
 * @returns d2 [mm]
 * @source iso-724 basic dimensions
 * @source asme-b1.1 basic sizes
 */
export const pitchDiameterOf = (thread: Thread): number => belowNominal(thread, HEIGHTS_TO_PITCH_DIAMETER);

/**
 * Minor diameter of the screw at its root as a plain number.
 * @param thread - nominal diameter d [mm] and pitch P [mm], 0 < P ≤ d/2
 * @returns d3 [mm]
 * @source iso-724 basic dimensions
 * @source asme-b1.1 basic sizes
 */
export const externalMinorDiameterOf = (thread: Thread): number =>
  belowNominal(thread, HEIGHTS_TO_EXTERNAL_MINOR[thread.system]);

/**
 * Basic minor diameter of the insert's thread as a plain number.
 * @param thread - nominal diameter D [mm] and pitch P [mm], 0 < P ≤ D/2
 * @returns D1 [mm]
 * @source iso-724 basic dimensions
 * @source asme-b1.1 basic sizes
 */
export const internalMinorDiameterOf = (thread: Thread): number =>
  belowNominal(thread, HEIGHTS_TO_INTERNAL_MINOR);

/**
 * Basic pitch diameter of a 60° thread.
 *
 *     d2 = d − 3/4 · H = d − 0.649519 · P
 *     H  = √3/2 · P
 *
 * Nominal profile only: tolerance class, coating and wear are not in it.
 *
 * @param thread - nominal diameter d [mm] and pitch P [mm], 0 < P ≤ d/2
 * @returns d2 [mm]
 * @source iso-724 basic dimensions
 * @source asme-b1.1 basic sizes
 * @example M5 × 0.8 gives 4.480 mm
 */
export function pitchDiameter(thread: Thread): Derived {
  return {
    symbol: 'd_2',
    value: pitchDiameterOf(thread),
    unit: 'mm',
    formula: 'd − 3/4 · √3/2 · P',
    entries: nominalEntries(thread),
    source: basicSizes(thread),
    standing: 'published',
  };
}

/**
 * Minor diameter of the screw's thread at its root.
 *
 *     d3 = d − 17/12 · H = d − 1.226869 · P     metric
 *     d3 = d − 11/8 · H  = d − 1.19078 · P      unified
 *     H  = √3/2 · P
 *
 * Nominal profile only: tolerance class, coating and wear are not in it.
 *
 * @param thread - nominal diameter d [mm] and pitch P [mm], 0 < P ≤ d/2
 * @returns d3 [mm]
 * @source iso-724 basic dimensions
 * @source asme-b1.1 basic sizes; the rule reproduces the printed minor diameters
 * @example M5 × 0.8 gives 4.019 mm
 */
export function externalMinorDiameter(thread: Thread): Derived {
  return {
    symbol: 'd_3',
    value: externalMinorDiameterOf(thread),
    unit: 'mm',
    formula: thread.system === 'metric' ? 'd − 17/12 · √3/2 · P' : 'd − 11/8 · √3/2 · P',
    entries: nominalEntries(thread),
    source: basicSizes(thread),
    standing: 'published',
  };
}

/**
 * Basic minor diameter of the internal thread, the bore of the insert.
 *
 *     D1 = D − 5/4 · H = D − 1.082532 · P
 *     H  = √3/2 · P
 *
 * Nominal profile only: tolerance class and wear are not in it.
 *
 * @param thread - nominal diameter D [mm] and pitch P [mm], 0 < P ≤ D/2
 * @returns D1 [mm]
 * @source iso-724 basic dimensions
 * @source asme-b1.1 basic sizes
 * @example M6 × 1 gives 4.917 mm
 */
export function internalMinorDiameter(thread: Thread): Derived {
  return {
    symbol: 'D_1',
    value: internalMinorDiameterOf(thread),
    unit: 'mm',
    formula: 'd − 5/4 · √3/2 · P',
    entries: nominalEntries(thread),
    source: basicSizes(thread),
    standing: 'published',
  };
}

const nominalEntries = (thread: Thread): Derived['entries'] => [
  entry('d', thread.nominalDiameter, 'mm'),
  entry('P', thread.pitch, 'mm'),
];
