/** Longer than any quantity that a person types. */
export const LONGEST_TEXT = 120;

/** The text with one kind of blank and one kind of minus, as keyboards and clipboards make several. */
export function plainText(text: string): string {
  return text
    .replace(/[\s\u00a0\u2000-\u200b\u202f\u205f\u3000\ufeff]+/g, ' ')
    .replace(/[\u2212\u2010\u2011\u2012\u2013\u2014\ufe63\uff0d]/g, '-')
    .replace(/\uff0b/g, '+')
    .trim();
}
