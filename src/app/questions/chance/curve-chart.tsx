import type { ChanceAtTorque } from '../../../core/chance/chance-over-torque.ts';
import type { JointAssessment } from '../../../core/joint/assessment.ts';
import { torqueNumber } from '../../../wording/amount.ts';
import { inThousand } from '../../../wording/chance.ts';
import { useWidth } from '../../charts/use-width.ts';
import { curveShapes, settingOf } from './curve-shapes.ts';
import styles from './plot.module.css';

export interface CurveChartProps {
  readonly curve: readonly ChanceAtTorque[];
  readonly torque: JointAssessment['torque'];
}

/** Chance of harm and of a loose joint over the setting, with the window and the dial on it. */
export function CurveChart({ curve, torque }: CurveChartProps) {
  const [element, width] = useWidth<HTMLDivElement>(1030);
  const setting = `${torque.kind === 'window' ? 'dial' : 'most'} ${torqueNumber(settingOf(torque))}`;
  const shapes = curveShapes(curve, torque, { width, setting });
  const { base, top, left, right, scale, window } = shapes;
  return (
    <div ref={element} className={styles['chart']}>
      <h3>Chance over the setting of the tool</h3>
      <svg aria-hidden="true" viewBox={`0 0 ${width} ${shapes.height}`} height={shapes.height}>
        {window && (
          <rect className={styles['window']} x={window.x} y={top} width={window.width} height={base - top} />
        )}
        {shapes.levels.map(({ y, probability }) => (
          <g key={probability}>
            <path className={styles['level']} d={`M${left} ${y}H${right}`} />
            <text className={styles['figure']} x={left - 8} y={y + 4} textAnchor="end">
              {inThousand(probability)}
            </text>
          </g>
        ))}
        <path className={styles['axis']} d={`M${left} ${base}H${right}`} />
        {scale.ticks.map(({ x, text }) => (
          <g key={text}>
            <path className={styles['axis']} d={`M${x} ${base}v5`} />
            <text className={styles['figure']} x={x} y={base + 20} textAnchor="middle">
              {text}
            </text>
          </g>
        ))}
        <path className={styles['loose']} d={shapes.loose} />
        <path className={styles['harm']} d={shapes.harm} />
        <path className={styles['dial']} d={`M${shapes.setting.at} 22V${base}`} />
        <text className={styles['setting']} x={shapes.setting.x} y={16}>
          {shapes.setting.text}
        </text>
        <text className={styles['name']} x={left} y={top - 10}>
          – – loose
        </text>
        <text className={styles['name']} x={right} y={top - 10} textAnchor="end">
          harmed —
        </text>
      </svg>
      <p className={styles['unit']}>
        joints in 1,000, over torque, N·m{window ? '; the band is the window' : ''}
      </p>
    </div>
  );
}
