import type { Derived } from '../sources/derived.ts';
import { yieldPreload } from '../torque/yield-preload.ts';
import type { JointRule } from './situation.ts';

/** Heads whose socket leaves less than the thread's own strength, [-] (ISO 7380-1, ISO 10642; figure from memory). */
const REDUCED_HEAD = 0.8;

/**
 * Screw yields while it is tightened: tension and torsion together.
 *
 *     FM = As · Rp/√{1 + 3 · [3/2 · (d2/d0) · (P/(π·d2) + μG/cos 30°)]²}
 *
 * At the low end of thread friction, where a torque gives the highest force. Button and countersunk heads are taken
 * at 80 %. The minimum yield strength of the class: median and characteristic value are the same minimum.
 *
 * @source vdi-2230 permissible assembly preload, ν = 1
 * @source iso-7380-1 reduced loadability
 */
export const screwYields: JointRule = {
  of: 'joint',
  mode: 'screw-yield',
  path: () => 'clamp',
  capacity: ({ screw }) => {
    const whole = yieldPreload({
      thread: screw.thread,
      yieldStrength: screw.propertyClass.yieldStrengthMin,
      threadFriction: screw.friction.thread.low,
      utilisation: 1,
    });
    const share = screw.head.shape === 'cylindrical' ? 1 : REDUCED_HEAD;
    const median: Derived =
      share === 1
        ? whole
        : {
            ...whole,
            value: share * whole.value,
            formula: `0.8 · ${whole.formula}`,
          };
    return { median, characteristic: { ...median, symbol: 'R_k' } };
  },
};
