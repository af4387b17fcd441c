import type { Insert } from '../inserts/insert.ts';
import { insertDimensions } from '../inserts/insert-dimensions.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { settingInside } from '../joint/torque-window.ts';
import { type Derived, entryFrom, withWayChanged } from '../sources/derived.ts';
import { capacityOf, jointsOverLength } from './joints-over-length.ts';
import { bandOf } from './length-curve.ts';

/** The ways to what a point of lengthCurve shows. */
export interface LengthWays {
  readonly characteristic: Derived;
  readonly median: Derived;
  readonly upper: Derived;
  readonly jackOutTorque: Derived;
  /** Absent where no setting fits. */
  readonly dial?: Derived;
}

/**
 * The ways to the numbers of one point of lengthCurve.
 *
 *     R_20 = R²/R_k        T_ks = R · k_low
 *
 * @param joint - a joint that may be answered
 * @param insert - the insert whose diameters and plain parts are kept
 * @param at - length of the point [mm], and the lengths of the whole curve [mm], of which it is one
 * @returns what half, 19 of 20 and 1 of 20 hold [N]; torque that pulls the insert out, and setting [N·mm]
 * @source own-model knurl shear over length
 */
export function lengthWays(
  joint: AnswerableJoint,
  insert: Insert,
  { length, lengths }: { readonly length: number; readonly lengths: readonly number[] },
): LengthWays {
  const found = jointsOverLength(joint, insert, lengths)(length);
  if (found === undefined) throw new Error('a point of the curve is longer than what is not knurled');
  const { median, characteristic } = capacityOf(found.near, 'knurl-shear');
  const { dial, least, most } = found.asBuilt;
  const drawn = (derived: Derived) => withLengths(derived, lengthsOf(insert, length));
  return {
    median: drawn(median),
    characteristic: drawn(characteristic),
    upper: drawn(upperOf(median, characteristic)),
    jackOutTorque: drawn(pulledByScrew(median, found.near.conversion.ways.slippery)),
    ...(dial === undefined ? {} : { dial: drawn(settingInside(dial, { least, most: most.torque })) }),
  };
}

/** Length and knurled length of a point of the curve: nobody measured them, the length without knurl apart. */
function lengthsOf(insert: Insert, drawn: number): ReadonlyMap<string, Derived> {
  const { length, knurledLength } = insertDimensions(insert);
  const common = { unit: 'mm', source: 'own-model', standing: 'estimate' } as const;
  const L: Derived = { symbol: 'L', value: drawn, formula: 'L', entries: [], ...common };
  const plain: Derived = {
    symbol: 'l_n',
    value: length.estimate.value - knurledLength.estimate.value,
    formula: 'L − L_k',
    entries: [entryFrom(length.estimate), entryFrom(knurledLength.estimate)],
    ...common,
  };
  const knurled: Derived = {
    symbol: 'L_k',
    value: drawn - plain.value,
    formula: 'L − l_n',
    entries: [entryFrom(L), entryFrom(plain)],
    ...common,
  };
  return new Map([L, knurled].map((one) => [one.symbol, one]));
}

/** A derivation with other ways to some of its lengths, at any depth. */
const withLengths = (derived: Derived, lengths: ReadonlyMap<string, Derived>): Derived => ({
  ...derived,
  entries: derived.entries.map((one) => {
    const from = lengths.get(one.symbol);
    if (from !== undefined) return { symbol: one.symbol, value: one.value, unit: one.unit, from };
    return withWayChanged(one, (way) => withLengths(way, lengths));
  }),
});

/** What 1 of 20 joints hold: as far above the median as 19 of 20 lie below it, on the logarithm. */
const upperOf = (median: Derived, characteristic: Derived): Derived => ({
  symbol: 'R_20',
  value: bandOf({ median, characteristic }).upper,
  unit: median.unit,
  formula: characteristic.value > 0 ? 'R²/R_k' : 'R',
  entries: [{ ...entryFrom(median), symbol: 'R' }, entryFrom(characteristic)],
  source: characteristic.source,
  standing: characteristic.standing,
});

/** Torque on the screw that shears the knurl, at the low end of friction. */
const pulledByScrew = (median: Derived, slippery: Derived): Derived => ({
  symbol: 'T_ks',
  value: median.value * slippery.value,
  unit: 'N·mm',
  formula: `${median.symbol} · k_low`,
  entries: [entryFrom(median), entryFrom(slippery)],
  source: 'own-model',
  standing: median.standing,
});
