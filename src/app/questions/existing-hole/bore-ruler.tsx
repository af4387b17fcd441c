import type { ExistingFinding } from '../../../core/joint/existing-finding.ts';
import { diameterNumber } from '../../../wording/amount.ts';
import { useWidth } from '../../charts/use-width.ts';
import { boreScale } from './bore-scale.ts';
import styles from './existing-hole.module.css';

/** One scale: where a bore fits, where the pilot melts in and the knurl still touches, and the bore that is there. */
export function BoreRuler({ finding }: { readonly finding: ExistingFinding }) {
  const [element, width] = useWidth<HTMLDivElement>(640);
  const { smallest, pilot, largest, knurl } = finding.limits;
  const scale = boreScale(
    {
      smallest: smallest.value,
      pilot: pilot.value,
      largest: largest.value,
      knurl: knurl.value,
      bore: finding.bore.value,
    },
    width,
    diameterNumber,
  );
  const { base, height } = scale;
  return (
    <div ref={element} className={styles['ruler']}>
      <svg viewBox={`0 0 ${width} ${height}`} height={height} aria-hidden="true">
        <path className={styles['base']} d={`M0 ${base}H${width}`} />
        <path className={styles['spread']} d={`M${scale.touches[0]} ${base}H${scale.touches[1]}`} />
        <path className={styles['span']} d={`M${scale.fits[0]} ${base}H${scale.fits[1]}`} />
        {scale.ticks.map((x) => (
          <path key={x} className={styles['tick']} d={`M${x} ${base - 6}V${base + 7}`} />
        ))}
        <path className={styles['needle']} d={`M${scale.needle} ${base - 22}V${base + 7}`} />
        {scale.labels.map(({ text, x, y, anchor, isBore }) => (
          <text key={text} x={x} y={y} textAnchor={anchor} className={isBore ? styles['bore'] : undefined}>
            {text}
          </text>
        ))}
      </svg>
    </div>
  );
}
