import type { Limit } from '../joint/assessment.ts';
import type { Joint } from '../joint/joint.ts';
import type { FailureMode } from '../pull-out/limit.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { ClosedCheck, Loosening, ServiceState } from './service-state.ts';

/** What one mode or condition has left at one time. */
export interface Margin {
  readonly by: FailureMode | Loosening;
  /** What is held: a characteristic capacity, or what keeps the joint closed [N or N·mm]. */
  readonly held: Derived;
  readonly asked: Derived;
  /** Held over what is asked with its factor, [-]; absent where nothing loads it. */
  readonly margin?: Derived;
  /** The same for the median, [-]; absent where there is no spread to show. */
  readonly medianMargin?: number;
  /** The smallest of its state. */
  readonly governs: boolean;
}

/**
 * What is left of every mode and condition at one time, the most endangered first, those without a load last.
 *
 *     ψ = R_k/(S · demand)        closed: ψ = left/needed, S_c already in what is needed
 *
 * At least 1 holds; the smallest is the margin of the state.
 *
 * @param state - a joint at one time
 * @param factors - S that limits are divided by [-], ≥ 1
 * @returns a margin ψ [-] each, with the way to it
 * @source own-model the joint through its life
 */
export function marginsOf(state: ServiceState, factors: Joint['factors']): readonly Margin[] {
  return [
    ...state.limits.map((limit) => marginOfLimit(limit, factors.limits, state.by)),
    ...state.closed.map((check) => marginOfCheck(check, state.by)),
  ].sort((one, other) => sizeOf(one) - sizeOf(other) || one.held.value - other.held.value);
}

/** The margin that ends a state first. */
export const governingMargin = (state: ServiceState, factors: Joint['factors']): Margin | undefined =>
  marginsOf(state, factors).find(({ governs }) => governs);

/** The smallest margin of a state, ψ [-]: what governs is always loaded. */
export function smallestMargin(state: ServiceState, factors: Joint['factors']): Derived {
  const margin = governingMargin(state, factors)?.margin;
  if (margin === undefined) throw new Error('what governs a state is loaded');
  return margin;
}

/**
 * Largest force in the screw at one time.
 *
 *     F_d = F_high · R_F + Φ · P
 *
 * @param state - a joint at one time
 * @returns F_d [N], with the load factor Φ it was found with
 * @source shigley ch. 8, load factor
 */
export const screwLoadOf = (state: ServiceState): Derived | undefined =>
  state.limits.find(({ mode }) => mode === 'screw-yield')?.demand;

/** Share of the pull that the screw feels at one time, Φ [-]. */
export const loadFactorOf = (state: ServiceState): Derived | undefined =>
  screwLoadOf(state)?.entries.find(({ symbol }) => symbol === LOAD_FACTOR)?.from;

const LOAD_FACTOR = 'Φ';

const sizeOf = ({ margin }: Margin): number => margin?.value ?? Number.MAX_VALUE;

function marginOfLimit(limit: Limit, factor: number, governing: ServiceState['by']): Margin {
  const { mode, capacity, demand } = limit;
  const held = capacity.characteristic;
  const row = { by: mode, held, asked: demand, governs: mode === governing };
  if (limit.factor === undefined) return row;
  const margin: Derived = {
    symbol: 'ψ',
    value: limit.factor / factor,
    unit: '-',
    formula: `${held.symbol}/(S · ${demand.symbol})`,
    entries: [entryFrom(held), entry('S', factor, '-'), entryFrom(demand)],
    source: 'own-model',
    standing: 'estimate',
  };
  const medianMargin = (margin.value * capacity.median.value) / held.value;
  return { ...row, margin, ...(medianMargin > margin.value ? { medianMargin } : {}) };
}

function marginOfCheck({ by, left, needed, margin }: ClosedCheck, governing: ServiceState['by']): Margin {
  return {
    by,
    held: left,
    asked: needed,
    governs: by === governing,
    margin: {
      symbol: 'ψ',
      value: margin,
      unit: '-',
      formula: `${left.symbol}/${needed.symbol}`,
      entries: [entryFrom(left), entryFrom(needed)],
      source: 'own-model',
      standing: 'estimate',
    },
  };
}
