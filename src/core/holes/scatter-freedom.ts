import { type Entry, entry, entryLater } from '../sources/derived.ts';
import { type HolePoint, LISTED_HOLES, uncertaintyEntries } from './hole-point.ts';
import { SCATTER_FREEDOM } from './hole-scatter.ts';
import { curveEntry, type HoleBehaviour } from './print-error.ts';

/**
 * Degrees of freedom of the scatter from hole to hole after readings, as a plain number.
 *
 *     ν = 4 + Σ[s²/(s² + u²)]²
 *
 * @param scatter - after the readings s [mm], > 0
 * @param points - holes read, each with its standard uncertainty u [mm]
 * @returns ν [-], ≥ 4
 * @source own-model a reading that is itself unsure teaches less
 */
export const scatterFreedomOf = (
  scatter: number,
  points: readonly Pick<HolePoint, 'standardUncertainty'>[],
): number =>
  points.reduce(
    (sum, { standardUncertainty: u }) => sum + (scatter ** 2 / (scatter ** 2 + u ** 2)) ** 2,
    SCATTER_FREEDOM,
  );

interface Calibrated {
  readonly freedom: number;
  readonly points: readonly HolePoint[];
  readonly behaviour: HoleBehaviour;
}

/**
 * The same put in with its way.
 *
 * @param calibration - after its readings, or without one
 * @returns ν [-]
 * @source own-model a reading that is itself unsure teaches less
 */
export function scatterFreedom({ freedom, points, behaviour }: Calibrated): Entry {
  if (points.length === 0) return entry('ν', freedom, '-');
  const shares = points.map((_, index) => `(s_r²/(s_r² + u_${index + 1}²))²`);
  const sum = [SCATTER_FREEDOM, ...shares].join(' + ');
  return entryLater('ν', freedom, '-', () => ({
    symbol: 'ν',
    value: freedom,
    unit: '-',
    formula: points.length > LISTED_HOLES ? 'degrees of freedom of the scatter, more for every reading' : sum,
    entries: [
      curveEntry(behaviour.figures?.scatter, entry('s_r', behaviour.repeatability, 'mm')),
      ...uncertaintyEntries(points),
    ],
    source: 'own-model',
    standing: 'measured',
  }));
}
