import { withoutDust } from '../numerics/binary-dust.ts';
import { normalProbability } from '../numerics/normal-distribution.ts';
import { type Derived, type Entry, entry, entryAs, entryFrom } from '../sources/derived.ts';
import { afterCouponHole, figuresAfterCoupon } from './after-coupon-hole.ts';
import { boreDeviation, type DrawnHole } from './bore-deviation.ts';
import type { FitWindow } from './fit-window.ts';
import { boreDeviationOf, type HoleBehaviour } from './print-error.ts';

/** The hole that shall be drawn, and how surely its pilot is known; mm. */
export interface WantedHole extends DrawnHole {
  /** Where the bore must land, and the one that is expected; absent: no chance is given. */
  readonly window?: Pick<FitWindow, 'smallest' | 'largest' | 'expected'>;
}

/** What the next coupon hole is worth. */
export interface NextCouponHole {
  /** Diameter to print it at, mm. */
  readonly drawn: Derived;
  readonly deviationBefore: Derived;
  readonly deviationAfter: Derived;
  /** Both with the hole drawn for the curve of the time, so that the expected bore stays where it is wanted. */
  readonly chance?: { readonly before: Derived; readonly after: Derived; readonly gain: Derived };
}

/** Diameters from one to another in even steps, both ends if they fall on it, mm; for nextCouponHole. */
export function couponDiameters(range: {
  readonly least: number;
  readonly greatest: number;
  readonly step: number;
}): readonly number[] {
  const { least, greatest, step } = range;
  const steps = Math.floor(withoutDust((greatest - least) / step));
  return Array.from({ length: steps + 1 }, (_, index) => withoutDust(least + index * step));
}

/**
 * At which diameter to print one more coupon hole, and what it gains where a hole is wanted.
 *
 *     the D among the candidates with the smallest s_1(D) = s after that reading, at the wanted hole
 *
 * Of equals the one nearest to the wanted hole. The repeatability is taken as it is believed now: no hole makes the
 * printer repeat better. So most of s remains where the curve is known.
 *
 * @param behaviour - curve now, repeatability > 0
 * @param wanted - hole to be drawn [mm], pilot's uncertainty [mm], window of the bore [mm] or none
 * @param coupon - candidates D [mm], at least one, each > 0; standard uncertainty u of reading it [mm], ≥ 0
 * @returns best diameter, standard deviation of the bore before and after [mm], chance of fitting before and after [-]
 * @source own-model Bayesian regression
 */
export function nextCouponHole(
  behaviour: HoleBehaviour,
  wanted: WantedHole,
  coupon: { readonly candidates: readonly number[]; readonly standardUncertainty: Entry },
): NextCouponHole {
  const reading = entryAs('u_D', coupon.standardUncertainty);
  const standardUncertainty = reading.value;
  const tried = coupon.candidates.map((drawn) => {
    const after = afterCouponHole(behaviour, { drawn, standardUncertainty });
    return {
      drawn,
      after,
      deviation: boreDeviationOf(after, wanted.drawn.value, wanted.pilotUncertainty?.value ?? 0),
      away: Math.abs(drawn - wanted.drawn.value),
    };
  });
  const best = tried.reduce((one, other) => (isBetter(other, one) ? other : one));
  const before = boreDeviation(behaviour, wanted);
  const figures = figuresAfterCoupon(
    { before: behaviour, after: best.after },
    { drawn: entry('D_c', best.drawn, 'mm'), standardUncertainty: reading },
  );
  const after: Derived = { ...boreDeviation({ ...best.after, figures }, wanted), symbol: 's_1' };
  const drawn: Derived = {
    symbol: 'D_c',
    value: best.drawn,
    unit: 'mm',
    formula: 'diameter after which s_1 is least',
    entries: [reading, entryFrom(before), entryFrom(after)],
    source: 'own-model',
    standing: behaviour.standing,
  };
  const base = { drawn, deviationBefore: before, deviationAfter: after };
  return wanted.window === undefined ? base : { ...base, chance: chanceOf(wanted.window, before, after) };
}

interface Tried {
  readonly deviation: number;
  readonly away: number;
}

const isBetter = (one: Tried, other: Tried): boolean =>
  one.deviation < other.deviation || (one.deviation === other.deviation && one.away < other.away);

function chanceOf(
  { smallest, largest, expected }: NonNullable<WantedHole['window']>,
  before: Derived,
  after: Derived,
): NonNullable<NextCouponHole['chance']> {
  const fits = (symbol: 'p' | 'p_1', s: Derived): Derived => ({
    symbol,
    value:
      normalProbability((largest.value - expected.value) / s.value) -
      normalProbability((smallest.value - expected.value) / s.value),
    unit: '-',
    formula: `Φ((D_max − D)/${s.symbol}) − Φ((D_min − D)/${s.symbol})`,
    entries: [entryFrom(largest), entryFrom(smallest), expected, entryFrom(s)],
    source: 'own-model',
    standing: 'estimate',
  });
  const now = fits('p', before);
  const then = fits('p_1', after);
  const gain: Derived = {
    symbol: 'Δ_p',
    value: then.value - now.value,
    unit: '-',
    formula: 'p_1 − p',
    entries: [entryFrom(then), entryFrom(now)],
    source: 'own-model',
    standing: 'estimate',
  };
  return { before: now, after: then, gain };
}
