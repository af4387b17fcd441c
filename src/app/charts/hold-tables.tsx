import type { PreloadCurve, StrengthPoint } from '../../core/service/curves.ts';
import { decimalText, percentText, significantText, temperatureText } from '../../wording/amount.ts';
import styles from './charts.module.css';

interface HoldTablesProps {
  readonly curves: readonly PreloadCurve[];
  readonly strength: readonly StrengthPoint[];
}

/** Every so many points of the strength curve make a row. */
const EVERY = 4;

/** The same content as tables, for whoever cannot see the charts or wants the figures. */
export function HoldTables({ curves, strength }: HoldTablesProps) {
  const [first] = curves;
  return (
    <details className={styles['details']}>
      <summary className="go">The curves as tables</summary>
      <table className={styles['table']}>
        <caption>Clamp force left over time</caption>
        <thead>
          <tr>
            <th scope="col">After, h</th>
            {curves.map(({ temperature }) => (
              <th key={temperature} scope="col">
                at {temperatureText(temperature)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {first?.points.map(({ hours }, index) => (
            <tr key={hours}>
              <th scope="row">{significantText(hours, 2)}</th>
              {curves.map(({ temperature, points }) => (
                <td key={temperature}>{percentText(points[index]?.left ?? 0)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <table className={styles['table']}>
        <caption>Strength left over temperature</caption>
        <thead>
          <tr>
            <th scope="col">Temperature, °C</th>
            <th scope="col">Strength left</th>
          </tr>
        </thead>
        <tbody>
          {strength
            .filter((_, index) => index % EVERY === 0)
            .map(({ temperature, share }) => (
              <tr key={temperature}>
                <th scope="row">{decimalText(temperature, 0)}</th>
                <td>{percentText(share)}</td>
              </tr>
            ))}
        </tbody>
      </table>
    </details>
  );
}
