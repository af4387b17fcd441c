import { useEffect, useMemo, useRef } from 'react';
import { createPortal } from 'react-dom';
import type { Insert } from '../../core/inserts/insert.ts';
import type { JointAssessment } from '../../core/joint/assessment.ts';
import type { Joint } from '../../core/joint/joint.ts';
import { admit } from '../../core/joint/stop.ts';
import { type Hold, holdOf } from '../../core/service/hold.ts';
import { CAUTIONS } from '../../wording/cautions.ts';
import { sentenceOfNotice } from '../../wording/notices.ts';
import { seatSentence } from '../../wording/seat.ts';
import { plainText } from '../../wording/sentence.ts';
import { shownNotices } from '../state/shown-notices.ts';
import styles from './calculation-sheet.module.css';
import { calculationSteps } from './calculation-steps.ts';
import { GivenList } from './given-list.tsx';
import { PartSection } from './part-section.tsx';
import { keyOfPart } from './part-titles.ts';
import { SourceList, sourcesOf } from './source-list.tsx';
import { TitleBlock } from './title-block.tsx';

export interface CalculationSheetProps {
  readonly name: string;
  readonly scenario: string;
  readonly documentVersion: number;
  readonly joint: Joint;
  readonly insert: Insert;
  readonly assessment: JointAssessment;
  readonly onClose: () => void;
}

/** The whole calculation of the joint on one sheet, to be checked by hand: opened over the page, printed alone. */
export function CalculationSheet(props: CalculationSheetProps) {
  const { joint, insert, assessment, onClose } = props;
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const element = dialog.current;
    element?.showModal();
    return () => element?.close();
  }, []);
  const { groups, notices } = useMemo(() => {
    const hold = holdAt(joint, insert, assessment);
    const remarks = { notices: shownNotices(joint, insert, assessment) };
    const life = hold === undefined ? {} : { hold };
    return { groups: calculationSteps({ joint, assessment, ...remarks, ...life }), ...remarks };
  }, [joint, insert, assessment]);
  const sources = sourcesOf(groups);
  // Beside the page and not within it, so that print can leave the page out.
  return createPortal(
    <dialog ref={dialog} className={styles['sheet']} aria-labelledby="calculation-title" onClose={onClose}>
      <div className={styles['bar']}>
        <button type="button" className="go" onClick={() => window.print()}>
          Print this sheet
        </button>
        <button type="button" className="go" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <TitleBlock {...props} />
      <p className={styles['how']}>
        Every number is written once, after all that goes into it; a number in round brackets names the step
        that it comes from, one in square brackets its source. Values are printed with one digit more than is
        known, and the calculation carries all of them: a check by hand agrees to the last printed digit or
        the one before it. Lengths in mm, forces in N, stresses in MPa, torques in N·mm; a thousand N·mm are
        one N·m.
      </p>
      <GivenList joint={joint} insert={insert} />
      <p className={styles['seat']}>{seatSentence(assessment.seat)}</p>
      {groups.map((group) => (
        <PartSection
          key={keyOfPart(group.id)}
          group={group}
          numberOfSource={(source) => sources.indexOf(source) + 1}
        />
      ))}
      <SourceList sources={sources} />
      <section className={styles['words']}>
        <h3>To know about this joint</h3>
        <ul>
          {notices.map((notice) => (
            <li key={notice.code}>{plainText(sentenceOfNotice(notice))}</li>
          ))}
        </ul>
        <h3>At the bench</h3>
        <ul>
          {CAUTIONS.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </section>
    </dialog>,
    document.body,
  );
}

/** How the joint holds through its life; nothing is asked where no torque fits. */
function holdAt(given: Joint, insert: Insert, { torque }: JointAssessment): Hold | undefined {
  const admission = admit(given);
  if (admission.kind === 'stopped' || torque.kind === 'refused') return undefined;
  return holdOf(admission.joint, insert, torque.dial);
}
