import { type Derived, entry } from '../sources/derived.ts';

/**
 * Tightening factor: largest over smallest preload that one method gives.
 *
 *     αA = FMmax/FMmin = (1 + s)/(1 − s)
 *
 * @param scatter - s [-], relative deviation ± of the preload from its mean, 0 ≤ s < 1
 * @returns αA [-], ≥ 1
 * @source vdi-2230 tightening factor
 * @example s 0.35 gives 2.077
 */
export function tighteningFactor(scatter: number): Derived {
  return {
    symbol: 'α_A',
    value: (1 + scatter) / (1 - scatter),
    unit: '-',
    formula: '(1 + s)/(1 − s)',
    entries: [entry('s', scatter, '-')],
    source: 'vdi-2230',
    standing: 'published',
  };
}

/** Smallest and largest preload that one setting gives. */
export interface PreloadBounds {
  readonly least: Derived;
  readonly most: Derived;
}

/**
 * Smallest and largest preload about the mean that a setting is meant to give.
 *
 *     Fmin = (1 − Γ) · F
 *     Fmax = (1 + Γ) · F
 *
 * Relaxation is not in it.
 *
 * @param preload - mean preload F [N], ≥ 0; uncertainty Γ [-], 0 ≤ Γ < 1
 * @returns least and most preload [N]
 * @source nsts-08307 §3.4, preload uncertainty
 */
export function preloadBounds(preload: { readonly mean: number; readonly scatter: number }): PreloadBounds {
  const { mean: F, scatter } = preload;
  const entries = [entry('F', F, 'N'), entry('Γ', scatter, '-')];
  const common = { unit: 'N', entries, source: 'nsts-08307', standing: 'published' } as const;
  return {
    least: { ...common, symbol: 'F_min', value: (1 - scatter) * F, formula: '(1 − Γ) · F' },
    most: { ...common, symbol: 'F_max', value: (1 + scatter) * F, formula: '(1 + Γ) · F' },
  };
}

/**
 * Smallest preload that goes with the largest one.
 *
 *     FMmin = FMmax/αA
 *
 * @param preload - largest preload FMmax [N], ≥ 0; tightening factor αA [-], ≥ 1
 * @returns FMmin [N]
 * @source vdi-2230 tightening factor
 * @example 41.9 kN and 1.8 give 23.3 kN
 */
export function leastPreload(preload: { readonly most: number; readonly tighteningFactor: number }): Derived {
  return {
    symbol: 'F_Mmin',
    value: preload.most / preload.tighteningFactor,
    unit: 'N',
    formula: 'F_Mmax/α_A',
    entries: [entry('F_Mmax', preload.most, 'N'), entry('α_A', preload.tighteningFactor, '-')],
    source: 'vdi-2230',
    standing: 'published',
  };
}
