import { stressAreaOf } from '../screws/stress-area.ts';
import type { Joint } from './joint.ts';

/** Modulus of the screw, MPa. */
export const STEEL_MODULUS = 205_000;

/**
 * Compliance of the stretched screw.
 *
 *     Cb = (g + LE/2)/(E · As)
 *
 * Thread over the whole length; half of the engagement stretches with it.
 *
 * @param joint - thread of the screw [mm]
 * @param engagement - thread that carries LE [mm]
 * @param grip - stretched length g [mm]
 * @returns Cb [mm/N]; its steps: screwCompliance
 * @source shigley ch. 8, bolt stiffness
 */
export const screwComplianceOf = ({ screw }: Joint, engagement: number, grip: number): number =>
  (grip + engagement / 2) / (STEEL_MODULUS * stressAreaOf(screw.thread));
