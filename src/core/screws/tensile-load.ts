import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { PropertyClass } from './screw.ts';
import { tensileStressArea } from './stress-area.ts';
import type { Thread } from './thread.ts';

/** A property class whose standard gives a proof stress. */
export type ProofTestedClass = PropertyClass & { readonly proofStress: number };

/**
 * Smallest force at which the screw may break in pure tension.
 *
 *     Fm = As · Rm
 *
 * The tables of the standard multiply the rounded area and round again: up to 0.6 % off this.
 *
 * @param screw - thread, nominal diameter and pitch [mm]; class with tensile strength Rm [MPa]
 * @returns Fm [N]
 * @source iso-898-1 minimum ultimate tensile load
 * @source iso-3506-1 tensile strength of stainless classes
 * @example M3, 8.8 gives 4025 N; the table prints 4020 N
 */
export function ultimateTensileLoad(screw: {
  readonly thread: Thread;
  readonly propertyClass: PropertyClass;
}): Derived {
  const area = tensileStressArea(screw.thread);
  const Rm = screw.propertyClass.tensileStrengthMin;
  return {
    symbol: 'F_m',
    value: area.value * Rm,
    unit: 'N',
    formula: 'A_s · R_m',
    entries: [entryFrom(area), entry('R_m', Rm, 'MPa')],
    source: screw.propertyClass.source,
    standing: 'published',
  };
}

/**
 * Force that the screw must bear without lasting elongation.
 *
 *     Fp = As · Sp
 *
 * @param screw - thread, nominal diameter and pitch [mm]; class with proof stress Sp [MPa]
 * @returns Fp [N]
 * @source iso-898-1 proof load
 * @example M4, 8.8 gives 5092 N; the table prints 5100 N
 */
export function proofLoad(screw: {
  readonly thread: Thread;
  readonly propertyClass: ProofTestedClass;
}): Derived {
  const area = tensileStressArea(screw.thread);
  const Sp = screw.propertyClass.proofStress;
  return {
    symbol: 'F_p',
    value: area.value * Sp,
    unit: 'N',
    formula: 'A_s · S_p',
    entries: [entryFrom(area), entry('S_p', Sp, 'MPa')],
    source: screw.propertyClass.source,
    standing: 'published',
  };
}
