import type { Derived } from '../core/sources/derived.ts';
import { derivedText } from './amount.ts';

/** A computed number in a sentence. */
export interface Figure {
  /** A function where it is made only when the number is opened. */
  readonly derived: Derived | (() => Derived);
  /** How it stands in the sentence. */
  readonly text: string;
  /** What it is, for whoever hears it without the sentence; absent: the meaning of its symbol says it. */
  readonly what?: string;
}

/** Words, with the computed numbers among them. */
export type Sentence = readonly (string | Figure)[];

/** A computed number as it stands in a sentence; named by its symbol's meaning unless it has a name of its own. */
export const figure = (derived: Figure['derived'], text: string, what?: string): Figure => ({
  derived,
  text,
  ...(what === undefined ? {} : { what }),
});

/** A computed number as its own derivation writes it. */
export const told = (derived: Derived): Figure => figure(derived, derivedText(derived));

/** Tag of a template: its words, with numbers and other sentences where they stand. */
export const said = (
  words: TemplateStringsArray,
  ...between: readonly (string | Figure | Sentence)[]
): Sentence =>
  words
    .flatMap((text, place) => {
      const next = between[place] ?? '';
      return typeof next === 'object' && !('text' in next) ? [text, ...next] : [text, next];
    })
    .filter((part) => part !== '');

/** The same without anything to press. */
export const plainText = (sentence: Sentence): string =>
  sentence.map((part) => (typeof part === 'string' ? part : part.text)).join('');
