import type { ReactNode } from 'react';
import { NO_BREAK_SPACE } from '../../wording/amount.ts';
import type { FormulaNode, NameNode } from './formula-node.ts';
import { fenced, math, operator, row, text } from './math-element.ts';

/** What stands in place of a symbol: its value with the unit. */
export type ValuesPutIn = ReadonlyMap<string, string>;

const LATIN_LETTER = /^[A-Za-z]$/;
const NUMBER = /^[\d.]+$/;
const NARROW_SPACE = '\u2009';
const NEGATIVE = '\u2212';

/** Where a node stands, as far as it decides about brackets. */
type Place = 'free' | 'operand' | 'base';

/** A node as MathML. */
export function mathOf(node: FormulaNode, values: ValuesPutIn, place: Place = 'free'): ReactNode {
  const value = values.get(node.text);
  if (value !== undefined) return valueMath(value, place);
  switch (node.kind) {
    case 'number':
      return math('mn', {}, node.text);
    case 'measure':
      return measure(node.number, node.unit);
    case 'name':
      return nameMath(node);
    case 'binary':
      return binaryMath(node, values);
    case 'power':
      return math('msup', {}, mathOf(node.base, values, 'base'), bare(node.exponent, values));
    case 'negative':
      return row(operator(NEGATIVE, { form: 'prefix' }), mathOf(node.of, values, 'operand'));
    case 'sum':
      return row(operator('Σ', { largeop: 'false' }), mathOf(node.of, values));
    case 'root':
      return math('msqrt', {}, bare(node.of, values));
    case 'bracket':
      return fenced('(', mathOf(node.of, values), ')');
    case 'ceiling':
      return fenced('⌈', mathOf(node.of, values), '⌉');
    case 'absolute':
      return fenced('|', mathOf(node.of, values), '|');
    case 'call':
      return callMath(node, values);
    case 'remark':
      return row(mathOf(node.of, values), text(`, ${node.words}`));
    case 'words':
      return row(...node.parts.map((part) => (part.kind === 'text' ? text(part.text) : nameMath(part))));
  }
}

type Of<Kind extends FormulaNode['kind']> = Extract<FormulaNode, { kind: Kind }>;

function binaryMath({ operator: sign, left, right }: Of<'binary'>, values: ValuesPutIn): ReactNode {
  if (sign === '/') return math('mfrac', {}, bare(left, values), bare(right, values));
  const one = mathOf(left, values);
  const other = mathOf(right, values, 'operand');
  return sign === 'beside' ? row(one, other) : row(one, operator(sign, { form: 'infix' }), other);
}

function callMath({ name, bare: isBare, over }: Of<'call'>, values: ValuesPutIn): ReactNode {
  const called = letters(name);
  if (isBare) return row(called, text(NARROW_SPACE), ...over.map((one) => mathOf(one, values, 'base')));
  const listed = over.flatMap((one, index) => {
    const each = mathOf(one, values);
    return index === 0 ? [each] : [operator(',', { separator: 'true', form: 'infix' }), each];
  });
  return row(called, fenced('(', row(...listed), ')'));
}

/** Without its brackets, where a fraction line or a root already holds it together. */
function bare(node: FormulaNode, values: ValuesPutIn): ReactNode {
  return mathOf(node.kind === 'bracket' && !values.has(node.text) ? node.of : node, values);
}

/** One Latin letter is a quantity and slants; words and Greek letters stand upright, as the trade writes them. */
function letters(of: string): ReactNode {
  if (NUMBER.test(of)) return math('mn', {}, of);
  const slant = LATIN_LETTER.test(of) ? { className: 'slanted' } : {};
  return math('mi', { mathvariant: 'normal', ...slant }, of);
}

function nameMath({ base, subscript }: NameNode): ReactNode {
  if (subscript === '') return letters(base);
  return math('msub', {}, letters(base), math('mtext', {}, subscript));
}

function measure(number: string, unit: string): ReactNode {
  const between = unit.startsWith('°') && unit !== '°C' ? '' : NO_BREAK_SPACE;
  return row(math('mn', {}, number), text(`${between}${unit}`));
}

/** A value with its unit; brackets where it is raised, or where its sign would follow another one. */
function valueMath(value: string, place: Place): ReactNode {
  const [number = '', unit] = value.split(NO_BREAK_SPACE);
  const isNegative = number.startsWith(NEGATIVE);
  const amount = row(math('mn', {}, number), unit === undefined ? null : text(`${NO_BREAK_SPACE}${unit}`));
  const needsBrackets =
    place === 'base' ? isNegative || unit !== undefined : place === 'operand' && isNegative;
  return needsBrackets ? fenced('(', amount, ')') : amount;
}
