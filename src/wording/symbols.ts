import type { CoreUnit, Derived, Entry } from '../core/sources/derived.ts';
import { wayOf } from '../core/steps/steps.ts';
import { MEANINGS } from './symbol-meanings.ts';

/** Symbols that count readings, or holes that were read. */
const COUNTED = /^(?<of>[xeuηywnQ])_(?<place>[1-9]\d*)$/;
const COUNTED_MEANINGS: Readonly<Record<string, string>> = {
  x: 'reading',
  e: 'error of hole',
  u: 'standard uncertainty of the bore of hole',
  η: 'bond factor of coupon',
  y: 'mean logarithm, shown over expected, of size',
  w: 'weight of size',
  n: 'coupons of size',
  Q: 'squares about the mean of size',
};

/** Sums over the screws of a pattern. */
const OVER_SCREWS = /^S_[xyuvr]$/;

export interface SymbolPlace {
  readonly unit?: CoreUnit;
  /** Symbol of the quantity whose formula it stands in. */
  readonly within?: string;
  /** Source of its own derivation. */
  readonly source?: string;
}

/** What a symbol stands for, in words; undefined for a symbol without a meaning here. */
export function meaningOfSymbol(symbol: string, place: SymbolPlace = {}): string | undefined {
  const keys = [`${symbol}@${place.within}`, `${symbol}@${place.source}`, `${symbol} ${place.unit}`, symbol];
  const key = keys.find((candidate) => Object.hasOwn(MEANINGS, candidate));
  return key === undefined ? meaningOfCounted(symbol, place) : MEANINGS[key];
}

function meaningOfCounted(symbol: string, { within = '' }: SymbolPlace): string | undefined {
  const { of, place } = COUNTED.exec(symbol)?.groups ?? {};
  if (of === undefined) return undefined;
  return `${OVER_SCREWS.test(within) ? 'arm of screw' : COUNTED_MEANINGS[of]} ${place}`;
}

export const meaningOf = (derived: Derived, within?: string): string =>
  meaningOfSymbol(derived.symbol, {
    unit: derived.unit,
    source: derived.source,
    ...(within === undefined ? {} : { within }),
  }) ?? derived.symbol;

export function meaningOfEntry(entry: Entry, within: Derived): string {
  const way = wayOf(entry);
  const place = { unit: entry.unit, within: within.symbol, ...(way && { source: way.source }) };
  return meaningOfSymbol(entry.symbol, place) ?? entry.symbol;
}

/** Every number of a derivation that has one of its own, down to what was given; for walking all of them. */
export function* derivationsWithin(derived: Derived): Generator<Derived> {
  yield derived;
  for (const entry of derived.entries) {
    const way = wayOf(entry);
    if (way) yield* derivationsWithin(way);
  }
}
