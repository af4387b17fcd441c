import { CutBands } from './cut-bands.tsx';
import type { ForceArrow } from './force-path.ts';
import styles from './lines.module.css';
import { LoadFigure } from './load-figure.tsx';
import { PlasticFigure } from './plastic-figure.tsx';
import { type Point, point } from './points.ts';
import type { SectionGeometry } from './section-geometry.ts';
import type { SectionInput } from './section-input.ts';
import { type PatternIds, patternIds, SectionPatterns } from './section-patterns.tsx';
import { arrowPath, closedPath, openPath, roundedPath } from './svg-path.ts';
import type { View } from './view.ts';

export interface SectionFigureProps {
  readonly id: string;
  readonly input: SectionInput;
  readonly geometry: SectionGeometry;
  readonly view: View;
}

type PartProps = SectionFigureProps & { readonly ids: PatternIds };

/** All shapes of the section, from the printed part up to the path of the force. */
export function SectionFigure(props: SectionFigureProps) {
  const { input, view, id, geometry } = props;
  const ids = patternIds(id);
  return (
    <>
      <defs>
        <SectionPatterns
          ids={ids}
          view={view}
          layerHeight={input.host.layerHeight}
          areLayersUpright={input.host.axis === 'across-build'}
        />
      </defs>
      <HostPart {...props} ids={ids} />
      <ClampedPart {...props} ids={ids} />
      <MetalPart {...props} ids={ids} />
      <CutBands view={view} geometry={geometry} />
      <path className={styles.centre} d={openPath(centreLine(geometry, view))} />
      <ForceFigure geometry={geometry} view={view} />
      <LoadFigure input={input} geometry={geometry} view={view} />
    </>
  );
}

function HostPart({ id, ids, input, geometry, view }: PartProps) {
  const { host, structure, melt } = geometry;
  const closed = (points: readonly Point[]) => closedPath(points.map(view.place));
  const open = (lines: readonly (readonly Point[])[]) =>
    lines.map((line) => openPath(line.map(view.place))).join('');
  return (
    <>
      <PlasticFigure
        structure={structure}
        outlines={[host.body]}
        clipId={`${id}host`}
        layersId={ids.layers}
        lineWidth={input.host.lineWidth}
        view={view}
      />
      {host.supports.map((outline) => (
        <g key={closed(outline)}>
          <path className={styles.solid} d={closed(outline)} />
          <path fill={`url(#${ids.layers})`} d={closed(outline)} />
        </g>
      ))}
      <path className={styles.paper} d={closed(host.hole)} />
      <path className={styles.melt} d={melt.collar.map(closed).join('')} />
      <path className={styles.thin} d={open(host.breakEdges)} />
      <path className={styles.thick} d={open(host.holeEdges)} />
      <path className={styles.phantom} d={open(host.drawnHole)} />
      <path className={styles.bulge} d={melt.bulges.map(closed).join('')} />
      <path className={styles.thick} d={open(host.edges)} />
    </>
  );
}

function ClampedPart({ id, ids, input, geometry, view }: PartProps) {
  const { halves, edges, breakEdges, structure, sleeve } = geometry.clamped;
  const tube = sleeve.map((half) => closedPath(half.map(view.place))).join('');
  const fill = halves.map((half) => closedPath(half.map(view.place))).join('');
  const open = (lines: readonly (readonly Point[])[]) =>
    lines.map((line) => openPath(line.map(view.place))).join('');
  return (
    <>
      {structure ? (
        <PlasticFigure
          structure={structure}
          outlines={halves}
          clipId={`${id}clamped`}
          layersId={ids.lidLayers}
          lineWidth={input.host.lineWidth}
          view={view}
        />
      ) : (
        <>
          <path className={styles.paper} d={fill} />
          <path fill={`url(#${ids.lid})`} d={fill} />
        </>
      )}
      {tube === '' ? null : (
        <>
          <path className={styles.paper} d={tube} />
          <path fill={`url(#${structure ? ids.lid : ids.washer})`} d={tube} />
        </>
      )}
      <path className={styles.thin} d={open(breakEdges)} />
      <path className={styles.thick} d={open(edges)} />
      {tube === '' ? null : <path className={styles.thick} d={tube} />}
    </>
  );
}

/** Insert cut, washer cut, screw and head uncut. */
function MetalPart({ ids, input, geometry, view }: PartProps) {
  const { insert, screw } = geometry;
  const closed = (points: readonly Point[]) => closedPath(points.map(view.place));
  const open = (lines: readonly (readonly Point[])[]) =>
    lines.map((line) => openPath(line.map(view.place))).join('');
  const brass = insert.halves.map(closed).join('');
  const outline = input.screw.state === 'refused' ? styles.refused : styles.screw;
  const washer = screw.washer.map(closed).join('');
  return (
    <>
      <path fill={`url(#${ids.brass})`} d={brass} />
      <path className={styles.thick} d={brass} />
      <path className={styles.thin} d={open(insert.threadLines)} />
      <path className={styles.paper} d={washer} />
      <path fill={`url(#${ids.washer})`} d={washer} />
      <path className={styles.thick} d={washer} />
      <path className={outline} d={closed(screw.shank)} />
      <path className={outline} d={open([screw.tipLine])} />
      <path className={styles.thin} d={open(screw.minorLines)} />
      <path className={outline} d={closed(screw.head)} />
      <path className={styles.hidden} d={open(screw.socket)} />
    </>
  );
}

const CENTRE_OVERRUN = 18;

function centreLine({ levels }: SectionGeometry, view: View): readonly Point[] {
  const top = view.y(Math.min(levels.head.top, levels.clamped.top)) - CENTRE_OVERRUN;
  const bottom = view.y(Math.max(levels.host.bottom, levels.shank.bottom)) + CENTRE_OVERRUN;
  return [point(view.axis, top), point(view.axis, bottom)];
}

const FORCE = {
  wide: { radius: 20, arrow: { length: 18.7, half: 7.2 } },
  narrow: { radius: 11, arrow: { length: 12, half: 4.8 } },
};
const AHEAD = { up: point(0, -1), down: point(0, 1), right: point(1, 0) };

function ForceFigure({ geometry, view }: Pick<SectionFigureProps, 'geometry' | 'view'>) {
  const { radius, arrow } = FORCE[view.variant];
  const path = roundedPath(geometry.force.corners.map(view.place), radius);
  const head = ({ at, direction }: ForceArrow) => {
    const middle = view.place(at);
    const ahead = AHEAD[direction];
    const tip = point(middle.x + (ahead.x * arrow.length) / 2, middle.y + (ahead.y * arrow.length) / 2);
    return arrowPath(tip, middle, arrow);
  };
  return (
    <>
      <path className={styles.forceHalo} d={path} />
      <path className={styles.force} d={path} />
      <path className={styles.forceArrow} d={geometry.force.arrows.map(head).join('')} />
    </>
  );
}
