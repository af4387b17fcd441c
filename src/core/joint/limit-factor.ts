import { type Derived, entryFrom } from '../sources/derived.ts';
import type { Limit } from './assessment.ts';

/**
 * What a mode bears over what loads it, with the way to it; its plain number is the factor of limitsOf.
 *
 *     ψ1 = R_k/demand
 *
 * The factor that limits are divided by is not in it: a margin has it, see marginsOf.
 *
 * @param limit - characteristic capacity R_k and demand [N or N·mm]
 * @returns ψ1 [-]; undefined where nothing loads the mode
 * @source own-model capacity over demand
 */
export function limitFactor({ capacity, demand, factor }: Limit): Derived | undefined {
  const { characteristic } = capacity;
  return factor === undefined
    ? undefined
    : {
        symbol: 'ψ_1',
        value: factor,
        unit: '-',
        formula: `${characteristic.symbol}/${demand.symbol}`,
        entries: [entryFrom(characteristic), entryFrom(demand)],
        source: 'own-model',
        standing: 'estimate',
      };
}
