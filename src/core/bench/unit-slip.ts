import type { SettingMethod } from '../inserts/insert.ts';
import { bondFactor } from '../pull-out/bond.ts';
import { toCore } from '../units/convert.ts';
import type { TestFinding } from './evidence.ts';

/** Units of force that a hanging scale shows. */
export type ScaleUnit = 'kgf' | 'N';

/** How many times the usual share of the ideal shear cylinder, or which part of it, puts its unit in doubt, [-] (estimate). */
const DOUBTFUL = 3;

/**
 * The unit that the number of a test was read in, more likely than the one it bears.
 *
 *     in doubt: |ln(r/η)| > ln 3 and |ln(r · k/η)| < ln 3        r = R/R1, k = 1/g for kgf, g for N
 *
 * A test in doubt speaks all the same where nothing else is wrong with it: a bond may be that weak. One that only held
 * may be as low as it likes.
 *
 * @param finding - what the test says, R and R1 [N]
 * @param unit - of its reading
 * @returns the other unit of a scale; undefined where its own is not in doubt
 * @source own-model slip of the unit
 * @example 107 N on an insert that bears 1,311 N: kgf
 */
export function unitInstead(finding: TestFinding, unit: ScaleUnit): ScaleUnit | undefined {
  const { test, says, bond, fault } = finding;
  if (test.setting === 'screwed-in' || test.setting === 'nut') return undefined;
  const share = fault?.code === 'far-from-model' ? fault.load / fault.model : bond?.value;
  if (share === undefined) return undefined;
  const times = share / usualShare(test.setting);
  const inOther = unit === 'kgf' ? times / GRAVITY : times * GRAVITY;
  if (isUsual(times) || !isUsual(inOther)) return undefined;
  if (unit === 'kgf') return 'N';
  return says === 'held' ? undefined : 'kgf';
}

const GRAVITY = toCore(1, 'kgf');
const usualShare = (setting: SettingMethod): number => bondFactor(setting).value;
const isUsual = (times: number): boolean => Math.abs(Math.log(times)) < Math.log(DOUBTFUL);
