import { movedHold } from '../../core/bench/moved-hold.ts';
import { admit } from '../../core/joint/stop.ts';
import { forceNumber, forceText } from '../../wording/amount.ts';
import { STANDINGS } from '../../wording/standing.ts';
import { reasonForTests } from '../../wording/what-tests-say.ts';
import type { Findings } from '../state/findings.ts';
import { useFindings, useSheetValue } from '../state/sheet-context.ts';
import { AnswerUnit, Margin, Why } from './answer.tsx';
import styles from './answers.module.css';
import { ComputedAnswer } from './computed-answer.tsx';

const LESSER = `${styles.big} ${styles.lesser}`;

/** What the tests of the joint's own set-up make of the insert on the sheet; undefined where they say nothing. */
function movedOf({ joint, shown, evidence }: Findings) {
  const admission = admit(joint);
  if (!shown || evidence?.ofJoint === undefined || admission.kind === 'stopped') return undefined;
  const { tested, posterior } = evidence.ofJoint;
  return {
    ...movedHold(admission.joint, shown.insert, tested),
    coupons: posterior.unpulled.coupons,
    hasBroken: posterior.unpulled.broke > 0,
  };
}

/** What did my tests say: the pull-out that they moved, from what to what, and what 19 of 20 hold. */
export function TestsAnswer() {
  const findings = useFindings();
  const count = useSheetValue(({ journal }) => journal.present.tests.length);
  const isLeftOut = useSheetValue(({ journal }) => journal.present.evidence === 'left-out');
  const moved = movedOf(findings);
  if (moved === undefined) {
    return (
      <>
        <div className={LESSER}>{count === 0 ? 'none yet' : 'nothing here'}</div>
        <Why>{reasonForTests({ tests: count, setups: findings.evidence?.setups.length ?? 0 })}</Why>
      </>
    );
  }
  const { before, after, coupons, hasBroken } = moved;
  const { sign, words } = hasBroken ? STANDINGS.measured : STANDINGS.estimate;
  return (
    <>
      <div className={LESSER}>
        <ComputedAnswer
          derived={[before.median, after.median]}
          text={
            <>
              <span className={styles.from}>{forceNumber(before.median.value)} → </span>
              {forceNumber(after.median.value)}
            </>
          }
          label={`Pull-out, from ${forceText(before.median.value)} to ${forceText(after.median.value)}`}
          look="plain"
        />
        <AnswerUnit unit="N" />
      </div>
      <Margin>
        <b>
          <ComputedAnswer
            derived={after.characteristic}
            text={forceText(after.characteristic.value)}
            label={`19 of 20 hold ${forceText(after.characteristic.value)}`}
          />
        </b>{' '}
        in 19 of 20,{' '}
        <ComputedAnswer
          derived={before.characteristic}
          text={forceNumber(before.characteristic.value)}
          label={`19 of 20 without the tests, ${forceText(before.characteristic.value)}`}
        />{' '}
        without; {sign} {words}
      </Margin>
      <Why>
        {reasonForTests({ tests: count, setups: 1, speaking: coupons, ...(isLeftOut ? { isLeftOut } : {}) })}
      </Why>
    </>
  );
}

/** The value alone, as it fits in a line. */
export function ShortTests() {
  const findings = useFindings();
  const count = useSheetValue(({ journal }) => journal.present.tests.length);
  const moved = movedOf(findings);
  if (moved === undefined) return count === 0 ? 'none yet' : 'nothing here';
  return forceText(moved.after.median.value);
}
