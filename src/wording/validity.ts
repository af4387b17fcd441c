import { FITTED_DIAMETERS } from '../core/holes/print-error.ts';
import { SOFTENING_MARGIN } from '../core/host/temperature.ts';
import { CREEP_POINTS } from '../core/relaxation/findley.ts';
import type { Derived } from '../core/sources/derived.ts';
import { decimalText, NO_BREAK_SPACE } from './amount.ts';

/** Between what the source of a number was fitted, and whether the number lies there; undefined where nothing is said. */
export function validityOf(derived: Derived): string | undefined {
  const amountOf = (symbol: string) => derived.entries.find((entry) => entry.symbol === symbol)?.value;
  switch (derived.symbol) {
    case 'e':
      // What was read on one's own printer was not fitted by others.
      if (derived.source !== 'hole-metrology-note') return undefined;
      return fittedBetween(FITTED_DIAMETERS.least, FITTED_DIAMETERS.greatest, 'mm', amountOf('D_CAD'));
    case 'R_F':
    case 'R_t':
    case 'c':
      return creepRange(amountOf('t'));
    case 'θ':
      return `Asked up to ${SOFTENING_MARGIN}${NO_BREAK_SPACE}K below softening; nearer there is no answer.`;
    default:
      return undefined;
  }
}

const creepRange = (hours: number | undefined): string | undefined =>
  hours === undefined ? undefined : fittedBetween(CREEP_POINTS.first, CREEP_POINTS.last, 'h', hours);

function fittedBetween(least: number, greatest: number, unit: string, value: number | undefined): string {
  const range = `Fitted from ${least} to ${decimalText(greatest, 0)}${NO_BREAK_SPACE}${unit}`;
  if (value === undefined || value === 0) return `${range}.`;
  return value < least || value > greatest
    ? `${range}; beyond that it is extrapolated, as here.`
    : `${range}, and asked within.`;
}
