import { useState } from 'react';
import { type ProofRow, proofRows } from '../../../core/bench/proof-rows.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { decimalText, forceText, percentText } from '../../../wording/amount.ts';
import { STANDINGS } from '../../../wording/standing.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { ChoiceField } from '../../fields/choice-field.tsx';
import { QuantityField } from '../../fields/quantity-field.tsx';
import { definitionOf, fromDocument } from '../../state/quantity-of-key.ts';
import { useFindings } from '../../state/sheet-context.ts';
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

/** What must be pulled to be allowed to rely on a load, with the scale and the lever at hand. */
export function ProofPlanPart() {
  const { joint } = useFindings();
  const [load, setLoad] = useState(joint.loads.pull > 0 ? joint.loads.pull : USUAL_LOAD);
  const [scaleLimit, setScale] = useState(fromDocument(USUAL_SCALE, 'kgf'));
  const [leverRatio, setLever] = useState(1);
  const [count, setCount] = useState(3);
  const [isSheetOpen, setSheet] = useState(false);
  const rows = proofRows(load, COUNTS, { leverRatio, scaleLimit });
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
        <QuantityField
          label="The scale shows up to"
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
        <caption>Pull each coupon this far, and see it hold</caption>
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
      <ul className={styles['notes']}>
        <li>
          The scatter within a set-up is taken as 0.10; where yours is wider, the load relied on is too high.
        </li>
        <li>A short pull at room temperature proves nothing for months under load or for heat.</li>
        <li>Add what the scale shows with the idle lever on it.</li>
      </ul>
      <div className={styles['fields']}>
        <ChoiceField
          label="Coupons to be pulled"
          choices={COUNT_CHOICES}
          value={String(count)}
          onTake={(taken) => setCount(Number(taken))}
        />
      </div>
      <p className={styles['press']}>
        <button type="button" className="go" onClick={() => setSheet(true)}>
          Test sheet to print
        </button>
      </p>
      {isSheetOpen && chosen ? (
        <TestSheet row={chosen} load={load} leverRatio={leverRatio} onClose={() => setSheet(false)} />
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
          <Value of={proofLoad} text={forceText(proofLoad.value)} what={`${many}, load at each insert`} />
        </td>
        <td data-name="the scale shows">
          {reading.kind === 'reading' ? (
            <Value
              of={reading.reading}
              text={scaleText(reading.reading.value)}
              what={`${many}, the scale shows`}
            />
          ) : (
            <>
              beyond its end: lever{' '}
              <Value
                of={reading.leverRatio}
                text={decimalText(reading.leverRatio.value, 2)}
                what={`${many}, lever ratio needed`}
              />
            </>
          )}
        </td>
        <td data-name="hold that load itself, at least">
          <Value of={shareAtProofLoad} text={percentText(shareAtProofLoad.value)} what={`${many}, share`} />
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}

interface ValueProps {
  readonly of: Derived;
  readonly text: string;
  readonly what: string;
}

const Value = ({ of, text, what }: ValueProps) => (
  <ComputedValue derived={of} text={text} label={`${what}, ${text}`} />
);
