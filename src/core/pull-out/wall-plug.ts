import { infillStrength } from '../host/infill-strength.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { characteristicOf, UNTESTED } from './bond.ts';
import { lessCertain } from './less-certain.ts';
import type { InsertRule, Situation } from './situation.ts';

/**
 * Outside diameter of the plug of printed walls that can come out with the insert.
 *
 *     Dw = max(Dt + 2 · t, Dk)
 *
 * Walls are laid from the printed bore; where they do not reach the knurl the plug is the knurl's cylinder.
 *
 * @param situation - bore Dt [mm], wall t [mm], knurl Dk [mm]
 * @returns Dw [mm]
 * @source own-model plug of walls
 * @example bore 4.3 with walls of 1.93 mm gives 8.16 mm
 */
export function plugDiameter(situation: Pick<Situation, 'bore' | 'wall' | 'insert'>): Derived {
  const { bore, wall, insert } = situation;
  const knurl = insert.knurlDiameter.estimate;
  return {
    symbol: 'D_w',
    value: Math.max(bore.value + 2 * wall.value, knurl.value),
    unit: 'mm',
    formula: 'max(D_t + 2 · t, D_k)',
    entries: [entryFrom(bore), entryFrom(wall), entryFrom(knurl)],
    source: 'own-model',
    standing: 'estimate',
  };
}

/**
 * Force at which the walls round the insert come out of the infill as a plug.
 *
 *     F = τp · φ · π · Dw · (T − ts) + τp · π · Dw · ts + σa · π/4 · (Dw² − Dt²)
 *
 * Infill along the plug, solid skin ts at the face, and the plug's end torn off below the hole, which is not there
 * where the hole goes through. The three are added as if they broke together, which brittle prints do not quite do.
 *
 * @param situation - strengths τp, σa [MPa], infill share φ [-], depth T, top skin ts, bore Dt, plug Dw [mm]
 * @returns median F [N]
 * @source own-model plug of walls
 * @source gibson-ashby infill share
 */
export function wallPlugForce(situation: Situation): Derived {
  const { strengths, depth, floor, host, bore } = situation;
  const plug = plugDiameter(situation);
  const phi = infillStrength(host.infill);
  const sides = host.topSkin < depth.value ? 'skin-and-infill' : 'skin';
  const height = sides === 'skin' ? depth.value : phi.value * (depth.value - host.topSkin) + host.topSkin;
  // A hole that goes through has no plastic below its plug to tear off from.
  const goesThrough = floor.value <= 0;
  const end = goesThrough
    ? 0
    : strengths.alongAxis.value * (Math.PI / 4) * (plug.value ** 2 - bore.value ** 2);
  const entries = [entryFrom(strengths.printedShear), entryFrom(plug), entryFrom(depth)];
  if (sides === 'skin-and-infill') entries.push(entryFrom(phi), entry('t_s', host.topSkin, 'mm'));
  if (!goesThrough) entries.push(entryFrom(strengths.alongAxis), entryFrom(bore));
  return {
    symbol: 'F_wp',
    value: strengths.printedShear.value * Math.PI * plug.value * height + end,
    unit: 'N',
    formula: PLUG_FORMULAS[sides][goesThrough ? 'through' : 'blind'],
    entries,
    source: 'own-model',
    standing: 'estimate',
  };
}

/** By what shears along the plug, and by whether the hole ends in the part. */
const PLUG_FORMULAS = {
  skin: {
    through: 'τ_p · π · D_w · T',
    blind: 'τ_p · π · D_w · T + σ_a · π/4 · (D_w² − D_t²)',
  },
  'skin-and-infill': {
    through: 'τ_p · π · D_w · (φ · (T − t_s) + t_s)',
    blind: 'τ_p · π · D_w · (φ · (T − t_s) + t_s) + σ_a · π/4 · (D_w² − D_t²)',
  },
} as const;

/** Wall plug: not there where the walls fill a free boss. */
export const wallPlug: InsertRule = {
  of: 'insert',
  mode: 'wall-plug',
  // A part that bears on the face next to the insert holds the walls down: only the pull lifts them.
  path: (seat) => (seat === 'over-gap' ? 'clamp' : seat === 'far-side' ? 'none' : 'pull'),
  capacity: (situation) => {
    const boss = situation.host.bossDiameter;
    if (boss !== undefined && plugDiameter(situation).value >= boss) return undefined;
    const median = wallPlugForce(situation);
    const { printedShear, alongAxis } = situation.strengths;
    return {
      median,
      characteristic: characteristicOf(median, lessCertain(UNTESTED, printedShear, alongAxis)),
    };
  },
};
