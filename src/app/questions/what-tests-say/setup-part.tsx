import { lazy, Suspense, useState } from 'react';
import { bondRows } from '../../../core/bench/bond-rows.ts';
import type { SetupEvidence } from '../../../core/bench/evidence.ts';
import { movedHold } from '../../../core/bench/moved-hold.ts';
import { testSamples } from '../../../core/bench/test-samples.ts';
import { admit } from '../../../core/joint/stop.ts';
import { STANDINGS } from '../../../wording/standing.ts';
import {
  CARRIES_OVER,
  METHOD_SENTENCES,
  nameOfSetup,
  ONLY_AT_LEAST,
  SOME_AT_LEAST,
  sentenceOfMovedBond,
  sentenceOfMovedForce,
} from '../../../wording/what-tests-say.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import { HOST_MATERIALS } from '../../joint/choices.ts';
import { insertName } from '../../joint/drawer/insert-name.ts';
import { useFindings, useSheetValue } from '../../state/sheet-context.ts';
import { BondTable } from './bond-table.tsx';
import { nameOfTested } from './names.ts';
import { SamplePart } from './sample-part.tsx';
import { StrengthPart } from './strength-part.tsx';
import styles from './what-tests-say.module.css';

const BondPicture = lazy(() => import('../../charts/bond-picture.tsx'));

interface SetupPartProps {
  readonly setup: SetupEvidence;
  /** Whether it is the joint's. */
  readonly isOwn: boolean;
}

/** All that the tests of one set-up say. */
export function SetupPart({ setup, isOwn }: SetupPartProps) {
  const printers = useSheetValue(({ journal }) => journal.present.printers);
  const printer = printers.find(({ id }) => id === setup.printer)?.name ?? setup.printer;
  const material = HOST_MATERIALS.find(({ value }) => value === setup.material)?.label ?? setup.material;
  const { broke, coupons } = setup.posterior.unpulled;
  const size = useSizeOf(setup);
  return (
    <section className={styles['setup']}>
      <h3>
        {nameOfSetup({ material, setting: setup.setting, printer })}
        {isOwn ? ': this joint’s set-up' : ''}
      </h3>
      <MovedSentence setup={setup} isOwn={isOwn} />
      <BondTable rows={bondRows(setup)} setup={setup} />
      <ul className={styles['notes']}>
        {broke === coupons ? null : <li>{broke === 0 ? ONLY_AT_LEAST : SOME_AT_LEAST}</li>}
        <li>{CARRIES_OVER}</li>
        <li>{METHOD_SENTENCES[setup.posterior.method]}</li>
      </ul>
      <Suspense fallback={null}>
        <BondPicture setup={setup} size={size} name={nameOfTested(setup)(size)} />
      </Suspense>
      <Samples setup={setup} />
      <StrengthPart setup={setup} />
    </section>
  );
}

/** The loads as they were measured, by the statistics in print. */
function Samples({ setup }: { readonly setup: SetupEvidence }) {
  // Worked out for whoever opens it, not anew with every edit of the joint.
  const [isOpen, setOpen] = useState(false);
  const samples = testSamples(setup);
  if (samples.length === 0) return null;
  const nameOf = nameOfTested(setup);
  return (
    <details className={styles['more']} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary className="go">The loads as measured, by the statistics in print</summary>
      {isOpen
        ? samples.map((sample) => (
            <SamplePart
              key={`${sample.insertId} ${sample.kind}`}
              of={sample}
              name={nameOf(sample.insertId)}
              within={`${setup.printer ?? ''} ${setup.material} ${setup.setting}`}
            />
          ))
        : null}
    </details>
  );
}

/** The size whose bond is drawn: that of the insert on the sheet if it was pulled, else the first that was. */
function useSizeOf({ tested }: SetupEvidence): string {
  const { shown } = useFindings();
  const [first = ''] = tested.bySize.keys();
  return shown && tested.bySize.has(shown.insert.id) ? shown.insert.id : first;
}

function MovedSentence({ setup, isOwn }: SetupPartProps) {
  const { joint, shown } = useFindings();
  const isLeftOut = useSheetValue(({ journal }) => journal.present.evidence === 'left-out');
  const admission = admit(joint);
  const { coupons, broke } = setup.posterior.unpulled;
  const { sign, words } = broke === 0 ? STANDINGS.estimate : STANDINGS.measured;
  const size = useSizeOf(setup);
  const counted = { coupons, broke };
  const slot = `moved ${setup.printer ?? ''} ${setup.material} ${setup.setting}`;
  const sentence = () => {
    if (isOwn && shown && admission.kind === 'admitted') {
      const { before, after } = movedHold(admission.joint, shown.insert, setup.tested);
      return sentenceOfMovedForce({
        ...counted,
        of: insertName(shown.insert),
        before,
        after,
      });
    }
    const { before, rows } = bondRows(setup);
    const row = rows.find(({ insertId }) => insertId === size);
    return row === undefined
      ? []
      : sentenceOfMovedBond({
          ...counted,
          of: nameOfTested(setup)(size),
          before: before.found,
          after: row.found,
        });
  };
  return (
    <DerivationRow slot={slot}>
      <p className={styles['words']}>
        <Told sentence={sentence()} />{' '}
        <span className="line">
          {sign} {words}
        </span>
        {isOwn && isLeftOut ? <b> The answers leave this out.</b> : null}
      </p>
      <DerivationSlot name={slot} />
    </DerivationRow>
  );
}
