import type { Capacity, FailureMode } from '../pull-out/limit.ts';
import { type CreepLaw, creepFactorOf } from '../relaxation/findley.ts';
import { type Derived, entry } from '../sources/derived.ts';

/** Modes of plastic that a lasting force wears down; pressed plastic already counts its long-term value. */
const SUSTAINED_MODES: ReadonlySet<FailureMode> = new Set<FailureMode>([
  'knurl-shear',
  'wall-plug',
  'boss-tear',
  'boss-split',
  'shoulder-punch',
]);

/**
 * What a plastic mode still bears when the force has lasted.
 *
 *     R(t) = R/(1 + m·tⁿ)
 *
 * Strength under a lasting force is taken to fall as the creep modulus at that temperature does: creep to rupture of
 * printed plastic is not published for inserts. Metal modes and pressed plastic are returned unchanged.
 *
 * @param mode - failure mode
 * @param capacity - median and characteristic value for a short load at service temperature [N]
 * @param law - creep of the host at service temperature, m and n [-]
 * @param hours - time under load t [h], ≥ 0
 * @returns both values [N] after the time
 * @source own-model strength falls as the creep modulus
 * @source findley-iso-899 power law of creep
 */
export function sustainedCapacity(
  mode: FailureMode,
  capacity: Capacity,
  law: CreepLaw,
  hours: number,
): Capacity {
  if (!SUSTAINED_MODES.has(mode) || hours === 0) return capacity;
  const creep = creepFactorOf(law, hours);
  const lasting = (short: Derived): Derived => ({
    symbol: 'R_t',
    value: short.value / creep,
    unit: short.unit,
    formula: 'R/c',
    entries: [
      { symbol: 'R', value: short.value, unit: short.unit, from: short },
      entry('c', creep, '-'),
      entry('t', hours, 'h'),
    ],
    source: 'own-model',
    standing: 'estimate',
  });
  return { median: lasting(capacity.median), characteristic: lasting(capacity.characteristic) };
}
