import type { Capacity, FailureMode, LoadPath } from '../pull-out/limit.ts';
import { creepFactorOf } from '../relaxation/findley.ts';
import { creepEntry, type PolymerCreep } from '../relaxation/polymer-creep.ts';
import { type Derived, type Entry, entry, entryBy, type LateEntry } from '../sources/derived.ts';

/** Modes of plastic that a lasting force wears down; pressed plastic already counts its long-term value. */
const SUSTAINED_MODES: ReadonlySet<FailureMode> = new Set<FailureMode>([
  'knurl-shear',
  'wall-plug',
  'boss-tear',
  'boss-split',
  'shoulder-punch',
]);

/** What a time under load does to the printed part: how it has crept, and what is left of the clamp force on it. */
export interface Wear {
  readonly creep: PolymerCreep;
  /** h, > 0 */
  readonly hours: number;
  /** The most that it may have crept by then, [-], ≥ 1. */
  readonly factor: number;
  /** Share of the clamp force that then loads it, [-]; see preloadOnCreptHost. */
  readonly left: LateEntry;
}

/** Whether a lasting force wears a mode down: plastic that the clamp force or the pull loads. */
export const isWorn = (mode: FailureMode, path: LoadPath): boolean =>
  path !== 'torque' && SUSTAINED_MODES.has(mode);

/**
 * What a plastic mode still bears when the force has lasted.
 *
 *     R(t) = R/(1 + m·tⁿ)
 *
 * Strength under a lasting force is taken to fall as the creep modulus at that temperature does: creep to rupture of
 * printed plastic is not published for inserts. Where little is known of the creep the characteristic value takes the
 * most of it, the median what is expected. Metal modes and pressed plastic are returned unchanged.
 *
 * @param mode - failure mode
 * @param capacity - median and characteristic value for a short load at service temperature [N]
 * @param creep - of the host at service temperature, m and n [-]
 * @param hours - time under load t [h], ≥ 0
 * @returns both values [N] after the time
 * @source own-model strength falls as the creep modulus
 * @source findley-iso-899 power law of creep
 */
export function sustainedCapacity(
  mode: FailureMode,
  capacity: Capacity,
  creep: PolymerCreep,
  hours: number,
): Capacity {
  if (!SUSTAINED_MODES.has(mode) || hours === 0) return capacity;
  const lasting = (short: Derived, c: Entry): Derived => ({
    symbol: 'R_t',
    value: short.value / c.value,
    unit: short.unit,
    formula: 'R/c',
    entries: [{ symbol: 'R', value: short.value, unit: short.unit, from: short }, c, entry('t', hours, 'h')],
    source: 'own-model',
    standing: 'estimate',
  });
  return {
    median: lasting(
      capacity.median,
      entryBy('c', creepFactorOf(creep.middle, hours), '-', (steps) =>
        steps.creepFactorWay(creep, 'middle', hours),
      ),
    ),
    characteristic: lasting(capacity.characteristic, creepEntry(creep, hours)),
  };
}
