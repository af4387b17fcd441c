import { bondInterval } from '../evidence/bond-prediction.ts';
import { insertDimensions } from '../inserts/insert-dimensions.ts';
import { studentQuantileWay } from '../numerics/quantile-ways.ts';
import {
  type Bond,
  bondFactor,
  characteristicOf,
  type LogScatter,
  type TestedBond,
  testedBond,
  UNTESTED,
} from '../pull-out/bond.ts';
import type { Capacity } from '../pull-out/limit.ts';
import { type Derived, entryFrom } from '../sources/derived.ts';
import type { SetupEvidence } from './evidence.ts';

/** The bond factor of the next joint of one size, or of the sizes that nobody pulled. */
export interface BondRow {
  /** Absent: of every size that was not pulled. */
  readonly insertId?: string;
  /** Coupons of this size that spoke; those that broke among them. */
  readonly coupons: number;
  readonly broke: number;
  /** Knurled length over knurl diameter of the coupons, [-]; absent with the size. */
  readonly slenderness?: Derived;
  readonly found: Capacity;
  /** Ends between which 9 of 10 lie. */
  readonly low: Derived;
  readonly high: Derived;
}

export interface BondRows {
  /** Without a test, of every size. */
  readonly before: Pick<BondRow, 'found' | 'low' | 'high'>;
  readonly rows: readonly BondRow[];
}

/** Share of the bond factors between the ends that are shown. */
export const INTERVAL_SHARE = 0.9;

/**
 * Knurled length over knurl diameter: coupons of another ratio say less, since shear is uneven along a long knurl.
 *
 *     λ = Lk/Dk
 *
 * @param insert - readings of an insert
 * @returns λ [-]
 * @source own-model how far a bond factor carries over
 */
export function slendernessOf(insert: Parameters<typeof insertDimensions>[0]): Derived {
  const { knurledLength, knurlDiameter } = insertDimensions(insert);
  return {
    symbol: 'λ_k',
    value: knurledLength.estimate.value / knurlDiameter.estimate.value,
    unit: '-',
    formula: 'L_k/D_k',
    entries: [entryFrom(knurledLength.estimate), entryFrom(knurlDiameter.estimate)],
    source: 'own-model',
    standing: knurledLength.estimate.standing,
  };
}

/**
 * Bond factors of a set-up before and after its tests, as a table shows them.
 *
 *     median η, characteristic η·exp(−t·s), ends exp(ln η ± t·s) of 9 in 10
 *
 * @param setup - what the tests of one set-up say
 * @returns the estimate without tests, and a row for each size that was pulled and for all others [-]
 * @source own-model bond factor of a set-up
 */
export function bondRows({ setting, tested, findings }: SetupEvidence): BondRows {
  const rowOf = (one: TestedBond) => rowOfBond(testedBond(one), one.centre);
  const sizes = [...tested.bySize].map(([insertId, one]): BondRow => {
    const own = findings.filter(({ test }) => test.insertId === insertId);
    const insert = own[0]?.test.insert;
    return {
      insertId,
      coupons: own.length,
      broke: own.filter(({ says }) => says === 'broke').length,
      ...(insert === undefined ? {} : { slenderness: slendernessOf(insert) }),
      ...rowOf(one),
    };
  });
  const prior = { factor: bondFactor(setting), scatter: UNTESTED };
  return {
    before: rowOfBond(prior, Math.log(prior.factor.value)),
    rows: [...sizes, { coupons: 0, broke: 0, ...rowOf(tested.unpulled) }],
  };
}

function rowOfBond({ factor, scatter }: Pick<Bond, 'factor' | 'scatter'>, centre: number) {
  const { low, high } = bondInterval(
    { centre, scale: scatter.deviation.value, freedom: scatter.freedom.value },
    INTERVAL_SHARE,
  );
  return {
    found: { median: factor, characteristic: characteristicOf(factor, scatter) },
    low: endOf({ symbol: 'η_low', value: low, formula: 'η · exp(−t · s)' }, factor, scatter),
    high: endOf({ symbol: 'η_high', value: high, formula: 'η · exp(t · s)' }, factor, scatter),
  };
}

function endOf(
  end: Pick<Derived, 'symbol' | 'value' | 'formula'>,
  factor: Derived,
  { quantile, deviation, source }: LogScatter,
): Derived {
  const entries = [entryFrom(factor), quantile, deviation];
  return { ...end, unit: '-', entries, source, standing: factor.standing };
}

/**
 * Bond factor that a share of the next joints stays below, before and after the tests.
 *
 *     η · exp(t · s)        t quantile of Student's t at the share
 *
 * @param setup - what the tests of one set-up say
 * @param size - id of the insert; of one that nobody pulled, what is said of every other
 * @param share - [-], 0 < share < 1
 * @returns bond factor without the tests and with them [-]
 * @source own-model bond factor of a set-up
 */
export function bondBelow(
  { setting, tested }: Pick<SetupEvidence, 'setting' | 'tested'>,
  size: string,
  share: number,
): { readonly before: Derived; readonly after: Derived } {
  const after = testedBond(tested.bySize.get(size) ?? tested.unpulled);
  return {
    before: belowOf({ factor: bondFactor(setting), scatter: UNTESTED }, share),
    after: belowOf(after, share),
  };
}

function belowOf({ factor, scatter }: Pick<Bond, 'factor' | 'scatter'>, share: number): Derived {
  const t = studentQuantileWay('t', { share, freedom: scatter.freedom });
  return {
    symbol: 'η_p',
    value: factor.value * Math.exp(t.value * scatter.deviation.value),
    unit: '-',
    formula: 'η · exp(t · s)',
    entries: [entryFrom(factor), entryFrom(t), scatter.deviation],
    source: scatter.source,
    standing: factor.standing,
  };
}
