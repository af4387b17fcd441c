import type { ChanceResult } from '../../../core/chance/chance-result.ts';
import { useWidth } from '../../charts/use-width.ts';
import { forceShapes } from './force-shapes.ts';
import styles from './plot.module.css';

const WORDS = {
  clampForce: 'clamp force at this setting',
  plastic: 'what the weakest plastic bears',
};

/** Clamp force of the sampled joints against what their plastic bears. */
export function ForceChart({ result }: { readonly result: ChanceResult }) {
  const [element, width] = useWidth<HTMLDivElement>(1030);
  const { height, base, scale, clampForce, plastic, names } = forceShapes(result, width, WORDS);
  return (
    <div ref={element} className={styles['chart']}>
      <h3>Clamp force, and what the plastic bears</h3>
      <svg aria-hidden="true" viewBox={`0 0 ${width} ${height}`} height={height}>
        <path className={styles['force']} d={clampForce} />
        <path className={styles['plastic']} d={plastic} />
        <path className={styles['axis']} d={`M${scale.xOf(0)} ${base}H${scale.xOf(scale.greatest)}`} />
        {scale.ticks.map(({ x, text }) => (
          <g key={text}>
            <path className={styles['axis']} d={`M${x} ${base}v5`} />
            <text className={styles['figure']} x={x} y={base + 20} textAnchor="middle">
              {text}
            </text>
          </g>
        ))}
        {names.map(({ text, x, y, at, foot }) => (
          <g key={text}>
            <path className={styles['leader']} d={`M${at} ${y + 4}V${foot}`} />
            <text className={styles['name']} x={x} y={y}>
              {text}
            </text>
          </g>
        ))}
      </svg>
      <p className={styles['unit']}>force, N; areas are counts of joints</p>
    </div>
  );
}
