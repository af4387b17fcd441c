import type { Chance } from '../../../core/chance/chance-result.ts';
import type { Draw } from '../../../core/chance/counted.ts';
import { entry } from '../../../core/sources/derived.ts';
import { forceNumber, torqueNumber } from '../../../wording/amount.ts';
import { Twin } from '../../charts/twin.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import styles from './chance.module.css';
import { Count } from './count.tsx';
import { curveLines } from './curve-shapes.ts';
import { forceLines } from './force-shapes.ts';
import type { Sampled } from './sampling-state.ts';

interface ChanceTablesProps extends Sampled {
  readonly draw: Draw;
}

/** Both charts as tables, for whoever cannot see them or wants the figures. */
export const ChanceTables = ({ result, curve, draw }: ChanceTablesProps) => (
  <Twin summary="The charts as tables">
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
          <Row
            key={from}
            name={
              to === undefined ? `above ${forceNumber(from)}` : `${forceNumber(from)} to ${forceNumber(to)}`
            }
            unit="N"
            draw={draw}
            counts={[
              ['clamp force', clampForce],
              ['weakest plastic bears', plastic],
            ]}
          />
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
          <Row
            key={torque}
            name={torqueNumber(torque)}
            unit="N·m"
            draw={{ ...draw, torque: entry('T_j', torque, 'N·mm') }}
            counts={[
              ['harmed', harm],
              ['loose', loose],
              ['either', anything],
            ]}
          />
        ))}
      </tbody>
    </table>
  </Twin>
);

interface RowProps {
  /** Force or torque of the line. */
  readonly name: string;
  readonly unit: string;
  readonly draw: Draw;
  readonly counts: readonly (readonly [what: string, chance: Chance])[];
}

function Row({ name, unit, draw, counts }: RowProps) {
  const slot = `chance ${name} ${unit}`;
  return (
    <DerivationRow slot={slot}>
      <tr className={styles['row']}>
        <th scope="row">{name}</th>
        {counts.map(([what, chance]) => (
          <td key={what}>
            <Count chance={chance} draw={draw} what={`${name} ${unit}, ${what}`} />
          </td>
        ))}
      </tr>
      <DerivationSlot name={slot} columns={1 + counts.length} />
    </DerivationRow>
  );
}
