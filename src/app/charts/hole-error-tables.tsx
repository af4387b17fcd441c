import type { HoleCalibration } from '../../core/holes/calibrate-holes.ts';
import { nextHoleEnds } from '../../core/holes/error-band.ts';
import { errorOfPoint } from '../../core/holes/hole-point.ts';
import { printError } from '../../core/holes/print-error.ts';
import { type Derived, entry } from '../../core/sources/derived.ts';
import { decimalText, diameterNumber, NO_BREAK_SPACE } from '../../wording/amount.ts';
import { ComputedValue } from '../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../derivation/derivation-slot.tsx';
import styles from './charts.module.css';
import { BAND_SHARE, type ErrorMark, type ErrorSample, type HoleErrors } from './hole-errors.ts';
import { Twin } from './twin.tsx';

interface HoleErrorTablesProps {
  readonly calibration: HoleCalibration;
  readonly found: HoleErrors;
  readonly isRead: boolean;
}

/** The same content as the picture, as tables. */
export const HoleErrorTables = ({ calibration, found: { rows, marks }, isRead }: HoleErrorTablesProps) => (
  <Twin summary="The picture as a table">
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
        {rows.map((row) => (
          <ErrorRow key={row.drawn} row={row} calibration={calibration} isRead={isRead} />
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
          {marks.map((mark) => (
            <MarkRow key={mark.number} mark={mark} />
          ))}
        </tbody>
      </table>
    )}
  </Twin>
);

interface ErrorRowProps extends Pick<HoleErrorTablesProps, 'calibration' | 'isRead'> {
  readonly row: ErrorSample;
}

function ErrorRow({ row, calibration, isRead }: ErrorRowProps) {
  const { drawn, expected, prior, band } = row;
  const { behaviour } = calibration;
  const [low, high] = band;
  const ends = () => nextHoleEnds(calibration, drawn, BAND_SHARE);
  const given = entry('D_CAD', drawn, 'mm');
  const slot = `hole error ${drawn}`;
  const at = `at ⌀${NO_BREAK_SPACE}${diameterNumber(drawn)}`;
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">{diameterNumber(drawn)}</th>
        <td>
          <Hundredths
            of={prior}
            derived={() => printError(calibration.prior, given)}
            what={`An unknown printer ${at}`}
          />
        </td>
        {isRead ? (
          <td>
            <Hundredths
              of={expected}
              derived={() => printError(behaviour, given)}
              what={`This printer ${at}`}
            />
          </td>
        ) : null}
        <td>
          <Hundredths of={low} derived={() => ends().low} what={`1 in 20 smaller ${at}`} />
        </td>
        <td>
          <Hundredths of={high} derived={() => ends().high} what={`1 in 20 larger ${at}`} />
        </td>
      </tr>
      <DerivationSlot name={slot} columns={isRead ? 5 : 4} />
    </DerivationRow>
  );
}

function MarkRow({ mark: { number, drawn, error, standardUncertainty, outlier, point } }: MarkRowProps) {
  const slot = `hole read ${number}`;
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">{number}</th>
        <td>
          {point.seen === undefined ? (
            diameterNumber(drawn)
          ) : (
            <Hundredths
              of={drawn}
              derived={point.seen}
              what={`Hole ${number}, drawn as seen by the slicer`}
            />
          )}
        </td>
        <td>
          <Hundredths
            of={error}
            derived={() => errorOfPoint(point)}
            what={`Hole ${number}, printed less drawn`}
          />
        </td>
        <td>
          <Hundredths
            of={standardUncertainty}
            derived={point.bore.standardUncertainty}
            what={`Hole ${number}, standard uncertainty`}
          />
        </td>
        <td>{outlier ? 'far' : 'near'}</td>
      </tr>
      <DerivationSlot name={slot} columns={5} />
    </DerivationRow>
  );
}

interface MarkRowProps {
  readonly mark: ErrorMark;
}

interface HundredthsProps {
  readonly of: number;
  readonly derived: Derived | (() => Derived);
  readonly what: string;
}

const Hundredths = ({ of, derived, what }: HundredthsProps) => (
  <ComputedValue
    derived={derived}
    text={decimalText(of, 2)}
    label={`${what}, ${decimalText(of, 2)}${NO_BREAK_SPACE}mm`}
  />
);
