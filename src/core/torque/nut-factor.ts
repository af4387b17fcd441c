import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { type ScrewFriction, torqueForEachNewton } from './tightening-torque.ts';

/**
 * Nut factor that stands for pitch and both frictions in T = K · F · d.
 *
 *     K = [P/(2π) + μG · d2/(2 · cos 30°) + μK · DKm/2]/d
 *
 * @param friction - thread [mm], μG and μK [-], ≥ 0, DKm [mm], > 0
 * @returns K [-]
 * @source vdi-2230 tightening torque
 * @source shigley ch. 8, torque coefficient
 * @example M3, both frictions 0.14, DKm 4.235 mm gives 0.197
 */
export function nutFactor(friction: ScrewFriction): Derived {
  const perForce = torqueForEachNewton('M_A/F', friction);
  const d = friction.thread.nominalDiameter;
  return {
    symbol: 'K',
    value: perForce.value / d,
    unit: '-',
    formula: '(M_A/F)/d',
    entries: [entryFrom(perForce), entry('d', d, 'mm')],
    source: 'vdi-2230',
    standing: 'published',
  };
}

/**
 * Tightening torque by a nut factor, where only that is known.
 *
 *     T = K · F · d
 *
 * @param tightening - nut factor K [-], > 0; clamp force F [N], ≥ 0; nominal diameter d [mm]
 * @returns T [N·mm]
 * @source shigley ch. 8, torque coefficient
 */
export function tighteningTorqueByNutFactor(tightening: {
  readonly nutFactor: number;
  readonly force: number;
  readonly nominalDiameter: number;
}): Derived {
  const { nutFactor: K, force: F, nominalDiameter: d } = tightening;
  return {
    symbol: 'T',
    value: K * F * d,
    unit: 'N·mm',
    formula: 'K · F · d',
    entries: [entry('K', K, '-'), entry('F', F, 'N'), entry('d', d, 'mm')],
    source: 'shigley',
    standing: 'published',
  };
}
