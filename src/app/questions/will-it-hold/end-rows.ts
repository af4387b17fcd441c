import type { Joint } from '../../../core/joint/joint.ts';
import type { FailureMode } from '../../../core/pull-out/limit.ts';
import type { Hold } from '../../../core/service/hold.ts';
import { type Margin, marginsOf } from '../../../core/service/margins.ts';
import type { Loosening, ServiceState } from '../../../core/service/service-state.ts';

/** What one mode or condition comes to in one state; without a margin where nothing asks for it then. */
export interface EndCell {
  readonly state: ServiceState;
  readonly margin?: Margin;
}

/** One way to end, through all states. */
export interface EndRow {
  readonly by: FailureMode | Loosening;
  readonly cells: readonly EndCell[];
  /** Smallest of its margins, [-]; infinite where nothing ever loads it. */
  readonly least: number;
}

/** The states with their margins side by side, one row a way to end, the most endangered first. */
export function endRows({ states }: Hold, factors: Joint['factors']): readonly EndRow[] {
  const margins = states.map((state) => marginsOf(state, factors));
  const ends = new Set(margins.flatMap((one) => one.map(({ by }) => by)));
  return [...ends]
    .map((by): EndRow => {
      const cells = states.map((state, index): EndCell => {
        const margin = margins[index]?.find((one) => one.by === by);
        return { state, ...(margin === undefined ? {} : { margin }) };
      });
      const values = cells.flatMap(({ margin }) => margin?.margin?.value ?? []);
      return { by, cells, least: Math.min(...values) };
    })
    .sort((one, other) => (one.least === other.least ? 0 : one.least - other.least));
}
