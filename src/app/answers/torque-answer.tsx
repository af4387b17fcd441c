import type { JointAssessment, TorqueWindow } from '../../core/joint/assessment.ts';
import { dialMargin } from '../../core/joint/dial-margin.ts';
import { percentText, torqueNumber, torqueText } from '../../wording/amount.ts';
import { MODE_EVENTS, sentenceOfOpening } from '../../wording/names.ts';
import { reasonForTorque } from '../../wording/reasons.ts';
import { AnswerUnit, Margin, Why } from './answer.tsx';
import styles from './answers.module.css';
import { ComputedAnswer } from './computed-answer.tsx';
import { RULER_WIDTH, Ruler } from './ruler.tsx';
import { linearScale, placeLabels } from './scale.ts';
import { ToldAnswer } from './told-answer.tsx';

/** How much of the line lies beyond the largest torque shown. */
const BEYOND = 1.35;

/** How tight: one setting to dial, or the two ends that exclude each other. */
export function TorqueAnswer({ assessment }: { readonly assessment: JointAssessment }) {
  const { torque } = assessment;
  if (torque.kind === 'refused') return <NoTorque assessment={assessment} torque={torque} />;
  const margin = dialMargin(torque);
  return (
    <>
      <div className={styles.big}>
        <ComputedAnswer
          derived={[torque.least, torque.most, torque.dial]}
          text={torqueNumber(torque.dial.value)}
          label={`Torque to dial, ${torqueText(torque.dial.value)}`}
          look="plain"
        />
        <AnswerUnit unit="N·m" />
      </div>
      <TorqueRuler torque={torque} />
      <Margin>
        {margin.kind === 'narrow' ? (
          <>
            <b>
              <ComputedAnswer
                derived={margin.width}
                text={torqueText(margin.width.value)}
                label={`Width of the window, ${torqueText(margin.width.value)}`}
              />
            </b>{' '}
            wide: hard to hit
          </>
        ) : (
          <>
            <b>
              <ComputedAnswer
                derived={margin.share}
                text={percentText(margin.share.value)}
                label={`Dial below the top of the window, ${percentText(margin.share.value)}`}
              />
            </b>{' '}
            below the top of the window
          </>
        )}
      </Margin>
      <Why>
        <ToldAnswer sentence={reasonForTorque(assessment)} />
      </Why>
    </>
  );
}

type Refused = Extract<TorqueWindow, { readonly kind: 'refused' }>;

function NoTorque({
  assessment,
  torque,
}: {
  readonly assessment: JointAssessment;
  readonly torque: Refused;
}) {
  const [opening, ...more] = torque.openedBy;
  return (
    <>
      <div className={`${styles.big} ${styles.lesser}`}>No torque fits</div>
      <TorqueRuler torque={torque} />
      <Margin>
        closed from{' '}
        <ComputedAnswer
          derived={torque.least}
          text={torqueText(torque.least.value)}
          label={`Least torque, ${torqueText(torque.least.value)}`}
        />
        , at its limit at{' '}
        <ComputedAnswer
          derived={torque.most}
          text={torqueText(torque.most.value)}
          label={`Largest torque, ${torqueText(torque.most.value)}`}
        />
      </Margin>
      <Why>
        <ToldAnswer sentence={reasonForTorque(assessment)} />
      </Why>
      <Why>
        {opening === undefined
          ? 'No single change opens a window: it takes several, such as less load and another seat.'
          : [opening, ...more].map(sentenceOfOpening).join(' Or: ')}
      </Why>
    </>
  );
}

function TorqueRuler({ torque }: { readonly torque: TorqueWindow }) {
  const [least, most] = [torque.least.value, torque.most.value];
  const scale = linearScale({ least: 0, greatest: Math.max(least, most) * BEYOND }, RULER_WIDTH);
  const isWindow = torque.kind === 'window';
  const labels = [
    { text: `closed ${torqueNumber(least)}`, at: scale.at(least) },
    { text: `${torqueNumber(most)} ${MODE_EVENTS[torque.limitedBy]}`, at: scale.at(most) },
  ];
  const [below] = [placeLabels(labels, RULER_WIDTH)];
  const isCrowded = below.length < labels.length;
  return (
    <Ruler
      {...(least < most ? { span: [scale.at(least), scale.at(most)] as const } : {})}
      ticks={[scale.at(least), scale.at(most)]}
      {...(isWindow ? { needle: scale.at(torque.dial.value) } : {})}
      above={isCrowded ? placeLabels(labels.slice(0, 1), RULER_WIDTH) : []}
      below={isCrowded ? placeLabels(labels.slice(1), RULER_WIDTH) : below}
    />
  );
}
