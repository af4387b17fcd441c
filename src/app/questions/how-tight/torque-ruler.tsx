import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import { torqueNumber } from '../../../wording/amount.ts';
import { MODE_EVENTS } from '../../../wording/names.ts';
import { useWidth } from '../../charts/use-width.ts';
import styles from './how-tight.module.css';
import { holdOf, type Label } from './scale-labels.ts';
import { type ScaleInput, torqueScale } from './torque-scale.ts';

const WINDOW_HEIGHT = 12;

/** Below this width the names at the ends give way to their figures alone; the table has the names. */
const NARROW = 600;

function marksOf(
  joint: Joint,
  { torque }: JointAssessment,
  brief: boolean,
): Omit<ScaleInput, 'width' | 'settings'> {
  const { breakingTorque } = joint.screw;
  const [least, most] = [torqueNumber(torque.least.value), torqueNumber(torque.most.value)];
  return {
    least: { torque: torque.least.value, text: brief ? least : `closed above ${least}` },
    most: { torque: torque.most.value, text: brief ? most : `${most} ${MODE_EVENTS[torque.limitedBy]}` },
    ...(torque.kind === 'window'
      ? { dial: { torque: torque.dial.value, text: `dial ${torqueNumber(torque.dial.value)}` } }
      : {}),
    ...(breakingTorque
      ? {
          breaking: {
            torque: breakingTorque.torque,
            text: `${torqueNumber(breakingTorque.torque)} ${brief ? 'breaks' : 'screw may break'}`,
          },
        }
      : {}),
  };
}

/** One scale: the window, the dial, what ends it, and the settings of the tool as triangles. */
export function TorqueRuler({
  joint,
  assessment,
}: {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
}) {
  const [element, width] = useWidth<HTMLDivElement>(1030);
  const { torque } = assessment;
  const dial = torque.kind === 'window' ? torque.dial.value : undefined;
  const scale = torqueScale({
    width,
    ...marksOf(joint, assessment, width < NARROW),
    settings: joint.tool.settings,
  });
  const [least, most] = scale.ends;
  if (least === undefined || most === undefined) return null;
  return (
    <div ref={element} className={styles['ruler']}>
      <svg viewBox={`0 0 ${width} ${scale.height}`} aria-hidden="true" height={scale.height}>
        <path
          className={styles['axis']}
          d={`M${scale.ticks[0]?.x ?? 0} ${scale.axis}H${scale.ticks.at(-1)?.x ?? width}`}
        />
        {scale.ticks.map(({ x, torque: at, label }) => (
          <g key={at}>
            <path className={styles['axis']} d={`M${x} ${scale.axis}v5`} />
            {label && <Text label={label} />}
          </g>
        ))}
        <Text label={scale.unit} />
        {torque.kind === 'window' && (
          <rect
            className={styles['window']}
            x={least.x}
            y={scale.axis - WINDOW_HEIGHT}
            width={Math.max(1, most.x - least.x)}
            height={WINDOW_HEIGHT}
          />
        )}
        {scale.ends.map((end) => (
          <path
            key={end.label.text}
            className={styles['end']}
            d={`M${end.x} ${end.label.baseline - 12}V${scale.axis}`}
          />
        ))}
        {scale.dial && (
          <path
            className={styles['dial']}
            d={`M${scale.dial.x} ${scale.dial.label.baseline + 6}V${scale.axis + 9}`}
          />
        )}
        {[...scale.ends, ...(scale.dial ? [scale.dial] : [])].map(({ label }) => (
          <Text key={label.text} label={label} serif />
        ))}
        {scale.settings.map(({ x, torque: at, label }) => (
          <g key={at}>
            <path
              className={at === dial ? styles['dialled'] : styles['setting']}
              d={`M${x} ${scale.axis + 38}l-5 9h10z`}
            />
            {label && <Text label={label} />}
          </g>
        ))}
      </svg>
    </div>
  );
}

function Text({ label, serif }: { readonly label: Label; readonly serif?: boolean }) {
  return (
    <text
      className={serif ? styles['name'] : styles['figure']}
      x={holdOf(label)}
      y={label.baseline}
      textAnchor={label.anchor}
      fontSize={label.size}
    >
      {label.text}
    </text>
  );
}
