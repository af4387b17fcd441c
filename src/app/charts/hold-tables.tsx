import type { Known, PreloadCurve, StrengthPoint } from '../../core/service/curves.ts';
import { decimalText, percentText, significantText, temperatureText } from '../../wording/amount.ts';
import styles from './charts.module.css';

interface HoldTablesProps {
  readonly curves: readonly PreloadCurve[];
  readonly strength: readonly StrengthPoint[];
}

/** Every so many points of the strength curve make a row. */
const EVERY = 4;

/** What is left at the careful end, and after it what the other end would leave where that is another figure. */
function knownText(known: Known | undefined): string {
  if (known === undefined) return '';
  const [careful, best] = [percentText(known.careful), percentText(known.best)];
  return careful === best ? careful : `${careful}, at best ${best}`;
}

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
                <td key={temperature}>{knownText(points[index])}</td>
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
            .map(({ temperature, ...known }) => (
              <tr key={temperature}>
                <th scope="row">{decimalText(temperature, 0)}</th>
                <td>{knownText(known)}</td>
              </tr>
            ))}
        </tbody>
      </table>
    </details>
  );
}
