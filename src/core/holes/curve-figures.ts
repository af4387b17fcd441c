import { type CoreUnit, type Derived, type Entry, entryAs, entryFrom } from '../sources/derived.ts';
import { errorOfPoint, type HolePoint, LISTED_HOLES, uncertaintyEntries } from './hole-point.ts';
import type { CurveFigures, HoleBehaviour } from './print-error.ts';

type CurveNumber = 'offset' | 'offsetUncertainty' | 'slope' | 'slopeUncertainty' | 'scatter';

/** The numbers that are assumed of every printer. */
export type AssumedFigures = Readonly<Record<CurveNumber, Derived>>;

/** Symbol of a number after the readings and before them, and the number itself. */
interface NamedNumber {
  readonly symbol: string;
  readonly before: string;
  readonly of: (behaviour: HoleBehaviour) => number;
}

const NUMBERS: Readonly<Record<CurveNumber, NamedNumber>> = {
  offset: { symbol: 'a', before: 'a_0', of: ({ offset }) => offset.value },
  offsetUncertainty: { symbol: 'u_a', before: 'u_a0', of: ({ offset }) => offset.standardUncertainty },
  slope: { symbol: 'b', before: 'b_0', of: ({ slope }) => slope.value },
  slopeUncertainty: { symbol: 'u_b', before: 'u_b0', of: ({ slope }) => slope.standardUncertainty },
  scatter: { symbol: 's_r', before: 's_0', of: ({ repeatability }) => repeatability },
};

/**
 * The numbers of the curve that is assumed before any reading.
 *
 * @param prior - curve before the readings
 * @returns each number [mm], as its table has it
 * @source hole-metrology-note slope
 * @source own-model offset, its uncertainty and the scatter, judged
 */
export function assumedFigures(prior: HoleBehaviour): AssumedFigures {
  const figure = (name: CurveNumber): Derived => ({
    symbol: NUMBERS[name].before,
    value: NUMBERS[name].of(prior),
    unit: 'mm',
    formula: NUMBERS[name].before,
    entries: [],
    source: name === 'slope' ? 'hole-metrology-note' : 'own-model',
    standing: prior.standing,
  });
  return {
    offset: figure('offset'),
    offsetUncertainty: figure('offsetUncertainty'),
    slope: figure('slope'),
    slopeUncertainty: figure('slopeUncertainty'),
    scatter: figure('scatter'),
  };
}

/**
 * The numbers of the curve after the readings; see calibrateHoles.
 *
 * All come of one regression, whose values put in stand with the offset.
 *
 * @param assumed - of assumedFigures
 * @param after - curve after the readings
 * @param points - holes read, in any number
 * @returns each number [mm], the covariance [mm²]
 * @source own-model Bayesian regression
 */
export function movedFigures(
  assumed: AssumedFigures,
  after: HoleBehaviour,
  points: readonly HolePoint[],
): CurveFigures & AssumedFigures {
  const figure = (
    symbol: string,
    value: number,
    way: { readonly formula: string; readonly entries: readonly Entry[]; readonly unit?: CoreUnit },
  ): Derived => ({
    symbol,
    value,
    unit: 'mm',
    ...way,
    source: after.standing === 'measured' ? 'your-measurement' : 'hole-metrology-note',
    standing: after.standing,
  });
  const number = (name: CurveNumber, words: string, entries: readonly Entry[]): Derived => {
    const { symbol, before, of } = NUMBERS[name];
    const formula = points.length === 0 ? before : words;
    return figure(symbol, of(after), { formula, entries: [entryFrom(assumed[name]), ...entries] });
  };
  const offset = number(
    'offset',
    'offset of the line from what was assumed through the errors, each weighed by its certainty',
    points.length === 0 ? [] : putIn(assumed, points),
  );
  const sameLine = points.length === 0 ? [] : [entryFrom(offset)];
  const covariance = figure('u_ab', after.covariance ?? 0, {
    formula: 'covariance of offset and slope of the line whose offset is a',
    entries: sameLine,
    unit: 'mm²',
  });
  const greatest = points.find(({ error }) => error === after.ceiling);
  return {
    offset,
    offsetUncertainty: number('offsetUncertainty', 'uncertainty of the offset of the line', sameLine),
    slope: number('slope', 'slope of the line whose offset is a', sameLine),
    slopeUncertainty: number(
      'slopeUncertainty',
      'uncertainty of the slope of the line whose offset is a',
      sameLine,
    ),
    scatter: number('scatter', 'scatter about the line whose offset is a', sameLine),
    ...(points.length === 0 ? {} : { covariance }),
    ...(greatest ? { ceiling: greatestError(greatest) } : {}),
  };
}

/** What a line through the errors begins with, and the errors with their uncertainties. */
const putIn = (assumed: AssumedFigures, points: readonly HolePoint[]): readonly Entry[] => [
  entryFrom(assumed.slope),
  entryFrom(assumed.offsetUncertainty),
  entryFrom(assumed.slopeUncertainty),
  entryFrom(assumed.scatter),
  ...points
    .slice(0, LISTED_HOLES)
    .map((point, index) => entryAs(`e_${index + 1}`, entryFrom(errorOfPoint(point)))),
  ...uncertaintyEntries(points),
];

/** A ceiling that a reading raised. */
const greatestError = (point: HolePoint): Derived => ({
  symbol: 'e_max',
  value: point.error,
  unit: 'mm',
  formula: 'e',
  entries: [entryFrom(errorOfPoint(point))],
  source: 'your-measurement',
  standing: 'measured',
});
