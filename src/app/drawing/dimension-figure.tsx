import styles from './lines.module.css';
import type { PlacedNote } from './note-layout.ts';
import type { ArrowPlace, DimensionGroup, DimensionLine, PlacedLabel, PlainLine } from './placed.ts';
import { type Point, point } from './points.ts';
import { arrowPath, openPath } from './svg-path.ts';

/** A line whose arrows stand outside goes on by this much, px. */
const OUTSIDE = 20;

/** Extension lines, dimension lines with their arrows, and ties to values that had to move. */
export function DimensionFigure({ group }: { readonly group: DimensionGroup }) {
  const plain = (lines: readonly PlainLine[]) => lines.map(({ from, to }) => openPath([from, to])).join('');
  return (
    <>
      <path className={styles.extension} d={plain(group.extensions)} />
      <path className={styles.dimension} d={group.lines.map((line) => dimensionPath(line)).join('')} />
      <path className={styles.dimension} d={plain(group.ties)} />
      <path className={styles.ink} d={group.lines.map(arrowPaths).join('')} />
    </>
  );
}

function dimensionPath({ from, to, fromArrow, toArrow }: DimensionLine): string {
  const start = fromArrow === 'outside' ? beyond(from, to, OUTSIDE) : from;
  const end = toArrow === 'outside' ? beyond(to, from, OUTSIDE) : to;
  return openPath([start, end]);
}

/** The point past one end of a line, away from its other end. */
function beyond(end: Point, other: Point, by: number): Point {
  const length = Math.hypot(end.x - other.x, end.y - other.y) || 1;
  return point(end.x + ((end.x - other.x) * by) / length, end.y + ((end.y - other.y) * by) / length);
}

function arrowPaths({ from, to, fromArrow, toArrow }: DimensionLine): string {
  return arrowAt(from, to, fromArrow) + arrowAt(to, from, toArrow);
}

function arrowAt(tip: Point, other: Point, place: ArrowPlace): string {
  if (place === 'none') return '';
  return arrowPath(tip, place === 'inside' ? other : beyond(tip, other, OUTSIDE));
}

export interface LeaderFigureProps {
  readonly notes: readonly PlacedNote[];
  readonly withLetters: boolean;
}

/** Leaders with a dot where they point; in the narrow drawing each ends at its letter. */
export function LeaderFigure({ notes, withLetters }: LeaderFigureProps) {
  return notes.map(({ note, leader, letter, left, y }) => {
    const [dot] = leader;
    return (
      <g key={note.id}>
        <path className={styles.leaderHalo} d={openPath(leader)} />
        <path className={styles.leader} d={openPath(leader)} />
        {dot ? <circle className={styles.ink} cx={dot.x} cy={dot.y} r={withLetters ? 2 : 2.4} /> : null}
        {withLetters ? (
          <text className={styles.letter} x={left + 2} y={y + 5}>
            {letter}
          </text>
        ) : null}
      </g>
    );
  });
}

/** Lines from a level dimension to a value that stands beside it. */
export function besideLines(
  labels: readonly PlacedLabel[],
  lines: readonly DimensionLine[],
): readonly PlainLine[] {
  return labels.flatMap(({ middle, width }) => {
    const own = lines.filter(({ from, to }) => from.y === middle.y && to.y === middle.y);
    return own.flatMap(({ from, to }): readonly PlainLine[] => {
      if (middle.x - width / 2 > to.x) return [{ from: to, to: point(middle.x - width / 2, middle.y) }];
      return middle.x + width / 2 < from.x ? [{ from: point(middle.x + width / 2, middle.y), to: from }] : [];
    });
  });
}
