import type { InsertDimensions } from '../inserts/dimensions.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { Joint } from './joint.ts';
import { gripLength, isOpenBehind, screwLengths } from './screw-choice.ts';

/**
 * Between what lengths a screw must lie, with the way to both ends; see chooseScrew.
 *
 *     least = g + min(d, L)        greatest = max(g − sunk + deepest hole − m − 0.5 mm, g + L)
 *     greatest = g + L + 2 · d     where the screw may stand out behind
 *
 * @param joint - grip, thread, printed part, sunk [mm]
 * @param insert - length L [mm]
 * @param meltHeight - height that the displaced plastic fills m [mm]
 * @returns both ends [mm]
 * @source vdi-2230 run-out of 0.8 P
 */
export function screwLengthWays(
  joint: Joint,
  insert: InsertDimensions,
  meltHeight: Derived,
): { readonly least: Derived; readonly greatest: Derived } {
  const [grip, length] = [gripLength(joint, insert), insert.length.estimate];
  const ends = screwLengths(joint, {
    grip: grip.value,
    length: length.value,
    meltHeight: meltHeight.value,
  });
  const both = [entryFrom(grip), entryFrom(length)];
  const diameter = entry('d', joint.screw.thread.nominalDiameter, 'mm');
  const common = { source: 'own-model', standing: 'common-practice' } as const;
  const least: Derived = {
    symbol: 'l_least',
    value: ends.least,
    unit: 'mm',
    formula: 'g + min(d, L)',
    entries: [...both, diameter],
    ...common,
  };
  if (isOpenBehind(joint)) {
    const entries = [...both, diameter];
    return {
      least,
      greatest: {
        symbol: 'l_most',
        value: ends.most,
        unit: 'mm',
        formula: 'g + L + 2 · d',
        entries,
        ...common,
      },
    };
  }
  const { existing } = joint.holes;
  const isGiven = existing?.depth !== undefined;
  const deepest = isGiven ? entry('T', existing.depth, 'mm') : entry('part', joint.host.thickness, 'mm');
  return {
    least,
    greatest: {
      symbol: 'l_most',
      value: ends.most,
      unit: 'mm',
      formula: `max(g − sunk + ${isGiven ? 'T' : 'part − 1 mm'} − m − 0.5 mm, g + L)`,
      entries: [...both, entry('sunk', joint.sunk, 'mm'), deepest, entryFrom(meltHeight)],
      ...common,
    },
  };
}
