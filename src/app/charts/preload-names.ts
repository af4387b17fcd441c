import { REFERENCE_TEMPERATURE } from '../../core/host/temperature.ts';
import type { PreloadCurve } from '../../core/service/curves.ts';
import { temperatureText } from '../../wording/amount.ts';

/** The careful end of what is left, and the band from there to the other end. */
export interface CurvePoint {
  readonly decade: number;
  readonly left: number;
  readonly best: number;
  readonly band: readonly [number, number];
}

/** A curve with its name; times as powers of ten. */
export interface NamedCurve {
  readonly name: string;
  readonly isWarm: boolean;
  /** Whether little is known of the creep, so that its ends differ. */
  readonly isLittleKnown: boolean;
  readonly points: readonly CurvePoint[];
}

/** Shares that nobody can tell apart on the chart, [-]. */
const SAME = 0.004;

const isSame = (one: PreloadCurve, other: PreloadCurve): boolean =>
  one.points.every(({ careful, best }, index) => {
    const point = other.points[index];
    return (
      point !== undefined && Math.abs(careful - point.careful) < SAME && Math.abs(best - point.best) < SAME
    );
  });

/** Curves that differ, each with its name; those that lie on one another are one with the names of all. */
export function distinctCurves(curves: readonly PreloadCurve[]): readonly NamedCurve[] {
  const groups: PreloadCurve[][] = [];
  for (const curve of curves) {
    const group = groups.find(([first]) => first !== undefined && isSame(first, curve));
    if (group === undefined) groups.push([curve]);
    else group.push(curve);
  }
  return groups.flatMap((group): NamedCurve[] => {
    const [first] = group;
    if (first === undefined) return [];
    return [
      {
        name: group.map(({ temperature }) => temperatureText(temperature)).join(' and '),
        isWarm: group.some(({ temperature }) => temperature > REFERENCE_TEMPERATURE),
        isLittleKnown: first.points.some(({ careful, best }) => best - careful >= SAME),
        points: first.points.map(({ hours, careful, best }) => ({
          decade: Math.log10(hours),
          left: careful,
          best,
          band: [careful, best],
        })),
      },
    ];
  });
}
