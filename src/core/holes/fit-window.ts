import type { InsertDimensions } from '../inserts/dimensions.ts';
import { normalProbability } from '../numerics/normal-distribution.ts';
import { type Derived, type Entry, entryFrom } from '../sources/derived.ts';

/** How much smaller than the pilot a bore may be for a hot insert still to find its way, mm (estimate). */
export const PILOT_MELTS_IN = 0.1;
/** Share of the intended bite that still counts as enough, [-] (estimate). */
export const ENOUGH_BITE = 0.7;

/** Where the printed bore must land, and the chance that it does. */
export interface FitWindow {
  /** Below: the pilot no longer drops in. */
  readonly smallest: Derived;
  /** Above: the knurl no longer bites enough. */
  readonly largest: Derived;
  /** Bore to be expected D, mm. */
  readonly expected: Entry;
  /** Its standard deviation s, mm. */
  readonly standardDeviation: Entry;
  readonly chance: Derived;
}

/**
 * Window for the printed bore and the chance of landing in it.
 *
 *     smallest = Dp − 0.10 mm
 *     largest  = Dk − 0.7 · (Dk − Dt)
 *     chance   = Φ[(largest − D)/s] − Φ[(smallest − D)/s]
 *
 * Normal scatter about the expected bore D: printer, hole to hole, caliper. Out-of-round holes are not in it.
 *
 * @param insert - pilot diameter Dp, knurl diameter Dk [mm]
 * @param bore - bore as intended Dt [mm]
 * @param scatter - expected bore D [mm] and standard deviation s [mm], > 0, as they are put in
 * @returns both ends [mm] and the chance [-], 0 … 1
 * @source own-model ends of the window
 * @example pilot 4.25, knurl 5.0, bore 4.30 mm gives 4.15 … 4.51 mm
 */
export function fitWindow(
  insert: InsertDimensions,
  bore: Derived,
  scatter: Pick<FitWindow, 'expected' | 'standardDeviation'>,
): FitWindow {
  const { expected, standardDeviation } = scatter;
  const knurl = insert.knurlDiameter.estimate;
  const pilot = insert.pilotDiameter.estimate;
  const smallest: Derived = {
    symbol: 'D_min',
    value: pilot.value - PILOT_MELTS_IN,
    unit: 'mm',
    formula: 'D_p − 0.10 mm',
    entries: [entryFrom(pilot)],
    source: 'own-model',
    standing: 'estimate',
  };
  const largest: Derived = {
    symbol: 'D_max',
    value: knurl.value - ENOUGH_BITE * (knurl.value - bore.value),
    unit: 'mm',
    formula: `D_k − 0.7 · (D_k − ${bore.symbol})`,
    entries: [entryFrom(knurl), entryFrom(bore)],
    source: 'own-model',
    standing: 'estimate',
  };
  const upTo = (diameter: number) => normalProbability((diameter - expected.value) / standardDeviation.value);
  const chance: Derived = {
    symbol: 'p',
    value: Math.max(0, upTo(largest.value) - upTo(smallest.value)),
    unit: '-',
    formula: 'max(0, Φ((D_max − D)/s) − Φ((D_min − D)/s))',
    entries: [entryFrom(largest), entryFrom(smallest), expected, standardDeviation],
    source: 'own-model',
    standing: 'estimate',
  };
  return { smallest, largest, expected, standardDeviation, chance };
}
