import type { FormulaNode, Operator } from '../../../src/app/derivation/formula-node.ts';
import { parseFormula } from '../../../src/app/derivation/parse-formula.ts';
import { chiSquaredQuantile } from '../../../src/core/numerics/chi-squared.ts';
import { noncentralTQuantile } from '../../../src/core/numerics/noncentral-t.ts';
import { normalProbability, normalQuantile } from '../../../src/core/numerics/normal-distribution.ts';
import { studentQuantile } from '../../../src/core/numerics/student-t.ts';
import type { Derived } from '../../../src/core/sources/derived.ts';

/** Counts are rounded up with this much allowed for binary dust, as a person would with a pencil. */
const DUST = 1e-9;
const READING = /^x_\d+$/;
const DEGREE = Math.PI / 180;

const OPERATIONS: Readonly<Record<Operator, (left: number, right: number) => number>> = {
  '+': (left, right) => left + right,
  '−': (left, right) => left - right,
  '·': (left, right) => left * right,
  '×': (left, right) => left * right,
  '/': (left, right) => left / right,
  beside: (left, right) => left * right,
};

const FUNCTIONS: Readonly<Record<string, (...over: readonly number[]) => number>> = {
  min: (...over) => Math.min(...over),
  max: (...over) => Math.max(...over),
  ln: (of = Number.NaN) => Math.log(of),
  exp: (of = Number.NaN) => Math.exp(of),
  sin: (of = Number.NaN) => Math.sin(of),
  cos: (of = Number.NaN) => Math.cos(of),
  tan: (of = Number.NaN) => Math.tan(of),
  tanh: (of = Number.NaN) => Math.tanh(of),
  round: (of = Number.NaN) => Math.round(of),
  Φ: (of = Number.NaN) => normalProbability(of),
  z: (share = Number.NaN) => normalQuantile(share),
  t: (share = Number.NaN, freedom = Number.NaN, noncentrality = 0) =>
    noncentrality === 0
      ? studentQuantile(share, freedom)
      : noncentralTQuantile(share, { degrees: freedom, noncentrality }),
  χ: (share = Number.NaN, freedom = Number.NaN) => chiSquaredQuantile(share, freedom),
};

/** What the formula of a number comes to with its entries put in; undefined where it is a sentence. */
export function evaluated(derived: Derived): number | undefined {
  const node = parseFormula(derived.formula);
  if (node === undefined) throw new Error(`no formula: ${derived.formula}`);
  if (node.kind === 'words') return undefined;
  const values = new Map(derived.entries.map(({ symbol, value }) => [symbol, value]));
  return amountOf(node, values);
}

function amountOf(node: FormulaNode, values: ReadonlyMap<string, number>): number {
  const given = values.get(node.text);
  if (given !== undefined) return given;
  const of = (part: FormulaNode) => amountOf(part, values);
  switch (node.kind) {
    case 'number':
      return numberOf(node.text);
    case 'measure':
      return numberOf(node.number) * (node.unit === '°' ? DEGREE : 1);
    case 'name':
      if (node.text === 'π') return Math.PI;
      throw new Error(`no value is given for ${node.text}`);
    case 'binary':
      return OPERATIONS[node.operator](of(node.left), of(node.right));
    case 'power':
      return of(node.base) ** of(node.exponent);
    case 'negative':
      return -of(node.of);
    case 'sum':
      return sumOf(node.of, values);
    case 'root':
      return Math.sqrt(of(node.of));
    case 'bracket':
    case 'remark':
      return of(node.of);
    case 'ceiling':
      return Math.ceil(of(node.of) - DUST);
    case 'absolute':
      return Math.abs(of(node.of));
    case 'call':
      return called(node.name, node.over.map(of));
    case 'words':
      throw new Error(`a sentence has no value: ${node.text}`);
  }
}

const numberOf = (text: string): number => (text === '½' ? 0.5 : Number(text.replaceAll(',', '')));

function called(name: string, over: readonly number[]): number {
  const run = FUNCTIONS[name];
  if (run === undefined) throw new Error(`no function is called ${name}`);
  return run(...over);
}

/** A sum over readings, which stand in the entries one by one: what is summed, with x as each of them. */
function sumOf(node: FormulaNode, values: ReadonlyMap<string, number>): number {
  const readings = [...values].filter(([symbol]) => READING.test(symbol));
  if (readings.length === 0) throw new Error(`no readings to sum ${node.text} over`);
  return readings.reduce((sum, [, value]) => sum + amountOf(node, new Map([...values, ['x', value]])), 0);
}
