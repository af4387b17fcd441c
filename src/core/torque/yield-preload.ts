import { stressAreaOf, stressDiameter, stressDiameterOf, tensileStressArea } from '../screws/stress-area.ts';
import type { Thread } from '../screws/thread.ts';
import { pitchDiameter, pitchDiameterOf } from '../screws/thread-geometry.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';

/** cos of half the thread angle, 30°, [-]. */
const COS_FLANK = Math.cos(Math.PI / 6);

/** A screw while it is tightened. */
export interface TightenedScrew {
  readonly thread: Thread;
  /** Rp, MPa. */
  readonly yieldStrength: number;
  /** μG in the thread, [-]. */
  readonly threadFriction: number;
  /** ν, [-]: 1 is yield itself, 0.9 the usual limit of VDI 2230. */
  readonly utilisation: number;
}

/**
 * Equivalent stress over tensile stress while a screw is tightened, [-].
 * @param thread - nominal diameter d [mm] and pitch P [mm], 0 < P ≤ d/2
 * @param threadFriction - μG [-], ≥ 0
 * @returns σred/σ [-], ≥ 1
 * @source vdi-2230 permissible assembly preload
 */
export function torsionFactor(thread: Thread, threadFriction: number): number {
  const d2 = pitchDiameterOf(thread);
  const d0 = stressDiameterOf(thread);
  const lead = thread.pitch / (Math.PI * d2) + threadFriction / COS_FLANK;
  return Math.sqrt(1 + 3 * (1.5 * (d2 / d0) * lead) ** 2);
}

/**
 * Preload as a plain number.
 * @param screw - thread [mm], yield strength Rp [MPa], μG [-], ν [-]
 * @returns FM [N]
 * @source vdi-2230 permissible assembly preload
 */
export const yieldPreloadOf = (screw: TightenedScrew): number =>
  (screw.utilisation * stressAreaOf(screw.thread) * screw.yieldStrength) /
  torsionFactor(screw.thread, screw.threadFriction);

/**
 * Preload at which tension and the torsion of tightening together use up the share ν of the yield strength.
 *
 *     FM = ν · As · Rp/√{1 + 3 · [3/2 · (d2/d0) · (P/(π · d2) + μG/cos 30°)]²}
 *     d0 = diameter of the stress area; metric (d2 + d3)/2
 *
 * Equivalent stress after von Mises, torsion with the plastic section modulus π/12 · d0³. The guideline prints
 * 1.155 for 1/cos 30°.
 *
 * @param screw - thread [mm]; yield strength Rp [MPa], > 0; thread friction μG [-], ≥ 0; utilisation ν [-], 0 < ν ≤ 1
 * @returns FM [N]
 * @source vdi-2230 permissible assembly preload
 * @source von-mises combination of tension and torsion
 * @example M8 × 1, Rp 640 MPa, μG 0.12, ν 0.9 gives 20.2 kN
 */
export function yieldPreload(screw: TightenedScrew): Derived {
  return {
    symbol: 'F_M',
    value: yieldPreloadOf(screw),
    unit: 'N',
    formula: 'ν · A_s · R_p/√(1 + 3 · (3/2 · d_2/d_0 · (P/(π · d_2) + μ_G/cos 30°))²)',
    entries: [
      entry('ν', screw.utilisation, '-'),
      entryFrom(tensileStressArea(screw.thread)),
      entry('R_p', screw.yieldStrength, 'MPa'),
      entryFrom(pitchDiameter(screw.thread)),
      entryFrom(stressDiameter(screw.thread)),
      entry('P', screw.thread.pitch, 'mm'),
      entry('μ_G', screw.threadFriction, '-'),
    ],
    source: 'vdi-2230',
    standing: 'published',
  };
}
