/** One sign of a formula with its place in the plain text. */
export interface Token {
  readonly kind: 'number' | 'name' | 'superscript' | 'sign' | 'end';
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

const TOKENS =
  /\s*(?:(?<number>\d+(?:,\d{3})*(?:\.\d+)?|½)|(?<superscript>[²³])|(?<name>(?:(?!Σ)\p{L})+(?:_[\p{L}\p{Nd}]+)?|°C?)|(?<sign>Σ|[^\s\p{L}\p{Nd}]))/uy;

/** The signs of a formula in their order, closed by an end; undefined where a sign is none of them. */
export function tokensOf(formula: string): readonly Token[] | undefined {
  const tokens: Token[] = [];
  TOKENS.lastIndex = 0;
  while (formula.slice(TOKENS.lastIndex).trim() !== '') {
    const match = TOKENS.exec(formula);
    if (match?.groups === undefined) return undefined;
    const { number, name, superscript, sign } = match.groups;
    const text = number ?? name ?? superscript ?? sign ?? '';
    const kind = number ? 'number' : name ? 'name' : superscript ? 'superscript' : 'sign';
    const to = match.index + match[0].length;
    tokens.push({ kind, text, from: to - text.length, to });
  }
  tokens.push({ kind: 'end', text: '', from: formula.length, to: formula.length });
  return tokens;
}
