import styles from './limit-bar.module.css';
import type { LimitRow } from './limit-groups.ts';

export interface LimitBarProps {
  readonly row: LimitRow;
  readonly greatest: number;
}

const WIDTH = 1000;
const HEIGHT = 36;

/** Bar to the characteristic value, open bar for the spread, tick at the median, one upright for the load. */
export function LimitBar({ row, greatest }: LimitBarProps) {
  const { limit, spread } = row;
  const xOf = (value: number) => (Math.min(value, greatest) / greatest) * WIDTH;
  const half = limit.governs ? 6 : 4.5;
  const middle = HEIGHT / 2;
  const barEnd = xOf(spread.characteristic);
  const spreadEnd = xOf(spread.upper);
  const load = xOf(limit.demand.value);
  const isCut = spread.upper > greatest;
  return (
    <svg
      className={styles['bar']}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {spreadEnd > barEnd && (
        <path
          className={styles['spread']}
          d={`M${barEnd} ${middle - half}H${spreadEnd}${isCut ? 'M' : 'V'}${isCut ? `${spreadEnd} ` : ''}${middle + half}H${barEnd}`}
        />
      )}
      <rect
        className={limit.governs ? styles['governing'] : styles['solid']}
        x={0}
        y={middle - half}
        width={barEnd}
        height={2 * half}
      />
      {spread.median > spread.characteristic && spread.median <= greatest && (
        <path className={styles['median']} d={`M${xOf(spread.median)} ${middle - 10}v20`} />
      )}
      <path className={styles['halo']} d={`M${load} 0V${HEIGHT}`} />
      <path className={styles['load']} d={`M${load} 0V${HEIGHT}`} />
    </svg>
  );
}
