import { carefulEntry, type Derived, entry, entryBy, rangeOfCareful } from '../sources/derived.ts';
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
 *     θ = min[(Ts − T)/(Ts − 23), remembered ratio at T]        1 at 23 °C or below
 *
 * Ts is the softening temperature; the lower of both estimates counts. Where little is known of Ts or of the ratios,
 * their low ends count, and θ shows what the other ends give. The door refuses T > Ts − 10 K, so θ stays above 0.
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
  const left = taken('low', (end) => strengthShareAt(material, T, end));
  const common = {
    symbol: 'θ',
    value: left.value,
    unit: '-',
    source: 'own-model',
    standing: 'estimate',
  } as const;
  const temperature = entry('T', T, '°C');
  if (T <= REFERENCE_TEMPERATURE)
    return { ...common, formula: '1, at 23 °C or below', entries: [temperature] };
  const softening = taken('low', (end) => temperatureAt(material.softening, end));
  const remembered = rememberedStrengthAt(material.strengthRatios, T, 'low');
  return {
    ...common,
    formula: 'min((T_s − T)/(T_s − 23 °C), r_T)',
    entries: [
      carefulEntry('T_s', softening, '°C'),
      temperature,
      entryBy('r_T', remembered, '-', (steps) => steps.rememberedStrength(material.strengthRatios, T)),
    ],
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
  if (serviceTemperature <= REFERENCE_TEMPERATURE) return 1;
  const softening = temperatureAt(material.softening, end);
  const line = (softening - serviceTemperature) / (softening - REFERENCE_TEMPERATURE);
  return Math.min(line, rememberedStrengthAt(material.strengthRatios, serviceTemperature, end));
}

/** Shares of the 23 °C strength that are left at ascending temperatures. */
export type RememberedRatios = PrintedMaterial['strengthRatios'];

/**
 * The rows on both sides of a temperature; none before the first one, where 23 °C stands, nor behind the last one.
 *
 * @param ratios - remembered strength ratios [-] at ascending temperatures [°C]
 * @param temperature - T [°C], > 23
 * @returns the next cooler and the next warmer row [-]
 */
export function neighboursOf(ratios: RememberedRatios, temperature: number) {
  const next = ratios.findIndex((row) => temperature <= row.temperature);
  return next === -1
    ? { cooler: ratios.at(-1), warmer: undefined }
    : { cooler: ratios[next - 1], warmer: ratios[next] };
}

/**
 * Share of the 23 °C strength that is left as remembered, as a plain number: its rows joined by straight lines.
 *
 * @param ratios - remembered strength ratios [-] at ascending temperatures [°C]
 * @param temperature - T [°C], > 23
 * @param end - where the ratios are taken within what is known of them
 * @returns r [-], 0 … 1
 * @source printed-materials remembered ratios
 */
export function rememberedStrengthAt(ratios: RememberedRatios, temperature: number, end: End): number {
  const { cooler, warmer } = neighboursOf(ratios, temperature);
  const from = cooler
    ? { temperature: cooler.temperature, ratio: shareAt(cooler.ratio, end) }
    : { temperature: REFERENCE_TEMPERATURE, ratio: 1 };
  if (warmer === undefined) return from.ratio;
  const way = (temperature - from.temperature) / (warmer.temperature - from.temperature);
  return from.ratio + way * (shareAt(warmer.ratio, end) - from.ratio);
}
