import styles from './drawing.module.css';
import { type InsertShape, insertProfile } from './insert-profile.ts';
import { mirrored, point } from './points.ts';
import { closedPath } from './svg-path.ts';

export interface InsertSilhouetteProps {
  readonly insert: Omit<InsertShape, 'nominalDiameter' | 'minorDiameter'>;
  /** Largest knurl diameter in the table, mm: all silhouettes of one table share the scale. */
  readonly largestDiameter: number;
}

/** Width of every silhouette, and the part of it that the largest knurl takes, px. */
const WIDTH = 54;
const WIDEST = 42;
/** A silhouette is no larger than this, px per mm. */
const LARGEST_SCALE = 7.5;
const EDGE = 2;

/** px per mm for a table whose thickest insert has this knurl diameter. */
export function silhouetteScale(largestDiameter: number): number {
  return Math.min(LARGEST_SCALE, WIDEST / largestDiameter);
}

/** The outline of an insert, small, to the common scale of a table; says nothing to a screen reader. */
export function InsertSilhouette({ insert, largestDiameter }: InsertSilhouetteProps) {
  const scale = silhouetteScale(largestDiameter);
  const height = insert.length * scale + 2 * EDGE;
  const right = silhouetteEdge(insert);
  const outline = [...right, ...[...mirrored(right)].reverse()];
  const d = closedPath(outline.map(({ x, y }) => point(WIDTH / 2 + x * scale, EDGE + y * scale)));
  return (
    <svg
      className={styles.silhouette}
      width={WIDTH}
      height={height}
      viewBox={`0 0 ${WIDTH} ${height}`}
      aria-hidden="true"
    >
      <path d={d} />
    </svg>
  );
}

/** Right edge without teeth, which are too small to show. */
function silhouetteEdge(insert: InsertSilhouetteProps['insert']) {
  const knurl = insert.knurlDiameter / 2;
  const pilot = insert.pilotDiameter / 2;
  const inner = { nominalDiameter: 0.6 * insert.pilotDiameter, minorDiameter: 0.5 * insert.pilotDiameter };
  const { bands, groove, grooveRadius } = insertProfile({ ...insert, ...inner });
  const [upper, lower] = bands;
  const edge = Math.min(0.15, 0.06 * insert.length);
  const ends = { top: upper?.top ?? 0, bottom: lower?.bottom ?? insert.length };
  return [
    point(pilot, 0),
    point(knurl, Math.max(ends.top, edge)),
    point(knurl, groove.top - edge / 3),
    point(grooveRadius, groove.top),
    point(grooveRadius, groove.bottom),
    point(knurl, groove.bottom + edge / 3),
    point(knurl, ends.bottom - edge / 3),
    point(pilot, Math.min(ends.bottom, insert.length - edge)),
    point(pilot, insert.length - edge),
    point(pilot - edge, insert.length),
  ];
}
