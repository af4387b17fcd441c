import type { CheckSourceId } from '../fixtures/published/sources.ts';
import { readPrinted } from '../support/printed.ts';

/**
 * How a published value is known: opened and read, read in a reprint, or remembered. "recomputed" is no publication:
 * the same formula worked out apart from this program, by hand or on a sheet.
 */
export type CheckedHow = 'read' | 'reprint' | 'from memory' | 'recomputed';

/** A tolerance other than half a unit of the last printed digit, with its reason. */
export type OwnTolerance =
  | { readonly kind: 'part'; readonly of: number; readonly why: string }
  | { readonly kind: 'absolute'; readonly is: number; readonly why: string };

/** One value of a source beside what this program makes of the same inputs. */
export interface Check {
  readonly id: string;
  readonly quantity: string;
  /** Equation, or the table that holds the value. */
  readonly formula: string;
  /** As the source prints it: its digits are the tolerance. */
  readonly printed: string;
  readonly unit: string;
  readonly tolerance?: OwnTolerance;
  readonly source: CheckSourceId;
  /** Table, example, clause. */
  readonly place: string;
  readonly how: CheckedHow;
  /** Worked out by the core, or read from a table that saved documents name. */
  readonly kind: 'computed' | 'table';
  readonly computed: () => number;
}

/** Room for the last bit, so that a value exactly on the rounding boundary passes. */
const BOUNDARY_SLACK = 1e-9;

export const printedValue = (check: Check): number => readPrinted(check.printed).value;

/** How far the computed value may be from the printed one, in the unit of the check. */
export function toleranceOf(check: Check): number {
  const { value, halfUnit } = readPrinted(check.printed);
  const own = check.tolerance;
  if (own === undefined) return halfUnit;
  return own.kind === 'part' ? own.of * Math.abs(value) : own.is;
}

export const deviationOf = (check: Check): number => check.computed() - printedValue(check);

export const isWithin = (check: Check): boolean =>
  Math.abs(deviationOf(check)) <= toleranceOf(check) * (1 + BOUNDARY_SLACK);

/** Checks that share most of what they say. */
export function checksOf<Shared extends Partial<Check>>(
  shared: Shared,
  rows: readonly (Partial<Check> & Omit<Check, keyof Shared>)[],
): readonly (Shared & Omit<Check, keyof Shared>)[] {
  return rows.map((row) => ({ ...shared, ...row }));
}
