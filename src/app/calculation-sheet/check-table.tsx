import { factorText } from '../../wording/amount.ts';
import { carriedText } from '../../wording/carried.ts';
import { nameOfEnd } from '../../wording/hold.ts';
import type { NumberedCheck } from './calculation-steps.ts';
import styles from './check-table.module.css';

/** What is borne against what is asked, each by the number of its step. */
export function CheckTable({
  checks,
  caption,
}: {
  readonly checks: readonly NumberedCheck[];
  readonly caption: string;
}) {
  return (
    <table className={styles['checks']}>
      <caption className="out-of-sight">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Check</th>
          <th scope="col">bears, or is left</th>
          <th scope="col">is asked</th>
          <th scope="col">times</th>
        </tr>
      </thead>
      <tbody>
        {checks.map((check) => (
          <tr key={check.of} data-governs={check.governs || undefined}>
            <th scope="row">
              {nameOfEnd(check.of)}
              {check.governs && <em>, governs</em>}
            </th>
            <td>
              {carriedText(check.bears.value, check.bears.unit)} ({check.bearsStep})
            </td>
            <td>
              {carriedText(check.asked.value, check.asked.unit)} ({check.askedStep})
            </td>
            <td>{check.times === undefined ? 'not loaded' : factorText(check.times)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
