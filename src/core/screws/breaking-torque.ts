import { type Derived, entry } from '../sources/derived.ts';
import type { PropertyClass } from './screw.ts';
import type { Thread } from './thread.ts';

/** Shear strength over tensile strength X of ISO 898-7, [-], by property class. */
const SHEAR_RATIO = { '8.8': 0.84, '9.8': 0.815, '10.9': 0.79, '12.9': 0.75 } as const;

/** A property class that ISO 898-7 covers. */
export type TorsionTestedClass = PropertyClass & { readonly designation: keyof typeof SHEAR_RATIO };

/**
 * Whether ISO 898-7 gives a breaking torque for the class; it does for 8.8 to 12.9 and for no other.
 * @param propertyClass - the screw's class, strengths [MPa]
 * @source iso-898-7 scope
 */
export const isTorsionTested = (propertyClass: PropertyClass): propertyClass is TorsionTestedClass =>
  Object.hasOwn(SHEAR_RATIO, propertyClass.designation);

/**
 * Smallest torque at which a screw may break in the torsional test, from strength and root diameter.
 *
 *     MB  = τB · Wp
 *     Wp  = π/16 · d3min³
 *     τB  = X · Rm
 *
 * A torsional test value without head and thread friction, never a tightening torque. The standard's own table
 * rounds it to two digits. Valid for M1 to M10, tolerance 6g.
 *
 * @param screw - thread with its smallest root diameter d3min [mm]; class with tensile strength Rm [MPa]
 * @returns MB [N·mm]
 * @source iso-898-7 minimum breaking torque
 * @example M3, 8.8 gives 1547 N·mm; the table prints 1.5 N·m
 */
export function minimumBreakingTorque(screw: {
  readonly thread: Thread;
  readonly propertyClass: TorsionTestedClass;
}): Derived {
  const X = SHEAR_RATIO[screw.propertyClass.designation];
  const Rm = screw.propertyClass.tensileStrengthMin;
  const d3min = screw.thread.limits.externalMinorMin;
  return {
    symbol: 'M_B',
    value: X * Rm * (Math.PI / 16) * d3min ** 3,
    unit: 'N·mm',
    formula: 'X · R_m · π/16 · d_3min³',
    entries: [entry('X', X, '-'), entry('R_m', Rm, 'MPa'), entry('d_3min', d3min, 'mm')],
    source: 'iso-898-7',
    standing: 'published',
  };
}

/**
 * Torque that no screw of a class needs to bear, where ISO 898-7 says nothing of it: shear strength taken as high as the
 * tensile one.
 *
 *     MB = Rm · Wp        Wp = π/16 · d3min³
 *
 * To tell a slip of the pen from a reading; never a tightening torque. The tension of a screw that is tightened at the
 * same time is not in it.
 *
 * @param screw - thread with its smallest root diameter d3min [mm]; class with tensile strength Rm [MPa]
 * @returns MB [N·mm]
 * @source own-model shear strength as high as tensile strength
 * @example M3, A2-70 gives 1612 N·mm
 */
export const breakingTorqueAtTensileStrength = (screw: {
  readonly thread: Thread;
  readonly propertyClass: PropertyClass;
}): number =>
  screw.propertyClass.tensileStrengthMin * (Math.PI / 16) * screw.thread.limits.externalMinorMin ** 3;
