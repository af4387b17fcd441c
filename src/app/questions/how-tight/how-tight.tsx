import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import { percentText, torqueText } from '../../../wording/amount.ts';
import { sentenceOfOpening } from '../../../wording/names.ts';
import { reasonForTorque, sentenceOfNoTorque } from '../../../wording/reasons.ts';
import { plainText, said, told } from '../../../wording/sentence.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import { QuestionSection } from '../question-section.tsx';
import styles from './how-tight.module.css';
import { TorqueFigures } from './torque-figures.tsx';
import { TorqueRuler } from './torque-ruler.tsx';

export interface HowTightProps {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
}

/** The torque window: its two ends, the dial inside, and what the dial gives; or why there is none. */
export function HowTight({ joint, assessment }: HowTightProps) {
  const { torque } = assessment;
  const { tool } = joint;
  const aside =
    torque.kind === 'window'
      ? plainText(
          said`Between the least torque that keeps the joint closed and the most that leaves every part whole. ${reasonForTorque(assessment)}`,
        )
      : 'Between the least torque that keeps the joint closed and the most that leaves every part whole there is nothing to set.';
  return (
    <QuestionSection id="tight" question="How tight?" aside={aside}>
      {torque.kind === 'refused' && (
        <div className={styles['refused']}>
          <h3>No torque fits</h3>
          <DerivationRow slot="no-torque">
            <p>
              <Told sentence={sentenceOfNoTorque(torque)} />
            </p>
            <DerivationSlot name="no-torque" />
          </DerivationRow>
          {torque.openedBy.length > 0 ? (
            <>
              <p>Each of these alone opens a window:</p>
              <ul>
                {torque.openedBy.map((opening) => (
                  <li key={opening}>{sentenceOfOpening(opening)}</li>
                ))}
              </ul>
            </>
          ) : (
            <p>No single change opens a window. Take another insert, or join the parts another way.</p>
          )}
        </div>
      )}
      <TorqueRuler joint={joint} assessment={assessment} />
      <p className={styles['tool']}>
        {tool.kind === 'hand'
          ? `Tightened by hand, ±${percentText(tool.deviation)}.`
          : `Torque driver, ±${percentText(tool.deviation)}${tool.settings.length > 0 ? '; its settings are the triangles' : `, in steps of ${torqueText(tool.step)}`}.`}
      </p>
      <TorqueFigures assessment={assessment} />
      {tool.kind === 'hand' && <ByHand assessment={assessment} />}
    </QuestionSection>
  );
}

/** What to heed where the torque is felt. */
function ByHand({ assessment }: { readonly assessment: JointAssessment }) {
  const { most } = assessment.torque;
  return (
    <div className={styles['cautions']}>
      <h3>By hand</h3>
      <ul>
        <DerivationRow slot="by-hand">
          <li>
            <Told
              sentence={said`Hold a short key between two fingers; ${told(most)} is reached sooner than it feels.`}
            />
            <DerivationSlot name="by-hand" />
          </li>
        </DerivationRow>
        <li>
          Stop when the head seats, then add a little. A turn that grows easier has stripped or pulled
          something.
        </li>
        <li>A driver’s clutch stops early on a soft joint: its scale is meant for stiff ones.</li>
      </ul>
    </div>
  );
}
