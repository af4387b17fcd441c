import { useState } from 'react';
import type { Insert } from '../../../core/inserts/insert.ts';
import { insertDimensions } from '../../../core/inserts/insert-dimensions.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import type { Recommendation } from '../../../core/recommend/recommendation.ts';
import { decimalText } from '../../../wording/amount.ts';
import { OutRow, RankRow } from './rank-rows.tsx';
import styles from './which-insert.module.css';

export interface RankTableProps {
  readonly joint: Joint;
  readonly drawer: readonly Insert[];
  readonly recommendation: Extract<Recommendation, { readonly kind: 'answered' }>;
  readonly chosenInsertId: string;
  readonly onChoose: (insertId: string) => void;
}

/** A drawer of thousands is shown in part until asked for. */
const ROWS_AT_FIRST = 12;
const COLUMNS = 8;

/** The drawer as one table: rank, size, what to draw, what it holds, what limits it. */
export function RankTable({ joint, drawer, recommendation, chosenInsertId, onChoose }: RankTableProps) {
  const [all, setAll] = useState(false);
  const { ranked, rejected } = recommendation;
  const inserts = new Map(drawer.map((insert) => [insert.id, insert]));
  const isShown = (id: string, index: number) => all || index < ROWS_AT_FIRST || id === chosenInsertId;
  const rankedShown = ranked.filter(({ assessment }, index) => isShown(assessment.insertId, index));
  const rejectedShown = rejected.filter(({ rejection }, index) => isShown(rejection.insertId, index));
  const shown = [
    ...rankedShown.map(({ assessment }) => assessment.insertId),
    ...rejectedShown.map(({ rejection }) => rejection.insertId),
  ];
  const largestDiameter = Math.max(
    ...shown.map((id) => {
      const insert = inserts.get(id);
      return insert ? insertDimensions(insert).knurlDiameter.estimate.value : 0;
    }),
  );
  const [best] = ranked;
  const isGiven = joint.holes.existing !== undefined;
  const hidden = ranked.length + rejected.length - shown.length;
  return (
    <div>
      <table className={styles['rank']}>
        <caption className="out-of-sight">Inserts of the drawer ranked for this joint</caption>
        <thead>
          <tr>
            <th scope="col">Rank</th>
            <th scope="col" colSpan={2}>
              Insert, knurl ⌀ × length
            </th>
            <th scope="col" className={styles['number']}>
              {isGiven ? 'Hole given' : 'Hole to draw'}
              <br />⌀ mm
            </th>
            <th scope="col" className={styles['number']}>
              Deep
              <br />
              mm
            </th>
            <th scope="col" className={styles['number']}>
              Pull-out
              <br />
              holds N
            </th>
            <th scope="col" className={styles['number']}>
              Dial
              <br />
              N·m
            </th>
            <th scope="col">What limits it</th>
          </tr>
        </thead>
        <tbody>
          {best &&
            rankedShown.map((candidate) => (
              <RankRow
                key={candidate.assessment.insertId}
                candidate={candidate}
                best={best.assessment}
                insert={inserts.get(candidate.assessment.insertId)}
                largestDiameter={largestDiameter}
                isChosen={candidate.assessment.insertId === chosenInsertId}
                onChoose={onChoose}
              />
            ))}
          {ranked.length === 0 && (
            <tr className={styles['heading']}>
              <td colSpan={COLUMNS}>No insert of the drawer fits this joint</td>
            </tr>
          )}
          {rejectedShown.length > 0 && (
            <tr className={styles['heading']}>
              <th scope="rowgroup" colSpan={COLUMNS}>
                Out for this joint
              </th>
            </tr>
          )}
          {rejectedShown.map((candidate) => (
            <OutRow
              key={candidate.rejection.insertId}
              joint={joint}
              candidate={candidate}
              insert={inserts.get(candidate.rejection.insertId)}
              largestDiameter={largestDiameter}
              isChosen={candidate.rejection.insertId === chosenInsertId}
              onChoose={onChoose}
            />
          ))}
        </tbody>
      </table>
      {hidden > 0 && (
        <button type="button" className={`go ${styles['more']}`} onClick={() => setAll(true)}>
          Show the other {decimalText(hidden, 0)}
        </button>
      )}
    </div>
  );
}
