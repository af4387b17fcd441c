import type { Joint } from '../../core/joint/joint.ts';
import { governingMargin } from '../../core/service/margins.ts';
import { factorText } from '../../wording/amount.ts';
import { nameOfEnd, reasonForService, whenOf } from '../../wording/hold.ts';
import { sentenceOfNoTorque } from '../../wording/reasons.ts';
import type { Shown } from '../state/findings.ts';
import { holdOfShown, isHeld } from '../state/shown-hold.ts';
import { Margin, Why } from './answer.tsx';
import styles from './answers.module.css';
import { ComputedAnswer } from './computed-answer.tsx';
import { ToldAnswer } from './told-answer.tsx';

interface HoldAnswerProps {
  readonly joint: Joint;
  readonly shown: Shown;
}

const LESSER = `${styles.big} ${styles.lesser}`;

/** Will it hold: the smallest margin of its life, or no; what governs, when, and by what numbers. */
export function HoldAnswer({ joint, shown }: HoldAnswerProps) {
  const hold = holdOfShown(joint, shown);
  const { torque } = shown.assessment;
  if (hold === undefined) {
    return (
      <>
        <div className={LESSER}>no</div>
        {torque.kind === 'refused' ? (
          <Why>
            <ToldAnswer sentence={sentenceOfNoTorque(torque)} />
          </Why>
        ) : null}
      </>
    );
  }
  const margin = governingMargin(hold.worst, joint.factors);
  const text = factorText(hold.worst.margin);
  const value = margin?.margin && (
    <ComputedAnswer
      derived={margin.margin}
      text={text}
      label={`Smallest margin, ${nameOfEnd(margin.by)}, ${whenOf(hold.worst)}, ${text}`}
      look={isHeld(shown, hold) ? 'plain' : 'ruled'}
    />
  );
  return (
    <>
      <div className={LESSER}>{isHeld(shown, hold) ? value : 'no'}</div>
      {hold.verdict === 'fails' ? <Margin>{value} what is asked</Margin> : null}
      <Why>
        <ToldAnswer
          sentence={reasonForService(hold, margin, {
            factor: joint.factors.limits,
            isDialled: torque.kind === 'window',
          })}
        />
      </Why>
    </>
  );
}

/** The value alone, as it fits in a line. */
export function ShortHold({ joint, shown }: HoldAnswerProps) {
  const hold = holdOfShown(joint, shown);
  return isHeld(shown, hold) ? factorText(hold.worst.margin) : 'no';
}
