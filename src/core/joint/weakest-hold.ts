import type { FailureMode } from '../pull-out/limit.ts';
import { leastBy } from './least-by.ts';
import type { ActiveMode } from './torque-window.ts';

/** Modes that a pull on the insert loads, wherever the part bears: what "holds" means. */
const HOLDING_MODES: ReadonlySet<FailureMode> = new Set<FailureMode>([
  'knurl-shear',
  'wall-plug',
  'boss-tear',
  'boss-split',
  'shoulder-yield',
  'shoulder-punch',
]);

/**
 * The mode that a growing pull on the insert reaches first.
 *
 * @param actives - every mode of the joint, at least one of them a holding one
 * @returns the holding mode with the smallest characteristic force
 * @source own-model the weakest of all modes
 */
export const weakestHold = (actives: readonly ActiveMode[]): ActiveMode =>
  leastBy(
    actives.filter(({ mode }) => HOLDING_MODES.has(mode)),
    ({ capacity }) => capacity.characteristic.value,
  ).one;
