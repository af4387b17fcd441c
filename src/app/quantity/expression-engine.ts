import {
  addDependencies,
  create,
  divideDependencies,
  type FactoryFunctionMap,
  isConstantNode,
  isFunctionNode,
  isOperatorNode,
  isParenthesisNode,
  isSymbolNode,
  type MathNode,
  multiplyDependencies,
  parseDependencies,
  powDependencies,
  sqrtDependencies,
  subtractDependencies,
  toDependencies,
  type Unit,
  unaryMinusDependencies,
  unaryPlusDependencies,
  unitDependencies,
} from 'mathjs';
import { toCore } from '../../core/units/convert.ts';
import { UNITS, type UnitKind, type UnitSymbol } from '../../core/units/units.ts';
import type { Refusal } from './parsed-quantity.ts';

/** The small instance: four operations, powers, the square root, units; nothing that changes the library. */
const math = create(
  {
    ...addDependencies,
    ...subtractDependencies,
    ...multiplyDependencies,
    ...divideDependencies,
    ...powDependencies,
    ...sqrtDependencies,
    ...unaryMinusDependencies,
    ...unaryPlusDependencies,
    ...toDependencies,
    ...unitDependencies,
    ...parseDependencies,
  } as FactoryFunctionMap,
  { number: 'number', matrix: 'Array' },
);

const MOST_NODES = 60;

const OPERATORS: ReadonlySet<string> = new Set([
  'add',
  'subtract',
  'multiply',
  'divide',
  'pow',
  'unaryMinus',
  'unaryPlus',
]);

/** The core unit of a kind as the engine writes it; temperatures have no sums here, ratios no unit. */
const ENGINE_UNIT = {
  length: 'mm',
  force: 'N',
  torque: 'N mm',
  pressure: 'MPa',
  time: 'hour',
  angle: 'rad',
} as const satisfies Partial<Record<UnitKind, string>>;

const DIMENSIONED = Object.entries(ENGINE_UNIT) as readonly (readonly [keyof typeof ENGINE_UNIT, string])[];

/** What an expression comes to: a plain number, or a quantity in the core unit of its kind. */
export type Evaluated =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'measure'; readonly of: UnitKind | 'other'; readonly value: number };

const notAllowed = (part: string): Refusal => ({ kind: 'refused', code: 'not-allowed', part });
const notUnderstood = (part: string): Refusal => ({ kind: 'refused', code: 'not-understood', part });

/** Whether a node, for itself, belongs to the few that a quantity is made of. */
function isAllowed(node: MathNode, parent: MathNode | null, names: ReadonlyMap<string, unknown>): boolean {
  if (isConstantNode(node)) return Number.isFinite(node.value);
  if (isParenthesisNode(node)) return true;
  if (isOperatorNode(node)) return OPERATORS.has(node.fn);
  if (isFunctionNode(node)) return isSymbolNode(node.fn) && node.fn.name === 'sqrt' && node.args.length === 1;
  if (!isSymbolNode(node)) return false;
  // The name of a function stands in the tree as a symbol, too.
  if (node.name === 'sqrt') return parent !== null && isFunctionNode(parent) && parent.fn === node;
  return names.has(node.name);
}

/** The first part of a tree that is not on the list; the tree is not evaluated then. */
function forbiddenPart(tree: MathNode, names: ReadonlyMap<string, unknown>): string | undefined {
  let forbidden: string | undefined;
  let nodes = 0;
  tree.traverse((node: MathNode, _path: string, parent: MathNode | null) => {
    nodes++;
    if (forbidden === undefined && !isAllowed(node, parent, names)) forbidden = node.toString();
  });
  return forbidden ?? (nodes > MOST_NODES ? tree.toString() : undefined);
}

/** Each unit of the text as a value, from our exact definitions. */
function scopeOf(units: readonly UnitSymbol[]): Map<string, unknown> {
  return new Map(
    units.map((symbol, index) => {
      const { kind } = UNITS[symbol];
      const one = toCore(1, symbol);
      const isDimensioned = kind !== 'ratio' && kind !== 'temperature';
      return [`unit_${index}`, isDimensioned ? math.unit(one, ENGINE_UNIT[kind]) : one];
    }),
  );
}

function isUnit(result: unknown): result is Unit {
  return typeof result === 'object' && result !== null && 'equalBase' in result;
}

/** A result of the engine as a quantity of ours; complex numbers are none. */
function measured(result: unknown, hasUnits: boolean): Evaluated | Refusal {
  if (typeof result === 'number') {
    return hasUnits ? { kind: 'measure', of: 'ratio', value: result } : { kind: 'number', value: result };
  }
  if (!isUnit(result)) return { kind: 'refused', code: 'not-finite' };
  const found = DIMENSIONED.find(([, unit]) => result.equalBase(math.unit(unit)));
  if (found === undefined) return { kind: 'measure', of: 'other', value: Number.NaN };
  return { kind: 'measure', of: found[0], value: result.toNumber(found[1]) };
}

/** The engine's own parser, or nothing where it finds no tree. */
function treeOf(source: string): MathNode | undefined {
  try {
    return math.parse(source);
  } catch {
    return undefined;
  }
}

interface Wish {
  readonly value: MathNode;
  /** The kind of the unit after "to". */
  readonly kind?: UnitKind;
}

/** "5 in to mm": the wish after "to" at the root must be the last unit alone; the value itself is what counts. */
function readWish(tree: MathNode, units: readonly UnitSymbol[]): Wish | undefined {
  if (!isOperatorNode(tree) || tree.fn !== 'to') return { value: tree };
  const [value, wish] = tree.args;
  const last = units.at(-1);
  if (value === undefined || wish === undefined || last === undefined) return undefined;
  return isSymbolNode(wish) && units.length > 1 ? { value, kind: UNITS[last].kind } : undefined;
}

/**
 * Works out an expression whose units have become `unit_0`, `unit_1` …
 * The tree is walked against the list above before anything in it is evaluated.
 */
export function evaluateExpression(expression: {
  readonly source: string;
  readonly units: readonly UnitSymbol[];
}): Evaluated | Refusal {
  const { source, units } = expression;
  const temperature = units.find((symbol) => UNITS[symbol].kind === 'temperature');
  if (temperature !== undefined) return notUnderstood(temperature);
  const parsed = treeOf(source);
  const wish = parsed === undefined ? undefined : readWish(parsed, units);
  if (wish === undefined) return notUnderstood('');
  const scope = scopeOf(units);
  const forbidden = forbiddenPart(wish.value, scope);
  if (forbidden !== undefined) return notAllowed(forbidden);
  try {
    const result = measured(wish.value.compile().evaluate(scope), units.length > 0);
    const isAsWished = wish.kind === undefined || (result.kind === 'measure' && result.of === wish.kind);
    return isAsWished ? result : notUnderstood('to');
  } catch {
    // Only sums of unlike quantities fail once the list has let a tree through.
    return units.length > 0 ? { kind: 'refused', code: 'unit-missing' } : notUnderstood('');
  }
}
