import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { HoleBehaviour } from './print-error.ts';

type CurveNumber = 'offset' | 'offsetUncertainty' | 'slope' | 'slopeUncertainty' | 'scatter';

/** The numbers of a curve of errors, mm: offset, its change with the diameter, scatter from hole to hole. */
export type CurveFigures = Readonly<Record<CurveNumber, Derived>>;

const SYMBOLS = {
  offset: 'a',
  offsetUncertainty: 'u_a',
  slope: 'b',
  slopeUncertainty: 'u_b',
  scatter: 's_r',
} as const satisfies Record<CurveNumber, string>;

const BEFORE = {
  offset: 'a_0',
  offsetUncertainty: 'u_a0',
  slope: 'b_0',
  slopeUncertainty: 'u_b0',
  scatter: 's_0',
} as const satisfies Record<CurveNumber, string>;

const CHANGES = {
  offset: 'Δ_a',
  offsetUncertainty: 'Δ_ua',
  slope: 'Δ_b',
  slopeUncertainty: 'Δ_ub',
  scatter: 'Δ_s',
} as const satisfies Record<CurveNumber, string>;

const valuesOf = ({ offset, slope, repeatability }: HoleBehaviour): Record<CurveNumber, number> => ({
  offset: offset.value,
  offsetUncertainty: offset.standardUncertainty,
  slope: slope.value,
  slopeUncertainty: slope.standardUncertainty,
  scatter: repeatability,
});

const each = (figure: (name: CurveNumber) => Derived): CurveFigures => ({
  offset: figure('offset'),
  offsetUncertainty: figure('offsetUncertainty'),
  slope: figure('slope'),
  slopeUncertainty: figure('slopeUncertainty'),
  scatter: figure('scatter'),
});

/**
 * The numbers of the curve that is assumed before any reading.
 *
 * @param prior - curve before the readings
 * @returns each number [mm], as its table has it
 * @source hole-metrology-note slope
 * @source own-model offset, its uncertainty and the scatter, judged
 */
export function assumedFigures(prior: HoleBehaviour): CurveFigures {
  const values = valuesOf(prior);
  return each((name) => ({
    symbol: BEFORE[name],
    value: values[name],
    unit: 'mm',
    formula: BEFORE[name],
    entries: [],
    source: name === 'slope' ? 'hole-metrology-note' : 'own-model',
    standing: prior.standing,
  }));
}

/**
 * The numbers of the curve after the readings, as what was assumed and what the readings changed; see calibrateHoles.
 *
 *     a = a0 + Δa        and so on
 *
 * @param assumed - of assumedFigures
 * @param after - curve after the readings
 * @param count - holes read n [-]
 * @returns each number [mm]
 * @source own-model Bayesian regression
 */
export function movedFigures(assumed: CurveFigures, after: HoleBehaviour, count: number): CurveFigures {
  const values = valuesOf(after);
  return each((name) => ({
    symbol: SYMBOLS[name],
    value: values[name],
    unit: 'mm',
    formula: `${BEFORE[name]} + ${CHANGES[name]}`,
    entries: [
      entryFrom(assumed[name]),
      entry(CHANGES[name], values[name] - assumed[name].value, 'mm'),
      entry('n', count, '-'),
    ],
    source: after.standing === 'measured' ? 'your-measurement' : 'hole-metrology-note',
    standing: after.standing,
  }));
}
