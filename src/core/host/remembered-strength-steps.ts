import { carefulEntry, type Derived, type Entry, entry, rangeOfCareful } from '../sources/derived.ts';
import { sharesOf, taken } from './little-known.ts';
import { neighboursOf, type RememberedRatios, rememberedStrengthAt } from './temperature.ts';

/**
 * Share of the 23 °C strength that is left as remembered, its rows at their low ends.
 *
 *     r = ra + (rb − ra) · (T − Ta)/(Tb − Ta)        1 at 23 °C, held beyond the last row
 *
 * @param ratios - remembered strength ratios [-] at ascending temperatures [°C], at least one
 * @param temperature - T [°C], > 23
 * @returns r [-], 0 … 1
 * @source printed-materials remembered ratios
 * @example PLA at 45 °C, its 0.75 at 40 °C and 0.45 at 50 °C little known, gives 0.445
 */
export function rememberedStrength(ratios: RememberedRatios, temperature: number): Derived {
  const { cooler, warmer } = neighboursOf(ratios, temperature);
  const { value, ends } = taken('low', (end) => rememberedStrengthAt(ratios, temperature, end));
  const place = warmer === undefined ? [] : [entry('T', temperature, '°C'), ...rowEntries('b', warmer)];
  return {
    symbol: 'r_T',
    value,
    unit: '-',
    formula:
      warmer === undefined
        ? 'r_a, held beyond T_a'
        : cooler === undefined
          ? '1 + (r_b − 1) · (T − 23 °C)/(T_b − 23 °C)'
          : 'r_a + (r_b − r_a) · (T − T_a)/(T_b − T_a)',
    entries: [...(cooler === undefined ? [] : rowEntries('a', cooler)), ...place],
    source: 'printed-materials',
    standing: 'estimate',
    ...rangeOfCareful(ends),
  };
}

const SIDES = { a: { ratio: 'r_a', temperature: 'T_a' }, b: { ratio: 'r_b', temperature: 'T_b' } } as const;

const rowEntries = (side: keyof typeof SIDES, row: RememberedRatios[number]): readonly Entry[] => [
  carefulEntry(SIDES[side].ratio, sharesOf(row.ratio, 'low'), '-'),
  entry(SIDES[side].temperature, row.temperature, '°C'),
];
