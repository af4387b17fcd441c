import { type Derived, entry, entryFrom } from '../sources/derived.ts';

/** What gives under the clamp force of one joint. */
export interface ClampLoop {
  /** Cb, mm/N: screw and whatever else in the loop does not creep, > 0. */
  readonly elasticCompliance: number;
  /** Cp, mm/N: plastic in the loop at short time; 0 where none is. */
  readonly plasticCompliance: number;
}

/**
 * Residual preload ratio as a plain number.
 * @param loop - Cb [mm/N], > 0, and Cp [mm/N], ≥ 0
 * @param creepFactor - φ [-], ≥ 1
 * @returns F(t)/F0 [-], above 0, at most 1
 * @source findley-iso-899 power law of creep
 * @source own-model constant length of the loop
 */
export function residualPreloadRatioOf(loop: ClampLoop, creepFactor: number): number {
  const { elasticCompliance: Cb, plasticCompliance: Cp } = loop;
  return (Cb + Cp) / (Cb + Cp * creepFactor);
}

/**
 * Share of the preload that is left when the plastic in the clamp loop has crept.
 *
 *     F(t)/F0 = (Cb + Cp)/(Cb + Cp·φ(t))
 *     φ(t)    = 1 + m·tⁿ
 *
 * The stretch of the screw and the squeeze of the parts stay the same in sum while the plastic grows more compliant.
 * A loop of metal alone keeps all of it. Quasi-elastic: the law of creep at constant load serves at falling load, which
 * makes the loss a little too great. Settling of rough faces and a change of temperature are not in it.
 *
 * @param loop - compliances of what does not creep Cb [mm/N], > 0, and of the plastic Cp [mm/N], ≥ 0
 * @param creepFactor - φ [-], ≥ 1, as derived from the law of creep
 * @returns F(t)/F0 [-], above 0, at most 1
 * @source own-model constant length of the loop
 * @source findley-iso-899 power law of creep
 * @example as much give in the plastic as in the screw, φ 1.5, leaves 0.8
 */
export function residualPreloadRatio(loop: ClampLoop, creepFactor: Derived): Derived {
  return {
    symbol: 'F(t)/F_0',
    value: residualPreloadRatioOf(loop, creepFactor.value),
    unit: '-',
    formula: '(1 + C_p/C_b)/(1 + C_p/C_b · φ)',
    entries: [entry('C_p/C_b', loop.plasticCompliance / loop.elasticCompliance, '-'), entryFrom(creepFactor)],
    source: 'own-model',
    standing: 'estimate',
  };
}
