import { forceText, lengthNumber, lengthText, torqueText } from '../../wording/amount.ts';
import styles from './charts.module.css';
import type { Panel } from './length-series.ts';

/** The same content as a table, for whoever cannot see the charts or wants the figures. */
export function LengthTable({ panels }: { readonly panels: readonly Panel[] }) {
  return (
    <details className={styles['details']}>
      <summary className="go">The charts as a table</summary>
      {panels.map((panel) => (
        <table key={panel.knurlDiameter} className={styles['table']}>
          <caption>Knurl ⌀ {lengthText(panel.knurlDiameter)}</caption>
          <thead>
            <tr>
              <th scope="col">Length, mm</th>
              <th scope="col">19 of 20 hold</th>
              <th scope="col">Half hold</th>
              <th scope="col">1 of 20 holds</th>
              <th scope="col">Pulls out at</th>
              <th scope="col">Dial</th>
            </tr>
          </thead>
          <tbody>
            {panel.points.map((point) => (
              <tr key={point.length}>
                <th scope="row">{lengthNumber(point.length)}</th>
                <td>{forceText(point.characteristic)}</td>
                <td>{forceText(point.median)}</td>
                <td>{forceText(point.upper)}</td>
                <td>{torqueText(point.jackOutTorque)}</td>
                <td>{point.dial === undefined ? 'none' : torqueText(point.dial)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </details>
  );
}
