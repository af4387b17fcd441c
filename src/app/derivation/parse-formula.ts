import type { FormulaNode, NameNode, Operator, WordsPart, Wrap } from './formula-node.ts';
import { type Token, tokensOf } from './formula-tokens.ts';

const BARE_FUNCTIONS: ReadonlySet<string> = new Set(['sin', 'cos', 'tan', 'max', 'min']);
const UNITS: ReadonlySet<string> = new Set(['mm', '°', '°C', 'N', 'h']);
const SUPERSCRIPTS: Readonly<Record<string, string>> = { '²': '2', '³': '3' };
const SUMS: Readonly<Record<string, Operator>> = { '+': '+', '−': '−' };
const PRODUCTS: Readonly<Record<string, Operator>> = { '·': '·', '×': '×' };
const REMARK = /^(?<formula>[^,]+), (?<words>\p{Ll}\p{L}* [^()]+)$/u;
const TWO_WORDS = /(?<![\p{L}_])(?!(?:sin|cos|tan|max|min) )\p{L}{2,} \p{L}{2,}/u;
const SYMBOL_IN_WORDS = /\p{L}+_[\p{L}\p{Nd}]+/gu;

/** Where the text is no formula; caught at the door, parseFormula. */
class NoFormula extends Error {}

/**
 * Takes the plain text of a formula apart. A sum is made of products, a product of quotients, so that π · D/2 is π times
 * a half of D; that gives the same number as working from left to right.
 *
 * @returns undefined where the text is neither a formula nor plain words
 */
export function parseFormula(formula: string): FormulaNode | undefined {
  const { formula: before, words } = REMARK.exec(formula)?.groups ?? {};
  if (before !== undefined && words !== undefined) {
    const of = parseFormula(before);
    if (of !== undefined && of.kind !== 'words') return { kind: 'remark', text: formula, of, words };
  }
  if (TWO_WORDS.test(formula)) return { kind: 'words', text: formula, parts: partsOfWords(formula) };
  const tokens = tokensOf(formula);
  if (tokens === undefined) return undefined;
  try {
    return new Reader(formula, tokens).whole();
  } catch (error) {
    if (error instanceof NoFormula) return undefined;
    throw error;
  }
}

function partsOfWords(text: string): readonly WordsPart[] {
  const parts: WordsPart[] = [];
  let at = 0;
  for (const match of text.matchAll(SYMBOL_IN_WORDS)) {
    if (match.index > at) parts.push({ kind: 'text', text: text.slice(at, match.index) });
    parts.push(nameOf(match[0]));
    at = match.index + match[0].length;
  }
  if (at < text.length) parts.push({ kind: 'text', text: text.slice(at) });
  return parts;
}

function nameOf(text: string): NameNode {
  const [base = '', subscript = ''] = text.split('_');
  return { kind: 'name', text, base, subscript };
}

class Reader {
  private at = 0;
  private readonly formula: string;
  private readonly tokens: readonly Token[];

  constructor(formula: string, tokens: readonly Token[]) {
    this.formula = formula;
    this.tokens = tokens;
  }

  whole(): FormulaNode {
    const node = this.sum();
    if (this.next.kind !== 'end') throw new NoFormula();
    return node;
  }

  private get next(): Token {
    const token = this.tokens[this.at];
    if (token === undefined) throw new NoFormula();
    return token;
  }

  private take(): Token {
    const token = this.next;
    this.at += 1;
    return token;
  }

  private takes(sign: string): boolean {
    const found = this.next.kind !== 'end' && this.next.text === sign;
    if (found) this.at += 1;
    return found;
  }

  private expect(sign: string): void {
    if (!this.takes(sign)) throw new NoFormula();
  }

  /** Plain text from a place up to what has been read. */
  private since(from: number): string {
    return this.formula.slice(from, this.tokens[this.at - 1]?.to ?? from);
  }

  private chain(operators: Readonly<Record<string, Operator>>, part: () => FormulaNode): FormulaNode {
    const { from } = this.next;
    let left = part();
    for (;;) {
      const operator = this.next.kind === 'sign' ? operators[this.next.text] : undefined;
      if (operator === undefined) return left;
      this.take();
      const right = part();
      left = { kind: 'binary', text: this.since(from), operator, left, right };
    }
  }

  private sum(): FormulaNode {
    return this.chain(SUMS, () => this.product());
  }

  private product(): FormulaNode {
    return this.chain(PRODUCTS, () => this.quotient());
  }

  private quotient(): FormulaNode {
    return this.chain({ '/': '/' }, () => this.power());
  }

  private power(): FormulaNode {
    const { from } = this.next;
    const base = this.atom();
    if (this.next.kind === 'superscript') {
      const { text } = this.take();
      const exponent: FormulaNode = { kind: 'number', text: SUPERSCRIPTS[text] ?? text };
      return { kind: 'power', text: this.since(from), base, exponent };
    }
    if (this.takes('^')) {
      const exponent = this.atom();
      return { kind: 'power', text: this.since(from), base, exponent };
    }
    return base;
  }

  private atom(): FormulaNode {
    const token = this.take();
    if (token.kind === 'number') return this.number(token);
    if (token.kind === 'name') return this.name(token);
    switch (token.text) {
      case '(':
        return this.within('bracket', token, ')');
      case '⌈':
        return this.within('ceiling', token, '⌉');
      case '|':
        return this.within('absolute', token, '|');
      case '√':
        return this.root(token);
      case '−':
        return this.wrapped('negative', token, this.power());
      case 'Σ':
        return this.wrapped('sum', token, this.power());
      default:
        throw new NoFormula();
    }
  }

  private wrapped(kind: Wrap, token: Token, of: FormulaNode): FormulaNode {
    return { kind, text: this.since(token.from), of };
  }

  private within(kind: Wrap, token: Token, end: string): FormulaNode {
    const of = this.sum();
    this.expect(end);
    return this.wrapped(kind, token, of);
  }

  private root(token: Token): FormulaNode {
    if (this.takes('(')) return this.within('root', token, ')');
    return this.wrapped('root', token, this.atom());
  }

  private number(token: Token): FormulaNode {
    if (this.next.kind !== 'name') return { kind: 'number', text: token.text };
    const following = this.take();
    const text = this.since(token.from);
    if (UNITS.has(following.text)) return { kind: 'measure', text, number: token.text, unit: following.text };
    const left: FormulaNode = { kind: 'number', text: token.text };
    return { kind: 'binary', text, operator: 'beside', left, right: this.name(following) };
  }

  private name(token: Token): FormulaNode {
    const { text } = token;
    if (this.next.text === '(' && this.next.from === token.to) {
      this.take();
      const over = [this.sum()];
      while (this.takes(',')) over.push(this.sum());
      this.expect(')');
      return { kind: 'call', text: this.since(token.from), name: text, bare: false, over };
    }
    if (BARE_FUNCTIONS.has(text)) {
      const over = [this.atom()];
      return { kind: 'call', text: this.since(token.from), name: text, bare: true, over };
    }
    return nameOf(text);
  }
}
