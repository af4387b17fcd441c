import { type Derived, entryFrom } from '../sources/derived.ts';
import { characteristicOf, UNTESTED } from './bond.ts';
import { insertRing } from './insert-ring.ts';
import { lessCertain } from './less-certain.ts';
import { pressedPlastic } from './pressed-plastic.ts';
import type { InsertRule, ModeRule, Situation } from './situation.ts';

/**
 * Ring on which a far-side insert bears against its shoulder.
 *
 *     A = π/4 · (Dk² − dh²)
 *
 * @param situation - knurl Dk and through hole dh [mm]
 * @returns A [mm²], 0 when the hole is as wide as the insert
 * @source own-model annulus
 * @example knurl 6.86, hole 5.5 mm gives 13.2 mm²
 */
export const shoulderArea = (situation: Situation): Derived => insertRing('A_sh', situation);

const farSideOnly: ModeRule['path'] = (seat) => (seat === 'far-side' ? 'clamp' : 'none');

/**
 * Shoulder yields: the clamp force presses a far-side insert into the plastic it stands against.
 *
 *     F = σc · A        long-term: F · E(1000 h)/E
 *
 * The long-term value is the characteristic one, as everywhere where plastic is pressed for years, unless scatter
 * between set-ups gives less.
 *
 * @source own-model pressure on the shoulder
 */
export const shoulderYield: InsertRule = {
  of: 'insert',
  mode: 'shoulder-yield',
  path: farSideOnly,
  capacity: (situation) => {
    const area = shoulderArea(situation);
    const { compressive } = situation.strengths;
    return pressedPlastic({ symbol: 'F_sy', area, compressive, polymer: situation.material });
  },
};

/**
 * Shoulder punched through: a far-side insert is drawn through the plastic in front of it.
 *
 *     F = τp · π · Dk · f        f = thickness of the shoulder
 *
 * @source own-model punching shear
 */
export const shoulderPunch: InsertRule = {
  of: 'insert',
  mode: 'shoulder-punch',
  path: farSideOnly,
  capacity: (situation) => {
    const knurl = situation.insert.knurlDiameter.estimate;
    const { printedShear } = situation.strengths;
    const { floor } = situation;
    const median: Derived = {
      symbol: 'F_sp',
      value: printedShear.value * Math.PI * knurl.value * floor.value,
      unit: 'N',
      formula: 'τ_p · π · D_k · f',
      entries: [entryFrom(printedShear), entryFrom(knurl), entryFrom(floor)],
      source: 'own-model',
      standing: 'estimate',
    };
    return { median, characteristic: characteristicOf(median, lessCertain(UNTESTED, printedShear)) };
  },
};
