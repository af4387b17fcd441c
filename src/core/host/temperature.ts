import { carefulEntry, type Derived, entry, rangeOfCareful } from '../sources/derived.ts';
import { type End, shareAt, taken, temperatureAt } from './little-known.ts';
import type { PrintedMaterial } from './material.ts';

/** Temperature at which the tabulated strengths hold, °C. */
export const REFERENCE_TEMPERATURE = 23;
/** Nearer to softening than this the answer is no, K. */
export const SOFTENING_MARGIN = 10;

/**
 * Warmest service that is still answered for a material.
 *
 *     Ts − 10 K
 *
 * @param material - softening temperature Ts [°C]
 * @param end - where Ts is taken within what is known of it; at its low end, the careful one, unless asked otherwise
 * @returns T [°C]
 * @source own-model nearer to softening nothing is answered
 */
export const greatestServiceTemperature = (material: PrintedMaterial, end: End = 'low'): number =>
  temperatureAt(material.softening, end) - SOFTENING_MARGIN;

/**
 * Share of the 23 °C strength that is left at service temperature.
 *
 *     θ = min[(Ts − T)/(Ts − 23), remembered ratio at T],  θ ≤ 1
 *
 * Ts is the softening temperature. The remembered ratios are joined by straight lines and held beyond the last; the
 * lower of both estimates counts. Below 23 °C nothing is gained. Where little is known of Ts or of the ratios, their
 * low ends count, and θ shows what the other ends give. The door refuses T > Ts − 10 K, so θ stays above 0.
 *
 * @param material - softening temperature Ts [°C] and remembered strength ratios [-]
 * @param serviceTemperature - T [°C], ≤ Ts − 10 K
 * @returns θ [-], 0 < θ ≤ 1
 * @source own-model straight line to softening
 * @source printed-materials remembered ratios
 * @example PETG softening at 80 °C, 45 °C gives 0.614
 */
export function strengthLeft(material: PrintedMaterial, serviceTemperature: number): Derived {
  const T = serviceTemperature;
  const softening = taken('low', (end) => temperatureAt(material.softening, end));
  const remembered = taken('low', (end) => rememberedRatio(material.strengthRatios, T, end));
  const left = taken('low', (end) => strengthShareAt(material, T, end));
  return {
    symbol: 'θ',
    value: left.value,
    unit: '-',
    formula: 'min(1, (T_s − T)/(T_s − 23 °C), r_T)',
    entries: [
      carefulEntry('T_s', softening, '°C'),
      entry('T', T, '°C'),
      carefulEntry('r_T', remembered, '-'),
    ],
    source: 'own-model',
    standing: 'estimate',
    ...rangeOfCareful(left.ends),
  };
}

/**
 * Share of the 23 °C strength that is left, as a plain number; see strengthLeft.
 * @param material - softening temperature Ts [°C] and remembered strength ratios [-]
 * @param serviceTemperature - T [°C], ≤ Ts − 10 K at the low end of Ts
 * @param end - where Ts and the ratios are taken within what is known of them
 * @returns θ [-], 0 < θ ≤ 1
 * @source own-model straight line to softening
 */
export function strengthShareAt(material: PrintedMaterial, serviceTemperature: number, end: End): number {
  const softening = temperatureAt(material.softening, end);
  const line = (softening - serviceTemperature) / (softening - REFERENCE_TEMPERATURE);
  return Math.min(1, line, rememberedRatio(material.strengthRatios, serviceTemperature, end));
}

function rememberedRatio(ratios: PrintedMaterial['strengthRatios'], temperature: number, end: End): number {
  let left = { temperature: REFERENCE_TEMPERATURE, ratio: 1 };
  if (temperature <= left.temperature) return 1;
  for (const row of ratios) {
    const right = { temperature: row.temperature, ratio: shareAt(row.ratio, end) };
    if (temperature <= right.temperature) {
      const share = (temperature - left.temperature) / (right.temperature - left.temperature);
      return left.ratio + share * (right.ratio - left.ratio);
    }
    left = right;
  }
  return left.ratio;
}
