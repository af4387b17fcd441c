import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { Situation } from './situation.ts';
import { plugDiameter } from './wall-plug.ts';

/** Knurl diameters beyond which more plastic round the insert adds less than a tenth to its hoop strength. */
const WIDEST_RING_PER_KNURL = 3;
/**
 * Outside diameter of the ring that resists splitting.
 *
 *     Do = Dw + ρ · (Dm − Dw)        infill beyond the walls counts by its density
 *     Do = Dm                        where the walls reach as far
 *     Dm = min(Db, 3·Dk)             3·Dk without a free boss
 *
 * @param situation - bore, wall, knurl, boss [mm], infill density ρ [-]
 * @returns Do [mm], above Dk whenever a wall stands round the knurl
 * @source own-model smeared infill
 */
export function ringDiameter(situation: Situation): Derived {
  const plug = plugDiameter(situation);
  const knurl = situation.insert.knurlDiameter.estimate;
  const { bossDiameter, infill } = situation.host;
  const far = WIDEST_RING_PER_KNURL * knurl.value;
  const inBoss = bossDiameter !== undefined;
  const widest = inBoss ? Math.min(bossDiameter, far) : far;
  const ends = inBoss ? [entry('D_b', bossDiameter, 'mm'), entryFrom(knurl)] : [entryFrom(knurl)];
  const filled = plug.value >= widest;
  // One literal: a ranking takes twice as long where numbers like this are put together by spreads.
  return {
    symbol: 'D_o',
    value: filled ? widest : plug.value + infill.density * (widest - plug.value),
    unit: 'mm',
    formula: RING_FORMULAS[filled ? 'filled' : 'smeared'][inBoss ? 'boss' : 'part'],
    entries: filled
      ? [entryFrom(plug), ...ends]
      : [entryFrom(plug), entry('ρ', infill.density, '-'), ...ends],
    source: 'own-model',
    standing: 'estimate',
  };
}

/** By whether the walls fill the widest ring that counts, and by what ends it. */
const RING_FORMULAS = {
  filled: { boss: 'min(D_w, D_b, 3 · D_k)', part: 'min(D_w, 3 · D_k)' },
  smeared: { boss: 'D_w + ρ · (min(D_b, 3 · D_k) − D_w)', part: 'D_w + ρ · (3 · D_k − D_w)' },
} as const;
