import type { Derived } from '../../src/core/sources/derived.ts';
import type { Sentence } from '../../src/wording/sentence.ts';

/** What the numbers of a sentence open, in their order. */
export const openedBy = (sentence: Sentence): readonly Derived[] =>
  sentence.flatMap((part) => {
    if (typeof part === 'string') return [];
    return typeof part.derived === 'function' ? part.derived() : part.derived;
  });
