import type { UnitSymbol } from '../../core/units/units.ts';
import { checkLimits, settle } from './check-limits.ts';
import { type NeedsEngine, parsePlain } from './parse-plain.ts';
import type { ParsedQuantity } from './parsed-quantity.ts';
import type { QuantityDefinition } from './quantity-definition.ts';
import { type ReadExpression, readExpression } from './read-expression.ts';

type Engine = typeof import('./expression-engine.ts');

let engine: Engine | undefined;
let loading: Promise<Engine> | undefined;

async function loadEngine(): Promise<Engine> {
  loading ??= import('./expression-engine.ts');
  try {
    engine = await loading;
    return engine;
  } catch (failure) {
    // Another try may find the network again.
    loading = undefined;
    throw failure;
  }
}

/** Loads the engine of expressions and lets it work once; for idle time, so that no keystroke waits for it. */
export async function warmUp(): Promise<void> {
  try {
    const { evaluateExpression } = await loadEngine();
    evaluateExpression({ source: '1 unit_0 + (2 / 3) unit_0', units: ['mm'] });
  } catch {
    // Plain numbers do without; the field says so when an expression is typed.
  }
}

/** A result in the core unit, held against the kind and the limits of its field. */
function evaluated(
  expression: ReadExpression,
  definition: QuantityDefinition,
  { evaluateExpression }: Engine,
): ParsedQuantity {
  const { units, wholeUnit } = expression;
  const result = evaluateExpression(expression);
  if (result.kind === 'refused') return result;
  const firstUnit: UnitSymbol = units[0] ?? wholeUnit ?? definition.displayUnit;
  if (result.kind === 'number') {
    if (!Number.isFinite(result.value)) return { kind: 'refused', code: 'not-finite' };
    const unitWasTyped = wholeUnit !== undefined;
    return settle({ value: result.value, unit: firstUnit, unitWasTyped, isBareNumber: false }, definition);
  }
  if (result.of !== definition.kind) {
    return {
      kind: 'refused',
      code: 'wrong-kind',
      found: result.of,
      wanted: definition.kind,
      unit: firstUnit,
    };
  }
  const measure = { value: result.value, typedUnit: firstUnit, unitWasTyped: true, isBareNumber: false };
  return checkLimits({ kind: 'quantity', ...measure }, definition);
}

/** Reads a typed text at once where it can; an expression needs the engine, once it is loaded that is at once too. */
export function parseNow(text: string, definition: QuantityDefinition): ParsedQuantity | NeedsEngine {
  const plain = parsePlain(text, definition);
  if (plain.kind !== 'needs-engine') return plain;
  const expression = readExpression(text);
  if (expression.kind === 'refused') return expression;
  return engine === undefined ? plain : evaluated(expression, definition, engine);
}

/** Reads a typed text as a quantity in the core unit, or says why it is not taken. */
export async function parseQuantity(text: string, definition: QuantityDefinition): Promise<ParsedQuantity> {
  const now = parseNow(text, definition);
  if (now.kind !== 'needs-engine') return now;
  const expression = readExpression(text);
  if (expression.kind === 'refused') return expression;
  try {
    return evaluated(expression, definition, await loadEngine());
  } catch {
    return { kind: 'refused', code: 'engine-missing' };
  }
}
