import { lazy, memo, Suspense, useDeferredValue, useMemo } from 'react';
import type { Joint } from '../../../core/joint/joint.ts';
import { admit } from '../../../core/joint/stop.ts';
import { type Hold, holdsAtBest } from '../../../core/service/hold.ts';
import { smallestMargin } from '../../../core/service/margins.ts';
import { amountText } from '../../../wording/amount.ts';
import { HOLDS_AT_BEST, sentenceOfVerdict } from '../../../wording/hold.ts';
import { sentenceOfNoTorque } from '../../../wording/reasons.ts';
import type { Sentence } from '../../../wording/sentence.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import { useNarrowScreen } from '../../drawing/narrow-screen.ts';
import type { Shown } from '../../state/findings.ts';
import { holdOfShown, isHeld } from '../../state/shown-hold.ts';
import { QuestionSection } from '../question-section.tsx';
import { ChangeFirst } from './change-first.tsx';
import { endRows } from './end-rows.ts';
import { GREATEST_MARGIN } from './margin-bar.tsx';
import { StateStack } from './state-stack.tsx';
import { StateTable } from './state-table.tsx';
import styles from './will-it-hold.module.css';

const HoldCharts = lazy(() => import('../../charts/hold-charts.tsx'));

export interface WillItHoldProps {
  readonly joint: Joint;
  readonly shown: Shown;
}

const asideOf = ({ factors }: Joint): string =>
  `Each bar ends at what 19 of 20 joints hold, over what is asked times its factor, ${amountText(factors.limits, '-')} for strength and ${amountText(factors.closed, '-')} for staying closed. The open part goes on to the median. The upright is 1: a bar that ends short of it does not hold. Bars end at ${GREATEST_MARGIN}. Beneath each factor: held for asked.`;

/** The joint through its life: every way to end in three states, what to change first, and preload and strength as curves. */
export function WillItHold({ joint, shown }: WillItHoldProps) {
  return (
    <QuestionSection id="hold" question="Will it hold?" aside={asideOf(joint)}>
      <Life joint={useDeferredValue(joint)} shown={useDeferredValue(shown)} />
    </QuestionSection>
  );
}

/** Drawn after the answers, so that an edit shows there first. */
const Life = memo(function Life({ joint, shown }: WillItHoldProps) {
  const { insert, assessment } = shown;
  const hold = holdOfShown(joint, shown);
  const admission = useMemo(() => admit(joint), [joint]);
  if (admission.kind === 'stopped') return null;
  if (hold === undefined) {
    return assessment.torque.kind === 'refused' ? (
      <Verdict sentence={sentenceOfNoTorque(assessment.torque)} />
    ) : null;
  }
  const held = isHeld(shown, hold);
  const isDialled = assessment.torque.kind === 'window';
  return (
    <>
      <Verdict sentence={sentenceOfVerdict(hold, smallestMargin(hold.worst, joint.factors), isDialled)} />
      {isDialled && holdsAtBest(admission.joint, insert, hold) && <p>{HOLDS_AT_BEST}</p>}
      <States hold={hold} joint={joint} />
      <ChangeFirst joint={admission.joint} insert={insert} hold={hold} isHeld={held} />
      <Suspense fallback={<p className={styles['unloaded']}>The curves are being drawn.</p>}>
        <HoldCharts joint={admission.joint} insert={insert} />
      </Suspense>
    </>
  );
});

const Verdict = ({ sentence }: { readonly sentence: Sentence }) => (
  <DerivationRow slot="hold verdict">
    <p className={styles['verdict']}>
      <Told sentence={sentence} />
    </p>
    <DerivationSlot name="hold verdict" />
  </DerivationRow>
);

function States({ hold, joint }: { readonly hold: Hold; readonly joint: Joint }) {
  const isNarrow = useNarrowScreen();
  return isNarrow ? (
    <StateStack hold={hold} factors={joint.factors} />
  ) : (
    <StateTable hold={hold} rows={endRows(hold, joint.factors)} />
  );
}
