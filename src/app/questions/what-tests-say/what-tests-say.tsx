import { lazy, Suspense } from 'react';
import type { SetupEvidence } from '../../../core/bench/evidence.ts';
import { knurlShearOf } from '../../../core/bench/moved-hold.ts';
import { admit } from '../../../core/joint/stop.ts';
import { bondFactor } from '../../../core/pull-out/bond.ts';
import { countWord, forceText } from '../../../wording/amount.ts';
import { STANDINGS } from '../../../wording/standing.ts';
import { bondText } from '../../../wording/test-findings.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { insertName } from '../../joint/drawer/insert-name.ts';
import { useFindings, useSheetValue } from '../../state/sheet-context.ts';
import { QuestionSection } from '../question-section.tsx';
import { ComparePart } from './compare-part.tsx';
import { EvidenceSwitch } from './evidence-switch.tsx';
import { ProofPlanPart } from './proof-plan.tsx';
import { SetupPart } from './setup-part.tsx';
import styles from './what-tests-say.module.css';

const TestedLength = lazy(() => import('../../charts/tested-length.tsx'));

/** What the tests moved, how sure that is, and the switch that leaves them out. */
export default function WhatTestsSay() {
  const tests = useSheetValue(({ journal }) => journal.present.tests.length);
  const { evidence } = useFindings();
  const setups = evidence?.setups ?? [];
  return (
    <QuestionSection
      id="tests"
      question="What did my tests say?"
      aside="A short pull on a few coupons says nothing of months under load, of heat or of another printer. Where a failure can hurt someone, a test by a qualified laboratory and your local codes decide."
    >
      {tests === 0 ? <NoTests /> : null}
      {tests > 0 && setups.length === 0 ? <NothingOfTheBond /> : null}
      {setups.length === 0 ? null : (
        <>
          <EvidenceSwitch />
          <Setups setups={setups} own={evidence?.ofJoint} />
          <ComparePart findings={evidence?.findings ?? []} />
        </>
      )}
      <ProofPlanPart />
    </QuestionSection>
  );
}

/** The joint's own set-up first. */
function Setups({
  setups,
  own,
}: {
  readonly setups: readonly SetupEvidence[];
  readonly own: SetupEvidence | undefined;
}) {
  const others = setups.filter((setup) => setup !== own);
  return (
    <>
      {own ? (
        <>
          <SetupPart setup={own} isOwn />
          <OverLength setup={own} />
        </>
      ) : (
        <NotOfThisSetup count={others.length} />
      )}
      {others.map((setup) => (
        <SetupPart
          key={`${setup.printer ?? ''} ${setup.material} ${setup.setting}`}
          setup={setup}
          isOwn={false}
        />
      ))}
    </>
  );
}

function OverLength({ setup }: { readonly setup: SetupEvidence }) {
  const { joint, drawer, recommendation, shown } = useFindings();
  if (!shown || recommendation.kind !== 'answered') return null;
  return (
    <Suspense fallback={null}>
      <TestedLength
        joint={joint}
        drawer={drawer}
        recommendation={recommendation}
        chosenInsertId={shown.insert.id}
        setup={setup}
      />
    </Suspense>
  );
}

const NotOfThisSetup = ({ count }: { readonly count: number }) => (
  <p className={styles['words']}>
    No coupon of this joint’s own set-up speaks: same printer, same material, same way of setting. The answers
    keep the estimate.{' '}
    {count === 1 ? 'One other set-up was tested:' : `${countWord(count)} others were tested:`}
  </p>
);

function NothingOfTheBond() {
  const { stop } = useFindings();
  return (
    <p className={styles['words']}>
      {stop
        ? 'The answers to this joint are withheld, and so is what its tests would say.'
        : 'None of the tests says anything of the bond yet. The log tells at each row why.'}
    </p>
  );
}

/** What stands while nobody has pulled a coupon. */
function NoTests() {
  const { joint, shown } = useFindings();
  const admission = admit(joint);
  const factor = bondFactor(joint.setting);
  const { sign, words } = STANDINGS.estimate;
  return (
    <DerivationRow slot="no-tests">
      <p className={styles['words']}>
        No coupon of this set-up has been pulled. Until one is, the bond factor stands at{' '}
        <ComputedValue
          derived={factor}
          text={bondText(factor.value)}
          label={`Bond factor, ${bondText(factor.value)}`}
        />{' '}
        <span className="line">
          {sign} {words}
        </span>
        {shown && admission.kind === 'admitted' ? (
          <Holds
            name={insertName(shown.insert)}
            characteristic={knurlShearOf(admission.joint, shown.insert).characteristic}
          />
        ) : (
          '.'
        )}{' '}
        Hang a coupon on a scale and enter what it held: one that only proves, without breaking, counts too.
      </p>
      <DerivationSlot name="no-tests" />
    </DerivationRow>
  );
}

function Holds({
  name,
  characteristic,
}: {
  readonly name: string;
  readonly characteristic: ReturnType<typeof knurlShearOf>['characteristic'];
}) {
  const text = forceText(characteristic.value);
  return (
    <>
      , and 19 of 20 joints with {name} are expected to hold{' '}
      <ComputedValue derived={characteristic} text={text} label={`19 of 20 hold ${text}`} />.
    </>
  );
}
