import { levelFreehand } from './freehand.ts';
import styles from './lines.module.css';
import type { Polyline } from './points.ts';
import type { SectionGeometry } from './section-geometry.ts';
import { closedPath, openPath } from './svg-path.ts';
import type { Cut, View } from './view.ts';

export interface CutBandsProps {
  readonly view: View;
  readonly geometry: SectionGeometry;
}

/** Where the view is broken: a band of paper between two freehand edges. */
export function CutBands({ view, geometry }: CutBandsProps) {
  return view.cuts.map((cut) => {
    const [upper, lower] = cutEdges(cut, view, geometry);
    return (
      <g key={cut.from}>
        <path className={styles.paper} d={closedPath([...upper, ...[...lower].reverse()])} />
        <path className={styles.thin} d={openPath(upper)} />
        <path className={styles.thin} d={openPath(lower)} />
      </g>
    );
  });
}

function cutEdges(cut: Cut, view: View, { frame }: SectionGeometry): readonly [Polyline, Polyline] {
  const reach = (frame.halfWidth + frame.wobble) * view.scale + 3;
  const edge = (level: number): Polyline =>
    levelFreehand({
      at: view.y(level),
      from: view.axis - reach,
      to: view.axis + reach,
      wobble: 1.8,
      step: 16,
      seed: 5,
    });
  return [edge(cut.from), edge(cut.to)];
}
