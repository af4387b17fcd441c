import { useEffect, useRef } from 'react';
import type { CalibrationPoint } from '../../../core/holes/calibrate-holes.ts';
import { errorOfPoint } from '../../../core/holes/hole-point.ts';
import type { HoleReadingRecord } from '../../../storage/document.ts';
import { LIMITS } from '../../../storage/limits.ts';
import { decimalText, diameterNumber } from '../../../wording/amount.ts';
import { closingWords, HOLE_AXIS_NAMES, INSTRUMENT_NAMES } from '../../../wording/my-printer.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { ReadingsField } from '../../fields/readings-field.tsx';
import { DocumentChoice } from '../../joint/document-choice.tsx';
import { DocumentQuantity } from '../../joint/document-quantity.tsx';
import { useDocumentField } from '../../joint/use-document-field.ts';
import { definitionOf } from '../../state/quantity-of-key.ts';
import { HOLE_AXES, INSTRUMENTS, PLACE } from './hole-choices.ts';
import styles from './my-printer.module.css';
import { CORNERS, HOLE } from './printer-edits.ts';

const COLUMNS = 6;

interface HoleRowProps {
  /** Path of the hole in the document. */
  readonly path: string;
  readonly number: number;
  readonly hole: HoleReadingRecord;
  /** What it says of the curve. */
  readonly point: CalibrationPoint | undefined;
  readonly isOpen: boolean;
  readonly onOpen: (open: boolean) => void;
  readonly onTakeOut: () => void;
}

/** One hole that was read: what was drawn and measured, what follows, and the fields to put it right. */
export function HoleRow({ path, number, hole, point, isOpen, onOpen, onTakeOut }: HoleRowProps) {
  const fields = useRef<HTMLTableCellElement>(null);
  useEffect(() => {
    if (isOpen) fields.current?.querySelector<HTMLElement>('input')?.focus();
  }, [isOpen]);
  const name = `hole ${number}`;
  const isFar = point?.outlier === true;
  return (
    <DerivationRow slot={path}>
      <tr className={styles['hole']} data-far={isFar || undefined}>
        <th scope="row">{number}</th>
        <td data-name="drawn">
          {diameterNumber(hole.drawn_mm)}
          <span className={styles['which']}>
            {HOLE_AXIS_NAMES[hole.axis]}
            {hole.facets === undefined ? '' : `, ${hole.facets} corners`}
          </span>
        </td>
        <td data-name="readings" className={styles['readings']}>
          {hole.measured_mm.map(diameterNumber).join('; ')}
          <span className={styles['which']}>{INSTRUMENT_NAMES[hole.instrument]}</span>
        </td>
        <td data-name="bore">{point ? <Bore point={point} name={name} /> : null}</td>
        <td data-name="printed less drawn">
          {point ? <PrintedLessDrawn point={point} name={name} /> : null}
          {isFar ? <b className={styles['far']}>far from the others; counts all the same</b> : null}
        </td>
        <td className={styles['presses']}>
          <button
            type="button"
            className="go"
            aria-expanded={isOpen}
            aria-label={`${isOpen ? 'Close' : 'Edit'} ${name}`}
            onClick={() => onOpen(!isOpen)}
          >
            {isOpen ? 'Close' : 'Edit'}
          </button>
          <button
            type="button"
            className="press"
            data-take-out=""
            aria-label={`Take out ${name}`}
            onClick={onTakeOut}
          >
            Take out
          </button>
        </td>
      </tr>
      {isOpen ? (
        <tr className={styles['editing']}>
          <td colSpan={COLUMNS} ref={fields}>
            <HoleFields path={path} hole={hole} />
          </td>
        </tr>
      ) : null}
      <DerivationSlot name={path} columns={COLUMNS} />
    </DerivationRow>
  );
}

interface PointProps {
  readonly point: CalibrationPoint;
  readonly name: string;
}

function Bore({ point, name }: PointProps) {
  const { estimate, standardUncertainty } = point.bore;
  const text = diameterNumber(estimate.value);
  return (
    <>
      <ComputedValue derived={estimate} text={text} label={`Bore of ${name}, ${text} mm`} />{' '}
      <span className={styles['spread']}>
        ±{' '}
        <ComputedValue
          derived={standardUncertainty}
          text={decimalText(standardUncertainty.value, 2)}
          label={`Standard uncertainty of ${name}, ${decimalText(standardUncertainty.value, 2)} mm`}
        />
      </span>
    </>
  );
}

function PrintedLessDrawn({ point, name }: PointProps) {
  const error = errorOfPoint(point);
  return (
    <ComputedValue
      derived={error}
      text={decimalText(error.value, 2)}
      label={`Error of ${name}, ${closingWords(error.value)}`}
    />
  );
}

function HoleFields({ path, hole }: { readonly path: string; readonly hole: HoleReadingRecord }) {
  const at = (key: string) => `${path}.${key}`;
  const readings = useDocumentField(at('measured_mm'), PLACE);
  return (
    <div className={styles['fields']}>
      <DocumentQuantity
        quantity={{ ...HOLE, path: at('drawn_mm'), label: 'Drawn ⌀', noun: 'A hole' }}
        place={PLACE}
      />
      <ReadingsField
        key={readings.renewal}
        label="Measured ⌀"
        definition={definitionOf(HOLE)}
        readings={hole.measured_mm}
        onTake={(taken) => readings.take(taken)}
        least={LIMITS.readings.least}
        most={LIMITS.readings.greatest}
        problem={readings.problem}
        onRefused={readings.onRefused}
      />
      <DocumentChoice path={at('instrument')} place={PLACE} label="Read with" choices={INSTRUMENTS} />
      <DocumentChoice path={at('axis')} place={PLACE} label="Axis of the hole" choices={HOLE_AXES} />
      <DocumentQuantity
        quantity={{ ...CORNERS, path: at('facets'), label: 'Corners of its polygon' }}
        place={PLACE}
        optional
      />
    </div>
  );
}
