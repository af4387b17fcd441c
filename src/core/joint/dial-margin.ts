import { type Derived, entryFrom } from '../sources/derived.ts';
import type { TorqueWindow } from './assessment.ts';

/** Below this share of its top a window is hard to hit, [-]. */
const NARROW = 0.15;

/** How the dial stands in its window, or how wide a window is that is hard to hit. */
export type DialMargin =
  | { readonly kind: 'below-top'; readonly share: Derived }
  | { readonly kind: 'narrow'; readonly width: Derived };

/**
 * How far the dial stays below the top of the window, or how wide a window is that is hard to hit.
 *
 *     β = (T_most − T)/T_most        narrow, below 0.15 · T_most: Δ = T_most − T_least
 *
 * @param window - least, largest torque and dial [N·mm]
 * @returns β [-] or Δ [N·mm]
 * @source own-model where the dial stands
 * @example 200 … 400 N·mm dialled at 350 N·mm: 0.125 below the top
 */
export function dialMargin({
  least,
  most,
  dial,
}: Extract<TorqueWindow, { readonly kind: 'window' }>): DialMargin {
  const common = { source: 'own-model', standing: 'estimate' } as const;
  const width = most.value - least.value;
  if (width < NARROW * most.value) {
    const entries = [entryFrom(most), entryFrom(least)];
    const formula = 'T_most − T_least';
    return {
      kind: 'narrow',
      width: { symbol: 'Δ_T', value: width, unit: 'N·mm', formula, entries, ...common },
    };
  }
  return {
    kind: 'below-top',
    share: {
      symbol: 'β_T',
      value: (most.value - dial.value) / most.value,
      unit: '-',
      formula: '(T_most − T)/T_most',
      entries: [entryFrom(most), entryFrom(dial)],
      ...common,
    },
  };
}
