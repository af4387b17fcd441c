import { type EndWay, entry } from '../sources/derived.ts';
import type { MaterialValue, PrintedMaterial } from './material.ts';

/** Where a value is taken within what is known of it: at either end, or as its row gives it. */
export type End = 'low' | 'middle' | 'high';

/** Share by which a little known value may be off either way, where its row has no range of its own (estimate). */
const OFF_BY = 0.3;

/**
 * Times by which what a share has lost over what it has left may be off either way, where its row has no range (estimate).
 * The one range that is given, 0.60 (0.40 … 0.75) of PLA after 1000 h, is 2.25 and 2.0 times: 1/0.40 − 1 and 1/0.75 − 1
 * beside 1/0.60 − 1.
 */
const LOSS_OFF_BY = 2;

/**
 * A strength within what is known of it.
 *
 *     0.7 · v … 1.3 · v        where a little known row has no range of its own
 *
 * @param row - value v [MPa], with its range and whether little is known of it
 * @param end - which end
 * @returns the value at that end [MPa]; a value that is known well enough is the same at both
 * @source own-model range of a little known strength
 */
export function strengthAt({ value, low, high, lowConfidence }: MaterialValue, end: End): number {
  if (end === 'middle' || lowConfidence !== true) return value;
  return end === 'low' ? (low ?? (1 - OFF_BY) * value) : (high ?? (1 + OFF_BY) * value);
}

/** A little known strength at 23 °C with the symbols of its row and of the ends that this may give. */
export interface LittleKnownRow {
  readonly row: MaterialValue;
  readonly symbols: { readonly value: string; readonly low: string; readonly high: string };
}

/** A modulus within what is known of it, MPa: by the rule of strengths. */
export const modulusAt = strengthAt;

/**
 * A share that is left, of strength in the warmth or of stiffness after a time, within what is known of it.
 *
 *     r/(r + k · (1 − r))        k = 2 low, 1/2 high: what is lost over what is left, (1 − r)/r, times k
 *
 * So no share leaves 0 … 1, and one that is whole stays whole.
 *
 * @param row - share r [-], 0 … 1, with its range and whether little is known of it
 * @param end - which end
 * @returns the share at that end [-]; one that is known well enough is the same at both
 * @source own-model range of a little known share
 * @example 0.65 of a row without a range lies between 0.481 and 0.788
 */
export function shareAt({ value, low, high, lowConfidence }: MaterialValue, end: End): number {
  if (end === 'middle' || lowConfidence !== true) return value;
  const given = end === 'low' ? low : high;
  const times = end === 'low' ? LOSS_OFF_BY : 1 / LOSS_OFF_BY;
  return given ?? value / (value + times * (1 - value));
}

/** A value with all that is known of it: taken at one end, the careful one where it is used. */
export interface CarefulValue {
  readonly value: number;
  readonly ends: Readonly<Record<End, number>>;
  /** How the end was worked out from the row; absent where the row gives it itself. */
  readonly way?: EndWay;
}

/** A value found at each end, taken at one of them. */
export function taken(end: End, at: (end: End) => number): CarefulValue {
  const ends = { low: at('low'), middle: at('middle'), high: at('high') };
  return { value: ends[end], ends };
}

/** A share at an end, with what the other ends are; see shareAt. */
export const sharesOf = (row: MaterialValue, end: End): CarefulValue => ({
  ...taken(end, (one) => shareAt(row, one)),
  ...wayOf(row, end, SHARE_ENDS),
});

/** A modulus at an end, with what the other ends are; see strengthAt. */
export const moduliOf = (row: MaterialValue, end: End): CarefulValue => ({
  ...taken(end, (one) => modulusAt(row, one)),
  ...wayOf(row, end, MODULUS_ENDS),
});

/** Formulas of both ends from the value of the row. */
interface EndFormulas {
  readonly symbol: string;
  readonly unit: '-' | 'MPa';
  readonly low: string;
  readonly high: string;
}

const SHARE_ENDS: EndFormulas = {
  symbol: 'r_tab',
  unit: '-',
  low: 'r_tab/(r_tab + 2 · (1 − r_tab))',
  high: 'r_tab/(r_tab + ½ · (1 − r_tab))',
};
const MODULUS_ENDS: EndFormulas = { symbol: 'E_tab', unit: 'MPa', low: '0.7 · E_tab', high: '1.3 · E_tab' };

/** How an end is worked out; nothing where the row gives it, or where its value is known well enough. */
function wayOf(row: MaterialValue, end: End, formulas: EndFormulas): Pick<CarefulValue, 'way'> {
  if (row.way !== undefined) return { way: row.way };
  if (end === 'middle' || row.lowConfidence !== true || row[end] !== undefined) return {};
  return { way: { formula: formulas[end], of: entry(formulas.symbol, row.value, formulas.unit) } };
}

/** A softening temperature within what is known of it, °C; every little known one has a range of its own. */
export function temperatureAt({ value, low, high, lowConfidence }: MaterialValue, end: End): number {
  if (end === 'middle' || lowConfidence !== true) return value;
  return (end === 'low' ? low : high) ?? value;
}

/** A row as if its value were known for certain: that of an end, which may have been worked out. */
const certain = ({ provenance }: MaterialValue, { value, way }: Pick<CarefulValue, 'value' | 'way'>) => ({
  value,
  provenance,
  ...(way === undefined ? {} : { way }),
});

/**
 * A polymer whose stiffness, warmth and creep are taken as known, at one end of what is known of them. Its strengths keep their
 * ranges: those are part of the scatter.
 *
 * @param material - rows with what is known of them
 * @param end - where modulus, softening, strength in the warmth and creep are taken
 * @returns the polymer, nothing of its stiffness, warmth and creep in doubt
 * @source own-model the low end of what is left is the careful one
 */
export const polymerAt = (material: PrintedMaterial, end: End): PrintedMaterial => ({
  ...material,
  softening: {
    ...certain(material.softening, { value: temperatureAt(material.softening, end) }),
    kind: material.softening.kind,
  },
  modulusInPlane: certain(material.modulusInPlane, moduliOf(material.modulusInPlane, end)),
  creepRatio1h: certain(material.creepRatio1h, sharesOf(material.creepRatio1h, end)),
  creepRatio24h: certain(material.creepRatio24h, sharesOf(material.creepRatio24h, end)),
  creepRatio1000h: certain(material.creepRatio1000h, sharesOf(material.creepRatio1000h, end)),
  strengthRatios: material.strengthRatios.map(({ temperature, ratio }) => ({
    temperature,
    ratio: certain(ratio, sharesOf(ratio, end)),
  })),
});
