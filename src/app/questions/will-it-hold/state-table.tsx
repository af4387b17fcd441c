import type { Hold } from '../../../core/service/hold.ts';
import { conditionOfState, nameOfEnd, titleOfState } from '../../../wording/hold.ts';
import { standingOf } from '../../../wording/standing.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import type { EndRow } from './end-rows.ts';
import { MarginCell } from './margin-cell.tsx';
import { StateFigures } from './state-figures.tsx';
import styles from './will-it-hold.module.css';

interface StateTableProps {
  readonly hold: Hold;
  readonly rows: readonly EndRow[];
}

/** The states side by side: one row a way to end, one column a time. */
export function StateTable({ hold, rows }: StateTableProps) {
  const { states } = hold;
  const columns = states.length + 1;
  return (
    <table className={styles['states']}>
      <caption className="out-of-sight">
        Every way to end through the life of the joint: the margin, and what is held for what is asked
      </caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="out-of-sight">Way to end</span>
          </th>
          {states.map((state) => (
            <th key={state.id} scope="col">
              <span className={styles['title']}>{titleOfState(state)}</span>
              <span className={styles['condition']}>{conditionOfState(state)}</span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ by, cells }) => (
          <DerivationRow key={by} slot={`hold-${by}`}>
            <tr>
              <th scope="row">
                {nameOfEnd(by)}
                <Standing cells={cells} />
              </th>
              {cells.map((cell) => (
                <td key={cell.state.id}>
                  <MarginCell cell={cell} />
                </td>
              ))}
            </tr>
            <DerivationSlot name={`hold-${by}`} columns={columns} />
          </DerivationRow>
        ))}
      </tbody>
      <StateFigures states={states} />
    </table>
  );
}

/** How what is held is known. */
export function Standing({ cells }: Pick<EndRow, 'cells'>) {
  const held = cells.findLast(({ margin }) => margin !== undefined)?.margin?.held;
  if (held === undefined) return null;
  const { sign, words } = standingOf(held);
  return (
    <span className={styles['standing']}>
      <span aria-hidden="true">{sign}</span> {words}
    </span>
  );
}
