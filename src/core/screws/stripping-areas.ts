import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { tensileStressArea } from './stress-area.ts';
import type { Thread } from './thread.ts';

/**
 * Shear area of the screw's thread over the length of engagement, as a plain number.
 * @param thread - pitch P [mm] and limits D1max, d2min [mm]
 * @param engagement - LE [mm], > 0
 * @returns ASs [mm²]
 * @source fed-std-h28-2 shear areas
 */
export function screwStrippingAreaOf(thread: Thread, engagement: number): number {
  const { externalPitchMin: d2min, internalMinorMax: D1max } = thread.limits;
  return (
    ((Math.PI * engagement) / thread.pitch) * D1max * (thread.pitch / 2 + (d2min - D1max) / Math.sqrt(3))
  );
}

/**
 * Shear area of the insert's thread over the length of engagement, as a plain number.
 * @param thread - pitch P [mm] and limits dmin, D2max [mm]
 * @param engagement - LE [mm], > 0
 * @returns ASn [mm²]
 * @source fed-std-h28-2 shear areas
 */
export function insertStrippingAreaOf(thread: Thread, engagement: number): number {
  const { externalMajorMin: dmin, internalPitchMax: D2max } = thread.limits;
  return ((Math.PI * engagement) / thread.pitch) * dmin * (thread.pitch / 2 + (dmin - D2max) / Math.sqrt(3));
}

/**
 * Area that shears when the screw's thread strips: the cylinder at the insert's minor diameter, at the limits
 * of the tolerance that leave least.
 *
 *     ASs = π · (LE/P) · D1max · [P/2 + (d2min − D1max)/√3]
 *
 * Not in it: run-out of the thread and uneven share between the turns.
 *
 * @param thread - pitch P [mm], largest internal minor diameter D1max [mm], smallest screw pitch diameter d2min [mm]
 * @param engagement - length of full thread in engagement LE [mm], > 0
 * @returns ASs [mm²], the area that the screw's shear strength is multiplied by
 * @source fed-std-h28-2 shear area of external threads
 * @source bickford strip-area table, reproduced within 0.01 %
 * @example M5, LE 5 mm gives 35.37 mm²
 */
export function screwStrippingArea(thread: Thread, engagement: Derived): Derived {
  return {
    symbol: 'A_Ss',
    value: screwStrippingAreaOf(thread, engagement.value),
    unit: 'mm²',
    formula: 'π · (L_E/P) · D_1max · (P/2 + (d_2min − D_1max)/√3)',
    entries: [
      entryFrom(engagement),
      entry('P', thread.pitch, 'mm'),
      entry('D_1max', thread.limits.internalMinorMax, 'mm'),
      entry('d_2min', thread.limits.externalPitchMin, 'mm'),
    ],
    source: 'fed-std-h28-2',
    standing: 'published',
  };
}

/**
 * Area that shears when the insert's thread strips: the cylinder at the screw's major diameter, at the limits
 * of the tolerance that leave least.
 *
 *     ASn = π · (LE/P) · dmin · [P/2 + (dmin − D2max)/√3]
 *
 * Not in it: run-out of the thread and uneven share between the turns.
 *
 * @param thread - pitch P [mm], smallest screw major diameter dmin [mm], largest internal pitch diameter D2max [mm]
 * @param engagement - length of full thread in engagement LE [mm], > 0
 * @returns ASn [mm²], the area that the insert's shear strength is multiplied by
 * @source fed-std-h28-2 shear area of internal threads
 * @source bickford strip-area table, reproduced within 0.01 %
 * @example M6, LE 6 mm gives 73.15 mm²
 */
export function insertStrippingArea(thread: Thread, engagement: Derived): Derived {
  return {
    symbol: 'A_Sn',
    value: insertStrippingAreaOf(thread, engagement.value),
    unit: 'mm²',
    formula: 'π · (L_E/P) · d_min · (P/2 + (d_min − D_2max)/√3)',
    entries: [
      entryFrom(engagement),
      entry('P', thread.pitch, 'mm'),
      entry('d_min', thread.limits.externalMajorMin, 'mm'),
      entry('D_2max', thread.limits.internalPitchMax, 'mm'),
    ],
    source: 'fed-std-h28-2',
    standing: 'published',
  };
}

/** A thread and the tensile strengths of the two metals that meet in it, MPa. */
export interface ThreadPair {
  readonly thread: Thread;
  readonly screwTensileStrength: number;
  readonly insertTensileStrength: number;
}

/**
 * Length of engagement at which the thread strips at the force that breaks the screw.
 *
 *     Le = 2 · As/(π · D1max · [1/2 + (d2min − D1max)/(√3 · P)]) · max(1, J)
 *     J  = (ASs · Rm,screw)/(ASn · Rm,insert)
 *
 * The 2 takes shear strength as half of tensile strength. J > 1 means that the insert's thread is the weaker one.
 *
 * @param pair - thread with its limits [mm]; tensile strengths Rm of screw and insert [MPa], > 0
 * @returns Le [mm]
 * @source machinery-handbook 24th ed., length of engagement and J
 * @source fed-std-h28-2 length of engagement for equal strength
 * @example M6, strengths that leave J below 1, gives 4.66 mm
 */
export function engagementForEqualStrength(pair: ThreadPair): Derived {
  const { thread, screwTensileStrength, insertTensileStrength } = pair;
  const area = tensileStressArea(thread);
  const screw = areaForEachMillimetre('A_Ss/L_E', screwStrippingArea, thread);
  const insert = areaForEachMillimetre('A_Sn/L_E', insertStrippingArea, thread);
  const ratio: Derived = {
    symbol: 'J',
    value: (screw.value * screwTensileStrength) / (insert.value * insertTensileStrength),
    unit: '-',
    formula: 'A_Ss/L_E · R_m/(A_Sn/L_E · R_i)',
    entries: [
      entryFrom(screw),
      entry('R_m', screwTensileStrength, 'MPa'),
      entryFrom(insert),
      entry('R_i', insertTensileStrength, 'MPa'),
    ],
    source: 'machinery-handbook',
    standing: 'published',
  };
  return {
    symbol: 'L_e',
    value: ((2 * area.value) / screw.value) * Math.max(1, ratio.value),
    unit: 'mm',
    formula: '2 · A_s/(A_Ss/L_E) · max(1, J)',
    entries: [entryFrom(area), entryFrom(screw), entryFrom(ratio)],
    source: 'machinery-handbook',
    standing: 'published',
  };
}

const ONE_MILLIMETRE: Derived = {
  symbol: 'L_E',
  value: 1,
  unit: 'mm',
  formula: '1 mm',
  entries: [],
  source: 'machinery-handbook',
  standing: 'published',
};

const areaForEachMillimetre = (
  symbol: string,
  areaOf: (thread: Thread, engagement: Derived) => Derived,
  thread: Thread,
): Derived => {
  const area = areaOf(thread, ONE_MILLIMETRE);
  return {
    ...area,
    symbol,
    unit: 'mm',
    formula: `${area.symbol}/L_E`,
    entries: [entryFrom(area), entryFrom(ONE_MILLIMETRE)],
  };
};
