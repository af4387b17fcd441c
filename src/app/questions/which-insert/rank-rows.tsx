import { useRef } from 'react';
import type { Insert } from '../../../core/inserts/insert.ts';
import { insertDimensions } from '../../../core/inserts/insert-dimensions.ts';
import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import type { Candidate, RejectedCandidate } from '../../../core/recommend/recommendation.ts';
import {
  capitalised,
  diameterNumber,
  forceNumber,
  forceText,
  lengthNumber,
  lengthText,
  torqueNumber,
  torqueText,
} from '../../../wording/amount.ts';
import { sizeOfInsert } from '../../../wording/names.ts';
import { remarkOfCandidate } from '../../../wording/reasons.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import { ToldRejection } from '../../derivation/told-rejection.tsx';
import { InsertSilhouette } from '../../drawing/insert-silhouette.tsx';
import names from './name-cell.module.css';
import styles from './which-insert.module.css';

/** Columns of the table, for the row that a derivation opens in. */
const COLUMNS = 8;

interface RowProps {
  readonly insert: Insert | undefined;
  readonly largestDiameter: number;
  readonly isChosen: boolean;
  readonly onChoose: (insertId: string) => void;
}

interface RankRowProps extends RowProps {
  readonly candidate: Candidate;
  readonly best: JointAssessment;
}

/** An insert that fits. */
export function RankRow({ candidate, best, insert, ...row }: RankRowProps) {
  const { rank, assessment } = candidate;
  if (insert === undefined) return null;
  const slot = `insert-${insert.id}`;
  return (
    <DerivationRow slot={slot}>
      <tr className={`${styles['row']} ${rank === 1 ? styles['best'] : ''}`} data-rank={rank}>
        <td className={styles['place']}>{rank}</td>
        <Outline insert={insert} largestDiameter={row.largestDiameter} />
        <NameCell insert={insert} action="use this one" {...row} />
        <HoleCells assessment={assessment} />
        <TorqueCell assessment={assessment} />
        <td className={styles['reason']}>
          <Told sentence={remarkOfCandidate(assessment, best)} />
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}

interface OutRowProps extends RowProps {
  readonly candidate: RejectedCandidate;
  readonly joint: Joint;
}

/** An insert that is out, with the reason in full. */
export function OutRow({ candidate, joint, insert, ...row }: OutRowProps) {
  const { rejection, assessment } = candidate;
  if (insert === undefined) return null;
  const slot = `insert-${insert.id}`;
  return (
    <DerivationRow slot={slot}>
      <tr className={`${styles['row']} ${styles['out']}`}>
        <td className={styles['place']}>out</td>
        <Outline insert={insert} largestDiameter={row.largestDiameter} />
        <NameCell insert={insert} action={assessment && 'show it anyway'} isOut {...row} />
        <td className={styles['number']} />
        <td className={styles['number']} />
        <td className={styles['number']} data-name="holds, N">
          {assessment && <Holds assessment={assessment} />}
        </td>
        <td className={styles['number']} />
        <td className={styles['reason']}>
          <ToldRejection joint={joint} insert={insert} rejection={rejection} />
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}

function Outline({ insert, largestDiameter }: { readonly insert: Insert; readonly largestDiameter: number }) {
  const { knurlDiameter, pilotDiameter, length, knurledLength } = insertDimensions(insert);
  return (
    <td className={styles['outline']}>
      <InsertSilhouette
        insert={{
          knurlDiameter: knurlDiameter.estimate.value,
          pilotDiameter: pilotDiameter.estimate.value,
          length: length.estimate.value,
          knurledLength: knurledLength.estimate.value,
        }}
        largestDiameter={largestDiameter}
      />
    </td>
  );
}

interface NameCellProps extends Omit<RowProps, 'insert' | 'largestDiameter'> {
  readonly insert: Insert;
  /** Absent: it cannot be picked at all. */
  readonly action: string | undefined;
  readonly isOut?: boolean;
}

function NameCell({ insert, action, isOut, isChosen, onChoose }: NameCellProps) {
  const cell = useRef<HTMLTableCellElement>(null);
  const name = `${insert.thread.designation} ${sizeOfInsert(insertDimensions(insert))}`;
  return (
    <th ref={cell} scope="row" className={styles['name']} tabIndex={-1}>
      {isOut ? <s>{name}</s> : name}
      {insert.label !== undefined && <span className={names['label']}>{insert.label}</span>}
      {isChosen ? (
        <span className={names['label']}>shown on this sheet</span>
      ) : (
        action !== undefined && (
          <button
            type="button"
            className={`press ${names['action']}`}
            aria-label={`${action}: ${name}`}
            onClick={() => {
              // The button goes; the focus stays in its row.
              cell.current?.focus();
              onChoose(insert.id);
            }}
          >
            {action}
          </button>
        )
      )}
    </th>
  );
}

function HoleCells({ assessment }: { readonly assessment: JointAssessment }) {
  const { drawn, depth, existing } = assessment.hole;
  const name = existing ? 'hole given' : 'hole to draw';
  return (
    <>
      <td className={styles['number']} data-name={`${name}, ⌀ mm`}>
        <ComputedValue
          derived={drawn}
          text={diameterNumber(drawn.value)}
          label={`${capitalised(name)}, ${lengthText(drawn.value)}`}
        />
      </td>
      <td className={styles['number']} data-name="deep, mm">
        <ComputedValue
          derived={depth}
          text={lengthNumber(depth.value)}
          label={`Depth of the hole, ${lengthText(depth.value)}`}
        />
      </td>
      <td className={styles['number']} data-name="holds, N">
        <Holds assessment={assessment} />
      </td>
    </>
  );
}

function Holds({ assessment }: { readonly assessment: JointAssessment }) {
  const { characteristic } = assessment.holds;
  return (
    <ComputedValue
      derived={characteristic}
      text={forceNumber(characteristic.value)}
      label={`Pull-out holds ${forceText(characteristic.value)}`}
    />
  );
}

function TorqueCell({ assessment }: { readonly assessment: JointAssessment }) {
  const { torque } = assessment;
  return (
    <td className={styles['number']} data-name="dial, N·m">
      {torque.kind === 'window' ? (
        <ComputedValue
          derived={torque.dial}
          text={torqueNumber(torque.dial.value)}
          label={`Dial, ${torqueText(torque.dial.value)}`}
        />
      ) : (
        'none'
      )}
    </td>
  );
}
