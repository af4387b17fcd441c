import type { UnitSymbol } from '../../core/units/units.ts';
import type { Refusal } from './parsed-quantity.ts';
import { LONGEST_TEXT, plainText } from './plain-text.ts';
import { readNumber } from './read-number.ts';
import { unitAt } from './unit-names.ts';

/** A typed expression with each unit replaced by a name of ours, so that no other name reaches the engine. */
export interface ReadExpression {
  readonly kind: 'expression';
  /** The engine's text; `unit_0`, `unit_1` … stand for the units. */
  readonly source: string;
  readonly units: readonly UnitSymbol[];
  /** A single unit at the very end belongs to the whole: it is not in the source then. */
  readonly wholeUnit?: UnitSymbol;
}

type Piece =
  | { readonly kind: 'number'; readonly text: string }
  | { readonly kind: 'unit'; readonly symbol: UnitSymbol }
  | { readonly kind: 'operator' | 'open' | 'close' | 'root'; readonly text: string };

const NUMBER = /(?:\d|[.,]\d)[\d.,]*(?:e[+-]?\d+)?/iuy;
const MIXED_FRACTION = /(\d+) ?\/ ?(\d+)(?![\d.,])/uy;
const WORD = /[\p{L}_$][\p{L}\p{N}_$]*/uy;
const SIGNS: Readonly<Record<string, string>> = {
  '+': '+',
  '-': '-',
  '*': '*',
  '×': '*',
  '·': '*',
  '⋅': '*',
  '∙': '*',
  '/': '/',
  '÷': '/',
  '⁄': '/',
  '∕': '/',
  ':': '/',
  '^': '^',
};
/** Signs of programs, which no quantity needs. */
const PROGRAM_SIGNS = /[=;[\]{}!&|<>?@#~\\$_`"']/;

function matchAt(pattern: RegExp, text: string, place: number): RegExpExecArray | null {
  pattern.lastIndex = place;
  return pattern.exec(text);
}

/** Reads one word that is no unit: the root, the word "to", or the reason why it is refused. */
function readWord(word: string, after: string, previous: Piece | undefined): Piece | Refusal {
  if (word === 'sqrt') return { kind: 'root', text: 'sqrt' };
  if (word === 'to') return { kind: 'operator', text: ' to ' };
  if (/^ ?[(=[.]/.test(after)) return { kind: 'refused', code: 'not-allowed', part: word };
  const followsNumber = previous?.kind === 'number' || previous?.kind === 'close';
  return followsNumber && word !== 'x'
    ? { kind: 'refused', code: 'unit-unknown', unit: word }
    : { kind: 'refused', code: 'not-understood', part: word };
}

function readPiece(
  text: string,
  place: number,
  previous: Piece | undefined,
): { piece: Piece | Refusal; length: number } {
  const number = matchAt(NUMBER, text, place)?.[0];
  if (number !== undefined) {
    const read = readNumber(number);
    return {
      piece: read.kind === 'number' ? { kind: 'number', text: read.digits } : read,
      length: number.length,
    };
  }
  const sign = text[place] ?? '';
  // A unit stands after a value, or after "to"; between values × is a sign of multiplication.
  const mayBeUnit = sign !== '×' && (endsValue(previous) || previous?.kind === 'operator');
  const unit = mayBeUnit ? unitAt(text, place) : undefined;
  if (unit !== undefined) return { piece: { kind: 'unit', symbol: unit.symbol }, length: unit.length };
  const word = matchAt(WORD, text, place)?.[0];
  if (word !== undefined)
    return { piece: readWord(word, text.slice(place + word.length), previous), length: word.length };
  if (sign === '(') return { piece: { kind: 'open', text: '(' }, length: 1 };
  if (sign === ')') return { piece: { kind: 'close', text: ')' }, length: 1 };
  const operator = SIGNS[sign];
  if (operator !== undefined) return { piece: { kind: 'operator', text: operator }, length: 1 };
  const code = PROGRAM_SIGNS.test(sign) ? 'not-allowed' : 'not-understood';
  return {
    piece: { kind: 'refused', code, part: String.fromCodePoint(text.codePointAt(place) ?? 0) },
    length: 1,
  };
}

const endsValue = (piece: Piece | undefined) =>
  piece?.kind === 'number' || piece?.kind === 'unit' || piece?.kind === 'close';

/** Whether two neighbours would multiply without a sign: only a unit may follow a value so. */
function touches(previous: Piece | undefined, piece: Piece): boolean {
  if (piece.kind === 'unit') return previous?.kind === 'unit';
  return endsValue(previous) && (piece.kind === 'number' || piece.kind === 'open' || piece.kind === 'root');
}

function readPieces(text: string): Piece[] | Refusal {
  const pieces: Piece[] = [];
  let place = 0;
  while (place < text.length) {
    if (text[place] === ' ') {
      place++;
      continue;
    }
    const previous = pieces.at(-1);
    const fraction =
      previous?.kind === 'number' && /^\d+$/.test(previous.text)
        ? matchAt(MIXED_FRACTION, text, place)
        : null;
    if (fraction !== null) {
      pieces[pieces.length - 1] = {
        kind: 'close',
        text: `(${(previous as { text: string }).text}+${fraction[1]}/${fraction[2]})`,
      };
      place += fraction[0].length;
      continue;
    }
    const { piece, length } = readPiece(text, place, previous);
    if (piece.kind === 'refused') return piece;
    if (touches(previous, piece)) return { kind: 'refused', code: 'not-understood', part: text.slice(place) };
    pieces.push(piece);
    place += length;
  }
  return pieces;
}

/** Turns a typed expression into the engine's text, or says which part no quantity has. */
export function readExpression(typed: string): ReadExpression | Refusal {
  if (typed.length > LONGEST_TEXT) return { kind: 'refused', code: 'too-long', limit: LONGEST_TEXT };
  const pieces = readPieces(plainText(typed));
  if (!Array.isArray(pieces)) return pieces;
  const units = pieces.flatMap((piece) => (piece.kind === 'unit' ? [piece.symbol] : []));
  const last = pieces.at(-1);
  const isWhole = units.length === 1 && last?.kind === 'unit' && endsValue(pieces.at(-2));
  let named = 0;
  const source = (isWhole ? pieces.slice(0, -1) : pieces)
    .map((piece) => (piece.kind === 'unit' ? ` unit_${named++}` : piece.text))
    .join('');
  return isWhole
    ? { kind: 'expression', source, units: [], wholeUnit: last.symbol }
    : { kind: 'expression', source, units };
}
