import type { Derived } from '../core/sources/derived.ts';

/**
 * Between what a value may lie of which little is known, and what of that counts; undefined where it is known.
 *
 * @param textOf - writes a value as the derivation does
 */
export function littleKnownText(
  { value, range }: Pick<Derived, 'value' | 'range'>,
  textOf: (value: number) => string,
): string | undefined {
  if (range === undefined) return undefined;
  const between = `Little is known of it: between ${textOf(range.low)} and ${textOf(range.high)}`;
  return range.middle === undefined
    ? `${between}. The range is part of the scatter of what is worked out with it.`
    : `${between}, ${textOf(range.middle)} as expected. The ${value === range.middle ? 'expected value' : 'careful end'} is used.`;
}
