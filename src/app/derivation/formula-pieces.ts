import type { ReactNode } from 'react';
import { mathOf, type ValuesPutIn } from './formula-math.ts';
import type { FormulaNode } from './formula-node.ts';
import { operator, row, text } from './math-element.ts';

/** A part of a formula before which a line may break; words stand apart, operators keep their own distance. */
export interface Piece {
  readonly of: ReactNode;
  readonly isWord: boolean;
}

/**
 * A formula in pieces between which a line may break: the terms and factors that no bracket, root or fraction holds
 * together. A browser breaks no line within an element of MathML.
 */
export function piecesOf(node: FormulaNode, values: ValuesPutIn): readonly Piece[] {
  if (values.has(node.text)) return [piece(mathOf(node, values))];
  if (node.kind === 'words') {
    return node.parts.flatMap((part) =>
      part.kind === 'text' ? wordPieces(part.text) : [{ of: mathOf(part, values), isWord: true }],
    );
  }
  if (node.kind === 'remark') {
    return [piece(row(mathOf(node.of, values), text(','))), ...wordPieces(node.words)];
  }
  if (node.kind !== 'binary' || node.operator === '/' || node.operator === 'beside') {
    return [piece(mathOf(node, values))];
  }
  const [first, ...others] = isChain(node.right)
    ? piecesOf(node.right, values)
    : [piece(mathOf(node.right, values, 'operand'))];
  return [
    ...piecesOf(node.left, values),
    piece(row(operator(node.operator, { form: 'infix' }), first?.of)),
    ...others,
  ];
}

const piece = (of: ReactNode): Piece => ({ of, isWord: false });

const isChain = (node: FormulaNode): boolean => node.kind === 'binary' && node.operator !== '/';

const wordPieces = (words: string): readonly Piece[] =>
  words.split(' ').flatMap((word) => (word === '' ? [] : [{ of: text(word), isWord: true }]));
