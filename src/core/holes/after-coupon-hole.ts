import { type CoreUnit, type Derived, type Entry, entryFrom } from '../sources/derived.ts';
import { boreDeviation, spreadEntries } from './bore-deviation.ts';
import { coefficientsOf } from './calibrate-holes.ts';
import { abscissaOf, lineAfter, lineOf } from './hole-line.ts';
import type { CurveFigures, HoleBehaviour } from './print-error.ts';

/**
 * The curve as sure as one more reading will make it; where it will then lie nobody knows.
 *
 *     V' = V − V·xxᵀ·V/(s_r² + u² + xᵀ·V·x)        x = (1, ln(D/4 mm))
 *
 * @param behaviour - curve now
 * @param coupon - diameter of the coupon hole D [mm], > 0; standard uncertainty u of reading it [mm], ≥ 0
 * @returns curve with its uncertainties after the reading, offset and slope unmoved
 * @source own-model Bayesian regression
 */
export function afterCouponHole(
  behaviour: HoleBehaviour,
  coupon: { readonly drawn: number; readonly standardUncertainty: number },
): HoleBehaviour {
  const x = abscissaOf(coupon.drawn);
  const { offset, slope, ceiling, repeatability, standing } = behaviour;
  const weight = 1 / (repeatability ** 2 + coupon.standardUncertainty ** 2);
  const { belief } = lineAfter(lineOf(behaviour), [{ x, y: offset.value + slope.value * x, weight }]);
  const { offset: a, slope: b, covariance } = coefficientsOf(belief);
  return {
    offset: { ...a, value: offset.value },
    slope: { ...b, value: slope.value },
    covariance,
    ...(ceiling === undefined ? {} : { ceiling }),
    repeatability,
    standing,
  };
}

/**
 * How sure the curve will be after one more reading, each number with its way; see afterCouponHole.
 *
 *     u_a1² = u_a² − (u_a² + x·u_ab)²/s_v²        u_b1² = u_b² − (u_ab + x·u_b²)²/s_v²        x = ln(D_c/4 mm)
 *     u_ab1 = u_ab − (u_a² + x·u_ab)·(u_ab + x·u_b²)/s_v²
 *
 * @param curves - before the reading and after it
 * @param coupon - diameter of the coupon hole D_c [mm]; standard uncertainty of reading it [mm]
 * @returns standard uncertainties of offset and slope [mm], their covariance [mm²]
 * @source own-model Bayesian regression
 */
export function figuresAfterCoupon(
  { before, after }: { readonly before: HoleBehaviour; readonly after: HoleBehaviour },
  coupon: { readonly drawn: Entry; readonly standardUncertainty: Entry },
): Partial<CurveFigures> {
  const spread: Derived = {
    ...boreDeviation(before, { drawn: coupon.drawn, pilotUncertainty: coupon.standardUncertainty }),
    symbol: 's_v',
  };
  const [offset, slope, both] = spreadEntries(before);
  const x = `ln(${coupon.drawn.symbol}/4 mm)`;
  const ofOffset = `(u_a² + ${x} · u_ab)`;
  const ofSlope = `(u_ab + ${x} · u_b²)`;
  const figure = (symbol: string, value: number, formula: string, unit: CoreUnit): Derived => ({
    symbol,
    value,
    unit,
    formula,
    entries: [offset, slope, both, coupon.drawn, entryFrom(spread)],
    source: 'own-model',
    standing: before.standing,
  });
  const { figures } = before;
  return {
    offsetUncertainty: figure('u_a1', after.offset.standardUncertainty, `√(u_a² − ${ofOffset}²/s_v²)`, 'mm'),
    slopeUncertainty: figure('u_b1', after.slope.standardUncertainty, `√(u_b² − ${ofSlope}²/s_v²)`, 'mm'),
    covariance: figure('u_ab1', after.covariance ?? 0, `u_ab − ${ofOffset} · ${ofSlope}/s_v²`, 'mm²'),
    ...(figures?.scatter ? { scatter: figures.scatter } : {}),
  };
}
