import { useState } from 'react';
import { lastingLoadOf, type ProofRow, proofRows, scatterOf } from '../../../core/bench/proof-rows.ts';
import { PROOF_HOLD } from '../../../core/evidence/proof-plan.ts';
import { admit } from '../../../core/joint/stop.ts';
import { decimalText, durationText, forceText, percentText } from '../../../wording/amount.ts';
import { STANDINGS } from '../../../wording/standing.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { ChoiceField } from '../../fields/choice-field.tsx';
import { QuantityField } from '../../fields/quantity-field.tsx';
import { definitionOf, fromDocument } from '../../state/quantity-of-key.ts';
import { useFindings, useSheetValue } from '../../state/sheet-context.ts';
import { ProofNotes } from './proof-notes.tsx';
import { ProofValue } from './proof-value.tsx';
import { scaleText } from './scale-text.ts';
import { TestSheet } from './test-sheet.tsx';
import styles from './what-tests-say.module.css';

const COUNTS = [1, 3, 5, 10] as const;
const COUNT_CHOICES = COUNTS.map((count) => ({ value: String(count), label: String(count) }));
const COLUMNS = 4;
const ABOVE_ZERO = { min: 0, minInclusive: false } as const;
const LOAD = { ...definitionOf({ limit: 'pull_N', unit: 'N', step: 10 }), ...ABOVE_ZERO };
const SCALE = { ...definitionOf({ limit: 'testValue', unit: 'kgf', step: 1 }), ...ABOVE_ZERO };
const LEVER = definitionOf({ limit: 'leverRatio', unit: '-', step: 0.1 });
/** A hanging scale as it is sold, and a load to begin with where the joint names none. */
const USUAL_SCALE = 50;
const USUAL_LOAD = 100;

/** How long the joint is under load, and how much more a short pull must show for it; what its tests say of the scatter. */
function useProofOfJoint() {
  const { joint, evidence } = useFindings();
  const isUsed = useSheetValue(({ journal }) => journal.present.evidence === 'used');
  const admission = admit(joint);
  return {
    pull: joint.loads.pull,
    warmth: joint.loads.serviceTemperature,
    lastingOfJoint: admission.kind === 'admitted' ? lastingLoadOf(admission.joint) : undefined,
    within: scatterOf(isUsed ? evidence?.ofJoint : undefined),
  };
}

/** What must be pulled to be allowed to rely on a load, with the scale and the lever at hand. */
export function ProofPlanPart() {
  const { pull, warmth, lastingOfJoint, within } = useProofOfJoint();
  const [load, setLoad] = useState(pull > 0 ? pull : USUAL_LOAD);
  const [isLasting, setLasting] = useState(true);
  const [scaleLimit, setScale] = useState(fromDocument(USUAL_SCALE, 'kgf'));
  const [leverRatio, setLever] = useState(1);
  const [count, setCount] = useState(3);
  const [isSheetOpen, setSheet] = useState(false);
  const lasting = isLasting ? lastingOfJoint : undefined;
  const rows = proofRows(COUNTS, {
    load,
    scatter: within.scatter,
    rig: { leverRatio, scaleLimit },
    ...(lasting ? { lasting } : {}),
  });
  const chosen = rows.find((row) => row.count === count);
  const { sign, words } = STANDINGS.estimate;
  return (
    <section className={styles['setup']}>
      <h3>What must I pull to rely on a load?</h3>
      <p className={styles['words']}>
        If every coupon holds the load beside its number, 95 % of joints made and set alike hold the load to
        rely on, with 95 % confidence. One that breaks proves nothing: enter what it held in the log.{' '}
        <span className="line">
          {sign} {words}
        </span>
      </p>
      <div className={styles['fields']}>
        <QuantityField
          label="Load to rely on"
          noun="A load"
          definition={LOAD}
          value={load}
          onTake={setLoad}
        />
        {lastingOfJoint ? (
          <ChoiceField
            label="It acts"
            choices={[
              { value: 'lasting', label: `for ${durationText(lastingOfJoint.hours)}, as in this joint` },
              { value: 'short', label: 'for a moment' },
            ]}
            value={isLasting ? 'lasting' : 'short'}
            onTake={(taken) => setLasting(taken === 'lasting')}
          />
        ) : null}
        <QuantityField
          label="The scale shows up to"
          unitShown="kg"
          noun="The end of the scale"
          definition={SCALE}
          value={scaleLimit}
          onTake={setScale}
        />
        <QuantityField
          label="Lever ratio"
          definition={LEVER}
          value={leverRatio}
          onTake={setLever}
          note="Force at the insert over force at the scale; 1 without a lever."
        />
      </div>
      <table className={styles['table']}>
        <caption>Pull each coupon this far, and see it hold for {PROOF_HOLD.usual} s</caption>
        <thead>
          <tr>
            <th scope="col">Coupons</th>
            <th scope="col">load at each insert</th>
            <th scope="col">the scale shows</th>
            <th scope="col">hold that load itself, at least</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Row key={row.count} row={row} />
          ))}
        </tbody>
      </table>
      <div className={styles['fields']}>
        <ChoiceField
          label="Coupons to be pulled"
          choices={COUNT_CHOICES}
          value={String(count)}
          onTake={(taken) => setCount(Number(taken))}
        />
      </div>
      {chosen ? (
        <ProofNotes within={within} row={chosen} warmth={warmth} {...(lasting ? { lasting } : {})} />
      ) : null}
      <p className={styles['press']}>
        <button type="button" className="go" onClick={() => setSheet(true)}>
          Test sheet to print
        </button>
      </p>
      {isSheetOpen && chosen ? (
        <TestSheet
          row={chosen}
          load={load}
          leverRatio={leverRatio}
          warmth={warmth}
          {...(lasting ? { lasting } : {})}
          onClose={() => setSheet(false)}
        />
      ) : null}
    </section>
  );
}

function Row({ row: { count, proofLoad, shareAtProofLoad, reading } }: { readonly row: ProofRow }) {
  const slot = `proof ${count}`;
  const many = `${count} ${count === 1 ? 'coupon' : 'coupons'}`;
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">{many}</th>
        <td data-name="load at each insert">
          <ProofValue
            of={proofLoad}
            text={forceText(proofLoad.value)}
            what={`${many}, load at each insert`}
          />
        </td>
        <td data-name="the scale shows">
          {reading.kind === 'reading' ? (
            <ProofValue
              of={reading.reading}
              text={scaleText(reading.reading.value)}
              what={`${many}, the scale shows`}
            />
          ) : (
            <>
              beyond its end: lever{' '}
              <ProofValue
                of={reading.leverRatio}
                text={decimalText(reading.leverRatio.value, 2)}
                what={`${many}, lever ratio needed`}
              />
            </>
          )}
        </td>
        <td data-name="hold that load itself, at least">
          <ProofValue
            of={shareAtProofLoad}
            text={percentText(shareAtProofLoad.value)}
            what={`${many}, share`}
          />
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}
