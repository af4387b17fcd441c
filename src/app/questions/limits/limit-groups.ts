import type { Limit } from '../../../core/joint/assessment.ts';
import type { LoadPath } from '../../../core/pull-out/limit.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { niceTicks } from '../../charts/nice-ticks.ts';
import { type Spread, spreadOf } from '../../charts/spread.ts';

export interface LimitRow {
  readonly limit: Limit;
  readonly spread: Spread;
}

/** Limits that one kind of load bears on, the most endangered first, to one scale. */
export interface LimitGroup {
  readonly path: LoadPath;
  /** What loads them; the greatest where they differ. */
  readonly demand: Derived;
  readonly rows: readonly LimitRow[];
  /** Right end of the scale, N or N·mm. */
  readonly greatest: number;
}

const ORDER: readonly LoadPath[] = ['pull', 'clamp', 'torque'];
/** Bars beyond so many times the scale of the endangered ones are cut, so that the short ones stay legible. */
const CUT = 6;

const byDanger = (one: Limit, other: Limit): number =>
  (one.factor ?? Number.POSITIVE_INFINITY) - (other.factor ?? Number.POSITIVE_INFINITY) ||
  one.capacity.characteristic.value - other.capacity.characteristic.value;

/** Groups the limits by what loads them, each group to its own scale. */
export function limitGroups(limits: readonly Limit[]): readonly LimitGroup[] {
  const scaleOf = (members: readonly Limit[]): number => {
    const spreads = members.map(({ capacity }) => spreadOf(capacity));
    const least = Math.min(...spreads.map(({ median }) => median));
    const loads = members.map(({ demand }) => demand.value);
    const greatest = Math.max(...spreads.map(({ upper }) => upper));
    const ticks = niceTicks(Math.max(Math.min(greatest, CUT * least), ...loads), 5);
    return ticks.at(-1) ?? 1;
  };
  return ORDER.flatMap((path): LimitGroup[] => {
    const members = limits.filter((limit) => limit.path === path).sort(byDanger);
    const [first] = members;
    if (first === undefined) return [];
    const demand = members.reduce(
      (most, limit) => (limit.demand.value > most.value ? limit.demand : most),
      first.demand,
    );
    return [
      {
        path,
        demand,
        rows: members.map((limit) => ({ limit, spread: spreadOf(limit.capacity) })),
        greatest: scaleOf(members),
      },
    ];
  });
}
