import { decimalText, diameterNumber } from '../../wording/amount.ts';
import styles from './charts.module.css';
import type { HoleErrors } from './hole-errors.ts';

interface HoleErrorTablesProps {
  readonly found: HoleErrors;
  readonly isRead: boolean;
}

/** The same content as the picture, as tables. */
export function HoleErrorTables({ found: { rows, marks }, isRead }: HoleErrorTablesProps) {
  return (
    <details className={styles['details']}>
      <summary className="go">The picture as a table</summary>
      <table className={styles['table']}>
        <caption>Printed less drawn, mm, over the drawn diameter</caption>
        <thead>
          <tr>
            <th scope="col">drawn ⌀</th>
            <th scope="col">an unknown printer</th>
            {isRead ? <th scope="col">this printer</th> : null}
            <th scope="col">1 in 20 smaller</th>
            <th scope="col">1 in 20 larger</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ drawn, expected, prior, band: [low, high] }) => (
            <tr key={drawn}>
              <th scope="row">{diameterNumber(drawn)}</th>
              <td>{decimalText(prior, 2)}</td>
              {isRead ? <td>{decimalText(expected, 2)}</td> : null}
              <td>{decimalText(low, 2)}</td>
              <td>{decimalText(high, 2)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {marks.length === 0 ? null : (
        <table className={styles['table']}>
          <caption>The holes that were read, mm</caption>
          <thead>
            <tr>
              <th scope="col">Hole</th>
              <th scope="col">drawn ⌀</th>
              <th scope="col">printed less drawn</th>
              <th scope="col">standard uncertainty</th>
              <th scope="col">among the others</th>
            </tr>
          </thead>
          <tbody>
            {marks.map(({ number, drawn, error, standardUncertainty, outlier }) => (
              <tr key={number}>
                <th scope="row">{number}</th>
                <td>{diameterNumber(drawn)}</td>
                <td>{decimalText(error, 2)}</td>
                <td>{decimalText(standardUncertainty, 2)}</td>
                <td>{outlier ? 'far' : 'near'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </details>
  );
}
