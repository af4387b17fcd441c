import type { Derived, Standing } from '../core/sources/derived.ts';
import { type HowKnown, SOURCES, type Source, type SourceId } from '../core/sources/sources.ts';

/** How far a number may be trusted: a sign and its words, which belong together. */
export const STANDINGS = {
  published: {
    sign: '§',
    words: 'published',
    meaning: 'in a standard, handbook or paper, named in the derivation',
  },
  'common-practice': {
    sign: '¶',
    words: 'common practice',
    meaning: 'what the trade does, without a test behind it',
  },
  estimate: { sign: '≈', words: 'estimate', meaning: 'ours, until a coupon speaks' },
  measured: { sign: '±', words: 'measured by you', meaning: 'your reading, with its uncertainty' },
} as const satisfies Record<
  Standing,
  { readonly sign: string; readonly words: string; readonly meaning: string }
>;

const HOW_KNOWN = {
  read: 'read',
  reprint: 'read in a reprint',
  'from-memory': 'from memory, to be confirmed',
  derived: 'worked out here',
} as const satisfies Record<HowKnown, string>;

export const howKnown = (source: SourceId): string => HOW_KNOWN[SOURCES[source].howKnown];

/** The source of a number in words: title, year and how it is known; its note follows as a sentence of its own. */
export function sourceWords(source: SourceId): { readonly title: string; readonly note?: string } {
  const row: Source = SOURCES[source];
  const year = row.year === undefined ? '' : ` (${row.year})`;
  const title = `${row.title}${year}: ${HOW_KNOWN[row.howKnown]}.`;
  return row.note === undefined ? { title } : { title, note: row.note };
}

export const standingOf = (derived: Derived) => STANDINGS[derived.standing];
