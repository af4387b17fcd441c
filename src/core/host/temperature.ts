import { type Derived, entry } from '../sources/derived.ts';
import type { PrintedMaterial } from './material.ts';

/** Temperature at which the tabulated strengths hold, °C. */
export const REFERENCE_TEMPERATURE = 23;
/** Nearer to softening than this the answer is no, K. */
export const SOFTENING_MARGIN = 10;

/** Warmest service that is still answered for a material, °C. */
export const greatestServiceTemperature = (material: PrintedMaterial): number =>
  material.softening.value - SOFTENING_MARGIN;

/**
 * Share of the 23 °C strength that is left at service temperature.
 *
 *     θ = min[(Ts − T)/(Ts − 23), remembered ratio at T],  θ ≤ 1
 *
 * Ts is the softening temperature. The remembered ratios are joined by straight lines and held beyond the last; the
 * lower of both estimates counts. Below 23 °C nothing is gained. The door refuses T > Ts − 10 K, so θ stays above 0.
 *
 * @param material - softening temperature Ts [°C] and remembered strength ratios [-]
 * @param serviceTemperature - T [°C], ≤ Ts − 10 K
 * @returns θ [-], 0 < θ ≤ 1
 * @source own-model straight line to softening
 * @source printed-materials remembered ratios
 * @example PETG softening at 80 °C, 45 °C gives 0.614
 */
export function strengthLeft(material: PrintedMaterial, serviceTemperature: number): Derived {
  const softening = material.softening.value;
  const line = (softening - serviceTemperature) / (softening - REFERENCE_TEMPERATURE);
  const remembered = rememberedRatio(material.strengthRatios, serviceTemperature);
  return {
    symbol: 'θ',
    value: Math.min(1, line, remembered),
    unit: '-',
    formula: 'min(1, (T_s − T)/(T_s − 23 °C), r_T)',
    entries: [
      entry('T_s', softening, '°C'),
      entry('T', serviceTemperature, '°C'),
      entry('r_T', remembered, '-'),
    ],
    source: 'own-model',
    standing: 'estimate',
  };
}

function rememberedRatio(ratios: PrintedMaterial['strengthRatios'], temperature: number): number {
  let left = { temperature: REFERENCE_TEMPERATURE, ratio: 1 };
  if (temperature <= left.temperature) return 1;
  for (const row of ratios) {
    const right = { temperature: row.temperature, ratio: row.ratio.value };
    if (temperature <= right.temperature) {
      const share = (temperature - left.temperature) / (right.temperature - left.temperature);
      return left.ratio + share * (right.ratio - left.ratio);
    }
    left = right;
  }
  return left.ratio;
}
