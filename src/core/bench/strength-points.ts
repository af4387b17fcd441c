import { insertDimensions } from '../inserts/insert-dimensions.ts';
import type { Derived } from '../sources/derived.ts';
import { type BenchTest, hasGivenWay, loadAtInsert } from './bench-test.ts';
import type { SetupEvidence } from './evidence.ts';
import { likeReadings } from './like-readings.ts';

/** What strength is put over: knurled length Lk or knurl diameter Dk. */
export type Dimension = 'length' | 'diameter';

/** Sizes within this are one size, mm: inserts of one kind differ by as much (estimate). */
export const SAME_SIZE: Readonly<Record<Dimension, number>> = { length: 0.2, diameter: 0.1 };

/** One coupon that gave way. */
export interface StrengthPoint extends Readonly<Record<Dimension, number>> {
  readonly test: BenchTest;
  /** At the insert, N or N·mm. */
  readonly load: number;
  /** The way to each of these; absent: they are only asked for. */
  readonly from?: Readonly<Record<Dimension | 'load', Derived>>;
}

/** Coupons of one kind of test and, where only one dimension is looked at, of one size in the other. */
export interface StrengthGroup {
  readonly kind: BenchTest['kind'];
  /** Ends of the dimension that is kept, mm; absent where none is. */
  readonly kept?: { readonly of: Dimension; readonly least: number; readonly greatest: number };
  readonly points: readonly StrengthPoint[];
  /** Coupons of this kind that held, or broke elsewhere. */
  readonly held: number;
}

/** The dimensions that strength is put over at once. */
export const PUT_OVER = {
  length: ['length'],
  diameter: ['diameter'],
  both: ['length', 'diameter'],
} as const satisfies Record<string, readonly Dimension[]>;
export type PutOver = keyof typeof PUT_OVER;

/**
 * Coupons of a set-up whose strengths may be put over a dimension.
 *
 * Loads at the insert as they were measured, one kind of test each. Over length alone, coupons of one diameter; over
 * diameter alone, of one length: else the other would speak through it.
 *
 * @param setup - what the tests of one set-up say
 * @param over - what strength is put over
 * @returns groups in the order of their kinds, then by the size that is kept
 * @source own-model grouping of tests
 */
export function strengthGroups({ findings }: SetupEvidence, over: PutOver): readonly StrengthGroup[] {
  const kinds = [...new Set(findings.map(({ test }) => test.kind))];
  return kinds.flatMap((kind): readonly StrengthGroup[] => {
    const ofKind = findings.map(({ test }) => test).filter((test) => test.kind === kind);
    const points = ofKind.filter(hasGivenWay).flatMap(pointOf);
    if (points.length === 0) return [];
    const held = ofKind.filter((test) => !hasGivenWay(test)).length;
    if (over === 'both') return [{ kind, points, held }];
    const of = over === 'length' ? 'diameter' : 'length';
    return likeReadings(points, (point) => point[of], SAME_SIZE[of]).map(
      ({ least, greatest, items }): StrengthGroup => ({
        kind,
        kept: { of, least, greatest },
        points: items,
        held,
      }),
    );
  });
}

function pointOf(test: BenchTest): readonly StrengthPoint[] {
  if (test.insert === undefined) return [];
  const dimensions = insertDimensions(test.insert);
  const from = {
    length: dimensions.knurledLength.estimate,
    diameter: dimensions.knurlDiameter.estimate,
    load: loadAtInsert(test),
  };
  return [
    {
      test,
      length: from.length.value,
      diameter: from.diameter.value,
      load: from.load.value,
      from,
    },
  ];
}
