import styles from './lines.module.css';
import { point } from './points.ts';
import type { SectionGeometry } from './section-geometry.ts';
import type { SectionInput } from './section-input.ts';
import { arrowPath, openPath } from './svg-path.ts';
import type { View } from './view.ts';

/** Length of an arrow and of its head, px; how far in from the break edge, and over the face, it begins. */
const ARROWS = {
  wide: { length: 32, head: { length: 12, half: 4.2 }, inset: 16, over: 7 },
  narrow: { length: 19, head: { length: 9, half: 3.4 }, inset: 8, over: 5 },
};
const NAME_GAP = 9;

interface LoadFigureProps {
  readonly input: SectionInput;
  readonly geometry: SectionGeometry;
  readonly view: View;
}

/** Where the loads push the clamped part: off the printed face, and across the screw. Their length says nothing. */
export function LoadFigure({ input: { loads }, geometry, view }: LoadFigureProps) {
  const { length, head, inset, over } = ARROWS[view.variant];
  const x = view.x(-geometry.frame.halfWidth) + inset;
  const face = view.y(geometry.levels.clamped.top);
  const foot = point(x, face);
  const lifted = point(x, face - length);
  const beside = point(x + over, face - over);
  const pushed = point(beside.x + length, beside.y);
  return (
    <>
      {loads.pull ? (
        <>
          <path className={styles.load} d={openPath([foot, lifted])} />
          <path className={styles.ink} d={arrowPath(lifted, foot, head)} />
          <text className={styles.loadName} x={x - NAME_GAP} y={(lifted.y + face) / 2 + 4} textAnchor="end">
            pull
          </text>
        </>
      ) : null}
      {loads.shear ? (
        <>
          <path className={styles.load} d={openPath([beside, pushed])} />
          <path className={styles.ink} d={arrowPath(pushed, beside, head)} />
          <text className={styles.loadName} x={beside.x + NAME_GAP} y={beside.y - 7}>
            across
          </text>
        </>
      ) : null}
    </>
  );
}
