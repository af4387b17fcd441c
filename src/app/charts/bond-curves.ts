import { bondBelow } from '../../core/bench/bond-rows.ts';
import type { SetupEvidence } from '../../core/bench/evidence.ts';
import { bondDensity, bondInterval } from '../../core/evidence/bond-prediction.ts';
import { PRIOR_DEVIATION, UNTESTED } from '../../core/pull-out/bond.ts';
import type { Derived } from '../../core/sources/derived.ts';
import { niceTicks } from './nice-ticks.ts';

export interface DensityPoint {
  readonly bond: number;
  readonly before: number;
  readonly after: number;
}

/** A coupon on the axis of bond factors. */
export interface BondMark {
  readonly testId: string;
  readonly says: 'broke' | 'held';
  readonly bond: Derived;
}

export interface BondCurves {
  readonly points: readonly DensityPoint[];
  readonly ticks: readonly number[];
  readonly greatest: number;
  /** Of the size that is drawn. */
  readonly marks: readonly BondMark[];
  /** Bond factors that a share of the next joints stays below. */
  readonly quantiles: readonly {
    readonly share: number;
    readonly before: Derived;
    readonly after: Derived;
  }[];
}

const SAMPLES = 160;
const STEPS = 6;
/** What is drawn of the wider of the two: 99 of 100 lie below. */
const DRAWN_SHARE = 0.96;

const SHARES = [0.05, 0.25, 0.5, 0.75, 0.95] as const;

/** Prior and posterior of the bond factor of the next joint of one size, over one axis from 0. */
export function bondCurves(setup: SetupEvidence, size: string): BondCurves {
  const { priorMedian, tested, findings } = setup;
  const before = { centre: Math.log(priorMedian), scale: PRIOR_DEVIATION, freedom: UNTESTED.freedom.value };
  const after = tested.bySize.get(size) ?? tested.unpulled;
  const marks = findings.flatMap(({ test, says, bond }): readonly BondMark[] =>
    test.insertId === size && bond !== undefined && (says === 'broke' || says === 'held')
      ? [{ testId: test.id, says, bond }]
      : [],
  );
  const widest = Math.max(bondInterval(before, DRAWN_SHARE).high, bondInterval(after, 0.9).high);
  const ticks = niceTicks(Math.max(widest, ...marks.map(({ bond }) => bond.value)), STEPS);
  const end = ticks.at(-1) ?? 1;
  const points = Array.from({ length: SAMPLES }, (_, index) => {
    const bond = (end * (index + 1)) / SAMPLES;
    return { bond, before: bondDensity(before, bond), after: bondDensity(after, bond) };
  });
  return {
    points,
    ticks,
    greatest: Math.max(...points.map((point) => Math.max(point.before, point.after))),
    marks,
    quantiles: SHARES.map((share) => ({ share, ...bondBelow(setup, size, share) })),
  };
}
