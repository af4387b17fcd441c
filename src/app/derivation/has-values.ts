import type { ValuesPutIn } from './formula-math.ts';
import { nodesWithin } from './formula-node.ts';
import { parseFormula } from './parse-formula.ts';

/** Whether anything of a formula can be put in as a value; a sentence stays a sentence. */
export function hasValues(formula: string, values: ValuesPutIn): boolean {
  const node = parseFormula(formula);
  if (node === undefined || node.kind === 'words') return false;
  return [...nodesWithin(node)].some(({ text }) => values.has(text));
}
