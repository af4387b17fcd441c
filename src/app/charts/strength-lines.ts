import { likeReadings } from '../../core/bench/like-readings.ts';
import { type StrengthFit, strengthBand } from '../../core/bench/strength-fit.ts';
import { type Dimension, SAME_SIZE, type StrengthPoint } from '../../core/bench/strength-points.ts';
import { niceTicks } from './nice-ticks.ts';

type Fitted = Extract<StrengthFit, { readonly kind: 'fitted' }>;

/** A fit at one place, N or N·mm. */
export interface FitPlace {
  /** mm */
  readonly at: number;
  readonly fit: number;
  /** Ends for the mean of many coupons. */
  readonly mean: readonly [number, number];
  readonly nextLow: number;
  readonly nextHigh: number;
}

/** A regression over one axis; of a plane, at one size of the other dimension. */
export interface StrengthPanel {
  /** The size that is kept, mm; absent where one dimension was put over alone. */
  readonly kept?: number;
  readonly line: readonly FitPlace[];
  readonly points: readonly { readonly testId: string; readonly at: number; readonly load: number }[];
}

export interface StrengthLines {
  readonly axis: Dimension;
  readonly panels: readonly StrengthPanel[];
  /** Of both axes, the same in every panel; mm, and N or N·mm. */
  readonly sizes: readonly number[];
  readonly loads: readonly number[];
}

const SAMPLES = 24;
const STEPS = 5;
const MOST_PANELS = 3;
const SIZE_STEPS = 6;

/** Line and bands of a regression between the least and the greatest size that was tested: none beyond. */
export function strengthLines(found: Fitted, points: readonly StrengthPoint[]): StrengthLines {
  const axis = found.over[0] ?? 'length';
  const other = found.over[1];
  const groups =
    other === undefined
      ? [{ least: undefined, items: points }]
      : likeReadings(points, (point) => point[other], SAME_SIZE[other]).slice(0, MOST_PANELS);
  const at = points.map((point) => point[axis]);
  const [least, greatest] = [Math.min(...at), Math.max(...at)];
  const places = Array.from(
    { length: SAMPLES + 1 },
    (_, place) => least + ((greatest - least) * place) / SAMPLES,
  );
  const panels = groups.map(({ items }): StrengthPanel => {
    const kept = other === undefined ? undefined : meanOf(items.map((point) => point[other]));
    const sizeAt = (place: number): Record<Dimension, number> => ({
      length: axis === 'length' ? place : (kept ?? 0),
      diameter: axis === 'diameter' ? place : (kept ?? 0),
    });
    return {
      ...(kept === undefined ? {} : { kept }),
      line: places.map((place) => {
        const { expected, mean, next } = strengthBand(found, sizeAt(place));
        return {
          at: place,
          fit: expected.value,
          mean: [mean.low.value, mean.high.value],
          nextLow: next.low.value,
          nextHigh: next.high.value,
        };
      }),
      points: items.map(({ test, load, ...size }) => ({ testId: test.id, at: size[axis], load })),
    };
  });
  return { axis, panels, sizes: sizeTicks(least, greatest), loads: niceTicks(mostDrawn(panels), STEPS) };
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** A band of few coupons goes far beyond them: it is cut at twice what was measured. */
const MOST_OVER_POINTS = 2;

function mostDrawn(panels: readonly StrengthPanel[]): number {
  const measured = Math.max(...panels.flatMap(({ points }) => points.map(({ load }) => load)));
  const band = Math.max(...panels.flatMap(({ line }) => line.map(({ nextHigh }) => nextHigh)));
  return Math.max(measured, Math.min(band, MOST_OVER_POINTS * measured));
}

/** Round sizes from below the least to above the greatest, mm. */
function sizeTicks(least: number, greatest: number): readonly number[] {
  const step = niceTicks(greatest - least, SIZE_STEPS)[1] ?? 1;
  const from = Math.floor(least / step + 1e-9);
  const to = Math.ceil(greatest / step - 1e-9);
  return Array.from({ length: to - from + 1 }, (_, index) => Number(((from + index) * step).toPrecision(12)));
}
