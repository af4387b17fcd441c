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
  const { figures, assumed } = calibration;
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
          before={[assumed.offset, assumed.offsetUncertainty]}
          found={[figures.offset, figures.offsetUncertainty]}
        />
        <Row
          name="Its change with the diameter"
          before={[assumed.slope, assumed.slopeUncertainty]}
          found={[figures.slope, figures.slopeUncertainty]}
        />
        <Row name="Scatter from hole to hole" before={[assumed.scatter]} found={[figures.scatter]} />
      </tbody>
    </table>
  );
}

/** A number with its standard uncertainty, or alone. */
type WithSpread = readonly [value: Derived, spread?: Derived];

interface RowProps {
  readonly name: string;
  readonly before: WithSpread;
  readonly found: WithSpread;
}

function Row({ name, before, found }: RowProps) {
  const slot = `my-printer ${name}`;
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">{name}</th>
        <td data-name="assumed">
          <Figures of={before} what={`${name}, assumed`} />
        </td>
        <td data-name="with your holes">
          <Figures of={found} what={name} />
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}

function Figures({ of: [value, spread], what }: { readonly of: WithSpread; readonly what: string }) {
  const shown = (derived: Derived, named: string, decimals: number) => {
    const text = decimalText(derived.value, decimals);
    return <ComputedValue derived={derived} text={text} label={`${named}, ${text} mm`} />;
  };
  if (spread === undefined) return shown(value, what, 3);
  return (
    <>
      {shown(value, what, 2)} ± {shown(spread, `Standard uncertainty of ${what}`, 2)}
    </>
  );
}
