import styles from './lines.module.css';
import type { PlasticStructure } from './plastic-structure.ts';
import type { Outline, Polyline } from './points.ts';
import { closedPath, openPath } from './svg-path.ts';
import { outsideCuts, type View } from './view.ts';

export interface PlasticFigureProps {
  readonly structure: PlasticStructure;
  /** What the cut plastic fills. */
  readonly outlines: readonly Outline[];
  readonly clipId: string;
  readonly layersId: string;
  readonly lineWidth: number;
  readonly view: View;
}

/** Beads narrower than this on paper are single lines, px. */
const NARROWEST_BEAD = 2.4;

/** Cut plastic: open ground, infill to scale, solid parts with their layers, walls as bands. */
export function PlasticFigure({
  structure,
  outlines,
  clipId,
  layersId,
  lineWidth,
  view,
}: PlasticFigureProps) {
  const fill = outlines.map((outline) => closedPath(outline.map(view.place))).join('');
  const solid = structure.solids.map((outline) => closedPath(outline.map(view.place)));
  const lines = (polylines: readonly Polyline[]) =>
    polylines.map((line) => openPath(line.map(view.place))).join('');
  const infill = lines(structure.infill.flatMap((line) => outsideCuts(line, view.cuts)));
  const bead = lineWidth * view.scale;
  return (
    <>
      <clipPath id={clipId}>
        <path d={fill} />
      </clipPath>
      <g clipPath={`url(#${clipId})`}>
        <path className={styles.open} d={fill} />
        {bead < NARROWEST_BEAD ? (
          <path className={styles.infillLine} d={infill} />
        ) : (
          <>
            <path className={styles.infillEdge} strokeWidth={bead} d={infill} />
            <path className={styles.infillBead} strokeWidth={bead - 1.6} d={infill} />
          </>
        )}
        {solid.map((d) => (
          <path key={d} className={styles.solid} d={d} />
        ))}
        <path fill={`url(#${layersId})`} d={solid.join('')} />
        <path className={styles.wall} d={lines(structure.wallLines)} />
        <path className={styles.bound} d={lines(structure.bounds)} />
      </g>
    </>
  );
}
