import type { HoleCalibration } from '../../../core/holes/calibrate-holes.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { decimalText } from '../../../wording/amount.ts';
import { STANDINGS } from '../../../wording/standing.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import styles from './my-printer.module.css';

const COLUMNS = 3;

/** The three numbers of the curve, before the readings and with them. */
export function CurveTable({ calibration }: { readonly calibration: HoleCalibration }) {
  const { figures, behaviour, prior } = calibration;
  const { sign, words } = STANDINGS.measured;
  return (
    <table className={styles['curve']}>
      <caption>
        The curve: a + b · ln(drawn/4 mm){' '}
        <span className="line">
          {sign} {words}
        </span>
      </caption>
      <thead>
        <tr>
          <th scope="col">mm</th>
          <th scope="col">assumed of any printer</th>
          <th scope="col">with your holes</th>
        </tr>
      </thead>
      <tbody>
        <Row
          name="Printed less drawn at 4 mm"
          before={`${decimalText(prior.offset.value, 2)} ± ${decimalText(prior.offset.standardUncertainty, 2)}`}
          found={figures.offset}
          spread={behaviour.offset.standardUncertainty}
        />
        <Row
          name="Its change with the diameter"
          before={`${decimalText(prior.slope.value, 2)} ± ${decimalText(prior.slope.standardUncertainty, 2)}`}
          found={figures.slope}
          spread={behaviour.slope.standardUncertainty}
        />
        <Row
          name="Scatter from hole to hole"
          before={decimalText(prior.repeatability, 3)}
          found={figures.scatter}
        />
      </tbody>
    </table>
  );
}

interface RowProps {
  readonly name: string;
  readonly before: string;
  readonly found: Derived;
  /** Its standard uncertainty, mm. */
  readonly spread?: number;
}

function Row({ name, before, found, spread }: RowProps) {
  const slot = `my-printer ${name}`;
  const text = decimalText(found.value, spread === undefined ? 3 : 2);
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">{name}</th>
        <td data-name="assumed">{before}</td>
        <td data-name="with your holes">
          <ComputedValue derived={found} text={text} label={`${name}, ${text} mm`} />
          {spread === undefined ? '' : ` ± ${decimalText(spread, 2)}`}
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}
