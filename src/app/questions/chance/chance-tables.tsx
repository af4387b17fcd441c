import { forceNumber, torqueNumber } from '../../../wording/amount.ts';
import { inThousand } from '../../../wording/chance.ts';
import styles from './chance.module.css';
import { curveLines } from './curve-shapes.ts';
import { forceLines } from './force-shapes.ts';
import type { Sampled } from './sampling-state.ts';

/** Both charts as tables, for whoever cannot see them or wants the figures. */
export function ChanceTables({ result, curve }: Sampled) {
  return (
    <details className={styles['details']}>
      <summary className="go">The charts as tables</summary>
      <table className={styles['table']}>
        <caption>Joints in 1,000 by force</caption>
        <thead>
          <tr>
            <th scope="col">Force, N</th>
            <th scope="col">Clamp force</th>
            <th scope="col">Weakest plastic bears</th>
          </tr>
        </thead>
        <tbody>
          {forceLines(result).map(({ from, to, clampForce, plastic }) => (
            <tr key={from}>
              <th scope="row">
                {to === undefined
                  ? `above ${forceNumber(from)}`
                  : `${forceNumber(from)} to ${forceNumber(to)}`}
              </th>
              <td>{inThousand(clampForce)}</td>
              <td>{inThousand(plastic)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <table className={styles['table']}>
        <caption>Joints in 1,000 by the setting of the tool</caption>
        <thead>
          <tr>
            <th scope="col">Torque, N·m</th>
            <th scope="col">Harmed</th>
            <th scope="col">Loose</th>
            <th scope="col">Either</th>
          </tr>
        </thead>
        <tbody>
          {curveLines(curve).map(({ torque, harm, loose, anything }) => (
            <tr key={torque}>
              <th scope="row">{torqueNumber(torque)}</th>
              <td>{inThousand(harm.probability)}</td>
              <td>{inThousand(loose.probability)}</td>
              <td>{inThousand(anything.probability)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
