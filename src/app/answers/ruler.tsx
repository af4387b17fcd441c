import type { ReactNode } from 'react';
import styles from './ruler.module.css';
import { type PlacedLabel, RULER_TEXT } from './scale.ts';

export const RULER_WIDTH = 300;
const BASE = 26;
const ABOVE = 13;
const BELOW = 46;

interface RulerProps {
  /** Stands on the line, behind all else. */
  readonly behind?: ReactNode;
  /** What is allowed: thick. */
  readonly span?: readonly [from: number, to: number];
  /** How far it spreads beyond: pale. */
  readonly spread?: readonly [from: number, to: number];
  readonly ticks: readonly number[];
  /** What was chosen: upright. */
  readonly needle?: number;
  readonly above?: readonly PlacedLabel[];
  readonly below?: readonly PlacedLabel[];
}

/** One hairline scale; the same facts stand in words beside it. */
export function Ruler({ behind, span, spread, ticks, needle, above = [], below = [] }: RulerProps) {
  return (
    <svg className={styles.ruler} viewBox={`0 0 ${RULER_WIDTH} 50`} aria-hidden="true">
      {behind}
      <path className={styles.base} d={`M0 ${BASE}H${RULER_WIDTH}`} />
      {spread ? <path className={styles.spread} d={`M${spread[0]} ${BASE}H${spread[1]}`} /> : null}
      {span ? <path className={styles.span} d={`M${span[0]} ${BASE}H${span[1]}`} /> : null}
      {ticks.map((x) => (
        <path key={x} className={styles.tick} d={`M${x} ${BASE - 5}V${BASE + 6}`} />
      ))}
      {needle === undefined ? null : <path className={styles.needle} d={`M${needle} 9V${BASE + 6}`} />}
      {[
        ...above.map((label) => ({ ...label, y: ABOVE })),
        ...below.map((label) => ({ ...label, y: BELOW })),
      ].map(({ text, x, y }) => (
        <text key={text} x={x} y={y} fontSize={RULER_TEXT}>
          {text}
        </text>
      ))}
    </svg>
  );
}

export const BELL_HEIGHT = { base: BASE, top: 4 };
export const Bell = ({ path }: { readonly path: string }) => <path className={styles.bell} d={path} />;
