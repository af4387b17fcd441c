import type { Margin } from '../../../core/service/margins.ts';
import styles from './margin-bar.module.css';

const WIDTH = 1000;
const HEIGHT = 40;
/** Right end of every scale: so many times what is asked. */
export const GREATEST_MARGIN = 3;

const xOf = (margin: number): number => (Math.min(margin, GREATEST_MARGIN) / GREATEST_MARGIN) * WIDTH;

/** Bar to the margin that 19 of 20 joints have, open bar on to the median, one upright at 1: what is asked. */
export function MarginBar({ margin }: { readonly margin: Margin | undefined }) {
  const asked = xOf(1);
  return (
    <svg
      className={styles['bar']}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {margin?.margin && (
        <Held value={margin.margin.value} median={margin.medianMargin} governs={margin.governs} />
      )}
      <path className={styles['halo']} d={`M${asked} 0V${HEIGHT}`} />
      <path className={styles['asked']} d={`M${asked} 0V${HEIGHT}`} />
    </svg>
  );
}

interface HeldProps {
  readonly value: number;
  readonly median: number | undefined;
  readonly governs: boolean;
}

function Held({ value, median, governs }: HeldProps) {
  const half = governs ? 6 : 4.5;
  const [top, bottom] = [HEIGHT / 2 - half, HEIGHT / 2 + half];
  const end = xOf(value);
  const middle = median === undefined ? end : xOf(median);
  const isCut = (median ?? value) > GREATEST_MARGIN;
  return (
    <>
      {middle > end && (
        <path
          className={styles['spread']}
          d={
            isCut
              ? `M${end} ${top}H${middle}M${middle} ${bottom}H${end}`
              : `M${end} ${top}H${middle}V${bottom}H${end}`
          }
        />
      )}
      <rect
        className={governs ? styles['governing'] : styles['held']}
        x={0}
        y={top}
        width={end}
        height={bottom - top}
      />
    </>
  );
}
