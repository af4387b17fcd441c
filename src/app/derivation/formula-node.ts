/** A formula of the core taken apart; each node keeps the plain text that it was read from. */
export type FormulaNode =
  | { readonly kind: 'number'; readonly text: string }
  /** A unit or a sign of degrees after a number. */
  | { readonly kind: 'measure'; readonly text: string; readonly number: string; readonly unit: string }
  | { readonly kind: 'name'; readonly text: string; readonly base: string; readonly subscript: string }
  | {
      readonly kind: 'binary';
      readonly text: string;
      readonly operator: Operator;
      readonly left: FormulaNode;
      readonly right: FormulaNode;
    }
  | {
      readonly kind: 'power';
      readonly text: string;
      readonly base: FormulaNode;
      readonly exponent: FormulaNode;
    }
  | { readonly kind: Wrap; readonly text: string; readonly of: FormulaNode }
  | {
      readonly kind: 'call';
      readonly text: string;
      readonly name: string;
      /** Without brackets, as in sin 45°. */
      readonly bare: boolean;
      readonly over: readonly FormulaNode[];
    }
  /** A formula with what there is to say about it after a comma: "0, melted in". */
  | { readonly kind: 'remark'; readonly text: string; readonly of: FormulaNode; readonly words: string }
  /** No formula but a sentence; the symbols in it are names. */
  | { readonly kind: 'words'; readonly text: string; readonly parts: readonly WordsPart[] };

/** A times that is not written, as in 2π, is 'beside'. */
export type Operator = '+' | '−' | '·' | '×' | '/' | 'beside';

export type Wrap = 'negative' | 'sum' | 'root' | 'bracket' | 'ceiling' | 'absolute';

export type WordsPart = { readonly kind: 'text'; readonly text: string } | NameNode;

export type NameNode = Extract<FormulaNode, { kind: 'name' }>;

/** A node and all within it. */
export function* nodesWithin(node: FormulaNode): Generator<FormulaNode> {
  yield node;
  for (const part of partsOf(node)) yield* nodesWithin(part);
}

function partsOf(node: FormulaNode): readonly FormulaNode[] {
  switch (node.kind) {
    case 'number':
    case 'measure':
    case 'name':
      return [];
    case 'binary':
      return [node.left, node.right];
    case 'power':
      return [node.base, node.exponent];
    case 'call':
      return node.over;
    case 'words':
      return node.parts.flatMap((part) => (part.kind === 'name' ? [part] : []));
    case 'negative':
    case 'sum':
    case 'root':
    case 'bracket':
    case 'ceiling':
    case 'absolute':
    case 'remark':
      return [node.of];
  }
}
