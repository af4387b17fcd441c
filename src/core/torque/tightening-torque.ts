import type { Thread } from '../screws/thread.ts';
import { pitchDiameter, pitchDiameterOf } from '../screws/thread-geometry.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';

/** cos of half the thread angle, 30°, [-]. */
const COS_FLANK = Math.cos(Math.PI / 6);

/** What a torque turns against: the thread and the face under the head. */
export interface ScrewFriction {
  readonly thread: Thread;
  /** μG in the thread, [-]. */
  readonly threadFriction: number;
  /** μK under the head, [-]. */
  readonly headFriction: number;
  /** DKm, mm: diameter at which the friction under the head acts. */
  readonly bearingDiameter: number;
  /** The same with its way, where it was computed. */
  readonly bearing?: Derived;
}

/**
 * Torque in the thread for one newton of clamp force: pitch and thread friction.
 *
 *     MG/F = P/(2π) + μG · d2/(2 · cos 30°)
 *
 * @param thread - nominal diameter d [mm] and pitch P [mm], 0 < P ≤ d/2
 * @param threadFriction - μG [-], ≥ 0
 * @returns MG/F [mm], that is N·mm per N
 * @source vdi-2230 tightening torque, thread part
 * @source iso-16047 thread torque
 */
export const threadTorquePerForce = (thread: Thread, threadFriction: number): number =>
  thread.pitch / (2 * Math.PI) + (threadFriction * pitchDiameterOf(thread)) / (2 * COS_FLANK);

/**
 * Friction torque under the head for one newton of clamp force.
 *
 *     MK/F = μK · DKm/2
 *
 * @param bearingDiameter - DKm [mm], > 0
 * @param headFriction - μK [-], ≥ 0
 * @returns MK/F [mm], that is N·mm per N
 * @source vdi-2230 tightening torque, head part
 * @source iso-16047 bearing-surface friction torque
 */
export const headTorquePerForce = (bearingDiameter: number, headFriction: number): number =>
  (headFriction * bearingDiameter) / 2;

/**
 * Torque on the screw for one newton of clamp force.
 *
 *     MA/F = P/(2π) + μG · d2/(2 · cos 30°) + μK · DKm/2
 *
 * @param friction - thread [mm], μG and μK [-], ≥ 0, DKm [mm], > 0
 * @returns MA/F [mm], that is N·mm per N
 * @source vdi-2230 tightening torque
 * @source iso-16047 tightening torque
 */
export const torquePerForce = (friction: ScrewFriction): number =>
  threadTorquePerForce(friction.thread, friction.threadFriction) +
  headTorquePerForce(friction.bearingDiameter, friction.headFriction);

/**
 * Tightening torque that gives a clamp force.
 *
 *     MA = F · [P/(2π) + μG · d2/(2 · cos 30°) + μK · DKm/2]
 *
 * Small-angle form; a prevailing torque of a locking thread is not in it.
 *
 * @param tightening - clamp force F [N], ≥ 0; thread [mm], μG and μK [-], ≥ 0, DKm [mm], > 0
 * @returns MA [N·mm]
 * @source vdi-2230 tightening torque
 * @source iso-16047 tightening torque
 * @example M8 × 1, F 20 748 N, both frictions 0.10, DKm 10.315 mm gives 22.8 N·m
 */
export function tighteningTorque(tightening: ScrewFriction & { readonly force: number }): Derived {
  return {
    symbol: 'M_A',
    value: tightening.force * torquePerForce(tightening),
    unit: 'N·mm',
    formula: 'F · (P/(2π) + μ_G · d_2/(2 · cos 30°) + μ_K · D_Km/2)',
    entries: [entry('F', tightening.force, 'N'), ...frictionEntries(tightening)],
    source: 'vdi-2230',
    standing: 'published',
  };
}

/**
 * Clamp force that a tightening torque gives.
 *
 *     F = MA/[P/(2π) + μG · d2/(2 · cos 30°) + μK · DKm/2]
 *
 * @param tightening - torque MA [N·mm], ≥ 0; thread [mm], μG and μK [-], ≥ 0, DKm [mm], > 0
 * @returns F [N]
 * @source vdi-2230 tightening torque, solved for the force
 * @source iso-16047 tightening torque
 */
export function clampForce(tightening: ScrewFriction & { readonly torque: number }): Derived {
  return {
    symbol: 'F',
    value: tightening.torque / torquePerForce(tightening),
    unit: 'N',
    formula: 'M_A/(P/(2π) + μ_G · d_2/(2 · cos 30°) + μ_K · D_Km/2)',
    entries: [entry('M_A', tightening.torque, 'N·mm'), ...frictionEntries(tightening)],
    source: 'vdi-2230',
    standing: 'published',
  };
}

/**
 * Torque for each newton of clamp force.
 *
 *     k = P/(2π) + μG · d2/(2 · cos 30°) + μK · DKm/2
 *
 * @param symbol - k_low or k_high, by the end of friction
 * @param friction - thread, μG, μK [-], DKm [mm]
 * @returns k [mm]
 * @source vdi-2230 tightening torque
 */
export const torqueForEachNewton = (symbol: string, friction: ScrewFriction): Derived => ({
  symbol,
  value: torquePerForce(friction),
  unit: 'mm',
  formula: 'P/(2π) + μ_G · d_2/(2 · cos 30°) + μ_K · D_Km/2',
  entries: frictionEntries(friction),
  source: 'vdi-2230',
  standing: 'published',
});

/**
 * Share of the tightening torque that the thread passes on to the insert.
 *
 *     a = [P/(2π) + μG · d2/(2 · cos 30°)]/[P/(2π) + μG · d2/(2 · cos 30°) + μK · DKm/2]
 *
 * @param friction - thread, μG, μK [-], DKm [mm]
 * @returns a [-]
 * @source vdi-2230 tightening torque
 */
export const threadShareOfTorque = (friction: ScrewFriction): Derived => ({
  symbol: 'a',
  value: threadTorquePerForce(friction.thread, friction.threadFriction) / torquePerForce(friction),
  unit: '-',
  formula: '(P/(2π) + μ_G · d_2/(2 · cos 30°))/(P/(2π) + μ_G · d_2/(2 · cos 30°) + μ_K · D_Km/2)',
  entries: frictionEntries(friction),
  source: 'vdi-2230',
  standing: 'published',
});

const frictionEntries = (friction: ScrewFriction): Derived['entries'] => [
  entry('P', friction.thread.pitch, 'mm'),
  entryFrom(pitchDiameter(friction.thread)),
  entry('μ_G', friction.threadFriction, '-'),
  entry('μ_K', friction.headFriction, '-'),
  friction.bearing === undefined
    ? entry('D_Km', friction.bearingDiameter, 'mm')
    : entryFrom(friction.bearing),
];
