import type { Derived, Entry } from '../../core/sources/derived.ts';
import { wayOf } from '../../core/steps/steps.ts';
import { type Calculation, type Check, type PartId, partsOf } from './parts.ts';

/** A value put in: given, or computed before in the step of that number. */
export interface StepEntry {
  readonly entry: Entry;
  readonly step?: number;
}

/** One number of the calculation, written once; whatever uses it refers to its number. */
export interface Step {
  readonly number: number;
  readonly derived: Derived;
  readonly entries: readonly StepEntry[];
  /** Symbol of the quantity that first asked for it, which may decide what its own symbol means. */
  readonly within?: string;
}

/** A part of the calculation with the steps that first appear in it. */
export interface StepGroup {
  readonly id: PartId;
  readonly steps: readonly Step[];
  /** Numbers of the results of the part that stand in an earlier one already. */
  readonly earlier: readonly number[];
  readonly checks: readonly NumberedCheck[];
}

/** What is borne against what is asked, by the numbers of their steps. */
export interface NumberedCheck extends Check {
  readonly bearsStep: number;
  readonly askedStep: number;
}

/** What makes two numbers the same one. */
const keyOf = ({ symbol, value, unit, formula, entries }: Derived): string =>
  JSON.stringify([symbol, value, unit, formula, entries.map((entry) => [entry.symbol, entry.value])]);

const quantityOf = ({ symbol, value, unit }: Pick<Derived, 'symbol' | 'value' | 'unit'>): string =>
  JSON.stringify([symbol, value, unit]);

/** A number that is only taken from what is given. */
export const isGiven = ({ symbol, formula }: Derived): boolean => formula === symbol;

/**
 * The whole calculation of a joint as numbered steps: each number once, after all that goes into it.
 *
 * @param calculation - what was found about the joint and its life
 * @returns the parts in the order of computing
 */
export function calculationSteps(calculation: Calculation): readonly StepGroup[] {
  const numbers = new Map<string, number>();
  // Where a number is put in bare, the step that came to it before is named all the same.
  const sameBefore = new Map<string, number>();
  let steps: Step[] = [];
  const place = (derived: Derived, within?: string): number => {
    const key = keyOf(derived);
    const known = numbers.get(key);
    if (known !== undefined) return known;
    const entries = derived.entries.map((entry) => {
      const way = wayOf(entry);
      const step = way === undefined ? sameBefore.get(quantityOf(entry)) : place(way, derived.symbol);
      return step === undefined ? { entry } : { entry, step };
    });
    const number = numbers.size + 1;
    numbers.set(key, number);
    if (!isGiven(derived)) sameBefore.set(quantityOf(derived), number);
    steps.push({ number, derived, entries, ...(within === undefined ? {} : { within }) });
    return number;
  };
  return partsOf(calculation).map(({ id, results, checks }) => {
    steps = [];
    const before = numbers.size;
    const earlier = results.map((derived) => place(derived)).filter((number) => number <= before);
    const numbered = checks.map((check) => ({
      ...check,
      bearsStep: place(check.bears),
      askedStep: place(check.asked),
    }));
    return { id, steps, earlier: [...new Set(earlier)], checks: numbered };
  });
}
