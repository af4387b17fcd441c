/** Widths of signs over the size of type, in the widest narrow face that a page may fall back to. */
const WIDTHS = { digit: 0.575, space: 0.29, narrow: 0.3, sign: 0.8, letter: 0.52, capital: 0.66 };
/** The semibold cut is wider by this much. */
const BOLD = 1.1;

export interface Type {
  readonly size: number;
  readonly isBold?: true;
}

/** Width of a text in the narrow face, px, an estimate on the wide side. */
export function textWidth(text: string, { size, isBold }: Type): number {
  const em = Array.from(text).reduce((sum, sign) => sum + signWidth(sign), 0);
  return em * size * (isBold ? BOLD : 1);
}

function signWidth(sign: string): number {
  if (/\d/.test(sign)) return WIDTHS.digit;
  if (sign === ' ') return WIDTHS.space;
  if (/[.,:;'|il]/.test(sign)) return WIDTHS.narrow;
  if (/[a-z]/.test(sign)) return WIDTHS.letter;
  return /[A-Z]/.test(sign) ? WIDTHS.capital : WIDTHS.sign;
}
