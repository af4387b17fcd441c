/** A piece of a formula, as it is set: names italic or upright with their subscript, exponents raised, the rest as is. */
export type FormulaPart =
  | { readonly kind: 'name'; readonly text: string; readonly subscript: string; readonly italic: boolean }
  | { readonly kind: 'exponent'; readonly text: string }
  | { readonly kind: 'sign'; readonly text: string };

/** A letter or word, perhaps with a subscript; or a caret with its exponent; or anything else, up to the next of these. */
const PIECES =
  /(?<name>\p{L}+)(?:_(?<subscript>[\p{L}\p{Nd}]+))?|\^(?<exponent>[\d.]+|\p{L})|[^\p{L}^]+|\^/gu;
const LATIN_LETTER = /^[A-Za-z]$/;
const DIGIT_BEFORE = /\d$/;

/**
 * Takes the plain text of a formula apart. One Latin letter is a quantity and stands in italics; longer words (ln, max,
 * mm) and Greek letters stand upright; an underscore begins a subscript that ends at the next sign that is no word's.
 */
export function formulaParts(formula: string): readonly FormulaPart[] {
  const parts: FormulaPart[] = [];
  for (const match of formula.matchAll(PIECES)) {
    const { name, subscript, exponent } = match.groups ?? {};
    if (name !== undefined) {
      parts.push({ kind: 'name', text: name, subscript: subscript ?? '', italic: LATIN_LETTER.test(name) });
    } else if (exponent !== undefined) parts.push({ kind: 'exponent', text: exponent });
    else parts.push({ kind: 'sign', text: match[0] });
  }
  return parts;
}

const WORD = /[\p{L}\p{Nd}_]/u;

/** The formula with the values in place of the symbols, names that have no value left as they are. */
export function withValues(formula: string, values: ReadonlyMap<string, string>): string {
  const symbols = [...values.keys()].sort((one, other) => other.length - one.length);
  let text = '';
  let at = 0;
  while (at < formula.length) {
    const symbol = symbols.find((candidate) => standsAt(formula, candidate, at));
    const value = symbol === undefined ? undefined : values.get(symbol);
    if (symbol === undefined || value === undefined) {
      text += formula[at] ?? '';
      at += 1;
    } else {
      text += asFactor(value, text, formula[at + symbol.length] ?? '');
      at += symbol.length;
    }
  }
  return text;
}

/** Whether the symbol stands here as a whole, not as a part of a longer name. */
function standsAt(formula: string, symbol: string, at: number): boolean {
  if (!formula.startsWith(symbol, at)) return false;
  const before = formula[at - 1] ?? '';
  const after = formula[at + symbol.length] ?? '';
  const startsInside = WORD.test(before) && !DIGIT_BEFORE.test(before);
  return !startsInside && !WORD.test(after);
}

/** A negative value after a sign of calculation, or under an exponent, needs brackets. */
function asFactor(value: string, before: string, next: string): string {
  const negative = value.startsWith('\u2212');
  const follows = /[·/−+]\s*$/u.test(before);
  return negative && (follows || /[²³^]/.test(next)) ? `(${value})` : value;
}
