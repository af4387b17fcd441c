import { REFERENCE_TEMPERATURE } from '../../core/host/temperature.ts';
import type { PreloadCurve } from '../../core/service/curves.ts';
import { temperatureText } from '../../wording/amount.ts';

/** A curve with its name; times as powers of ten. */
export interface NamedCurve {
  readonly name: string;
  readonly isWarm: boolean;
  readonly points: readonly { readonly decade: number; readonly left: number }[];
}

/** Shares that nobody can tell apart on the chart, [-]. */
const SAME = 0.004;

const isSame = (one: PreloadCurve, other: PreloadCurve): boolean =>
  one.points.every(({ left }, index) => Math.abs(left - (other.points[index]?.left ?? 0)) < SAME);

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
        points: first.points.map(({ hours, left }) => ({ decade: Math.log10(hours), left })),
      },
    ];
  });
}
