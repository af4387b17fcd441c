import type { SourceId } from './sources.ts';

/** The core's one system of units, and nothing else; '-' is a ratio. */
export type CoreUnit = 'mm' | 'mm²' | 'mm³' | 'N' | 'MPa' | 'N·mm' | 'N/mm' | 'mm/N' | '°C' | 'h' | '-';

/** How far a number may be trusted; shown beside it, never by colour alone. */
export type Standing = 'published' | 'common-practice' | 'estimate' | 'measured';

/** One value put into a formula; its own derivation follows when it was computed too. */
export interface Entry {
  readonly symbol: string;
  readonly value: number;
  readonly unit: CoreUnit;
  readonly from?: Derived;
}

/**
 * Derivations that no answer needs, so that a page may load them after its answers; core/steps lists them here.
 */
// biome-ignore lint/suspicious/noEmptyInterface: filled in by what makes the derivations, which lies above this file.
export interface Steps {}

/** The way to a number, told by the derivation that makes it. */
export type StepsWay = (steps: Steps) => Derived;

/**
 * A computed number with the way it was computed.
 * Symbols and formulae are plain text; an underscore starts a subscript that ends at the next non-word sign.
 */
export interface Derived {
  readonly symbol: string;
  readonly value: number;
  readonly unit: CoreUnit;
  readonly formula: string;
  readonly entries: readonly Entry[];
  readonly source: SourceId;
  readonly standing: Standing;
  /** Ends between which a little known value lies; absent where it is known as well as its kind usually is. */
  readonly range?: Range;
}

/** What is known of a little known value. */
export interface Range {
  readonly low: number;
  readonly high: number;
  /** What is expected, where the value itself is the careful end; absent where the value is in the middle. */
  readonly middle?: number;
}

/** A value put into a formula that has no derivation of its own. */
export function entry(symbol: string, value: number, unit: CoreUnit): Entry {
  return { symbol, value, unit };
}

/** A computed number put into a further formula, with its way kept. */
export function entryFrom(derived: Derived): Entry {
  return { symbol: derived.symbol, value: derived.value, unit: derived.unit, from: derived };
}

/** An entry whose way is made when it is asked for. A class: its getter costs a ranking nothing, one of its own much. */
export class LateEntry implements Entry {
  readonly symbol: string;
  readonly value: number;
  readonly unit: CoreUnit;
  readonly #way: () => Derived;
  #made: Derived | undefined;

  constructor(symbol: string, value: number, unit: CoreUnit, way: () => Derived) {
    this.symbol = symbol;
    this.value = value;
    this.unit = unit;
    this.#way = way;
  }

  get from(): Derived {
    this.#made ??= this.#way();
    return this.#made;
  }
}

/** A computed number put into a further formula, whose way is made once, when it is asked for. */
export const entryLater = (symbol: string, value: number, unit: CoreUnit, way: () => Derived): LateEntry =>
  new LateEntry(symbol, value, unit, way);

/** An entry that tells only what makes its way, which may load after the answers; core/steps makes it. */
export class StepEntry implements Entry {
  readonly symbol: string;
  readonly value: number;
  readonly unit: CoreUnit;
  readonly #way: StepsWay;

  constructor(symbol: string, value: number, unit: CoreUnit, way: StepsWay) {
    this.symbol = symbol;
    this.value = value;
    this.unit = unit;
    this.#way = way;
  }

  made(steps: Steps): Derived {
    return this.#way(steps);
  }

  as(symbol: string): StepEntry {
    return new StepEntry(symbol, this.value, this.unit, this.#way);
  }

  changed(change: (way: Derived) => Derived): StepEntry {
    return new StepEntry(this.symbol, this.value, this.unit, (steps) => change(this.#way(steps)));
  }
}

/** A computed number put into a further formula, whose way loads after the answers. */
export const entryBy = (symbol: string, value: number, unit: CoreUnit, way: StepsWay): Entry =>
  new StepEntry(symbol, value, unit, way);

/** An entry under the symbol that a formula has for it; a spread would lose a way that is made later. */
export function entryAs(symbol: string, one: Entry): Entry {
  if (one instanceof StepEntry) return one.as(symbol);
  const { value, unit, from } = one;
  return from === undefined ? { symbol, value, unit } : { symbol, value, unit, from };
}

/** An entry whose way, where it has one, is changed. */
export function withWayChanged(one: Entry, change: (way: Derived) => Derived): Entry {
  if (one instanceof StepEntry) return one.changed(change);
  const { symbol, value, unit, from } = one;
  return from === undefined ? one : { symbol, value, unit, from: change(from) };
}

/** A number some of whose values put in were computed before: each by its symbol, with the way to it. */
export const withWays = (derived: Derived, ways: Readonly<Record<string, Derived>>): Derived => ({
  ...derived,
  entries: derived.entries.map((one) => {
    const from = ways[one.symbol];
    return from === undefined ? one : { ...one, from };
  }),
});

/** Range of a value that is taken at its careful end; none where nothing is in doubt. */
export const rangeOfCareful = (ends: Required<Range>): Pick<Derived, 'range'> =>
  ends.low === ends.high ? {} : { range: ends };

/** How an end of what is known of a tabulated value is worked out from that value. */
export interface EndWay {
  readonly formula: string;
  /** The tabulated value. */
  readonly of: Entry;
}

/**
 * A value of a table put in at its careful end, with its range where it has one, and the way to that end where its row
 * does not give it.
 */
export function carefulEntry(
  symbol: string,
  careful: { readonly value: number; readonly ends: Required<Range>; readonly way?: EndWay },
  unit: CoreUnit,
): Entry {
  const { value, ends, way } = careful;
  if (way === undefined && ends.low === ends.high) return entry(symbol, value, unit);
  return entryLater(symbol, value, unit, () => ({
    symbol,
    value,
    unit,
    formula: way?.formula ?? symbol,
    entries: [way?.of ?? entry(symbol, value, unit)],
    source: way === undefined ? 'printed-materials' : 'own-model',
    standing: 'estimate',
    ...rangeOfCareful(ends),
  }));
}
