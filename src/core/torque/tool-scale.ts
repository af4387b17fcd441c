import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { toCore } from '../units/convert.ts';

/** Force and arm that make one unit of a scale, N and mm. */
const FORCE_AND_ARM = {
  cN·m: { force: 0.01, arm: toCore(1, 'm') },
  lbf·in: { force: toCore(1, 'lbf'), arm: toCore(1, 'in') },
  kgf·cm: { force: toCore(1, 'kgf'), arm: toCore(1, 'cm') },
} as const;

/** Units that scales of torque tools are marked in beside N·m. */
export type ScaleUnit = keyof typeof FORCE_AND_ARM;
export const SCALE_UNITS = Object.keys(FORCE_AND_ARM) as ScaleUnit[];

/**
 * A torque as the number on the scale of a tool that is marked in another unit.
 *
 *     n_T = T/(F_u · l_u)        F_u force and l_u arm of one unit: 1 lbf at 1 in
 *
 * @param torque - T [N·mm]
 * @param unit - of the scale [-]
 * @returns n_T [-], so many of the unit
 * @source nist-sp-811 exact definitions
 * @example 1 N·m is 8.85 lbf·in
 */
export function torqueOnScale(torque: Derived, unit: ScaleUnit): Derived {
  const { force, arm } = FORCE_AND_ARM[unit];
  return {
    symbol: 'n_T',
    value: torque.value / (force * arm),
    unit: '-',
    formula: `${torque.symbol}/(F_u · l_u)`,
    entries: [entryFrom(torque), entry('F_u', force, 'N'), entry('l_u', arm, 'mm')],
    source: 'nist-sp-811',
    standing: torque.standing,
  };
}
