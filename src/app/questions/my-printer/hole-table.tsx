import { useRef, useState } from 'react';
import type { CalibrationPoint } from '../../../core/holes/calibrate-holes.ts';
import type { PrinterRecord } from '../../../storage/document.ts';
import type { AxisCalibration } from '../../../storage/printer-calibration.ts';
import { useSheet } from '../../state/sheet-context.ts';
import { HoleRow } from './hole-row.tsx';
import styles from './my-printer.module.css';
import { holePath, holesPath, withoutHole } from './printer-edits.ts';

/** More rows are folded until they are asked for. */
const ROWS_AT_FIRST = 25;

interface HoleTableProps {
  /** Place of the printer in the document. */
  readonly index: number;
  readonly printer: PrinterRecord;
  /** Of both axes. */
  readonly calibrations: readonly AxisCalibration[];
}

/** Every hole that was read, with what it says, those far from the others by name. */
export function HoleTable({ index, printer, calibrations }: HoleTableProps) {
  const { sheet, document, edit, giveUp } = useSheet();
  const [open, setOpen] = useState<number | null>(null);
  const [showsAll, setShowsAll] = useState(false);
  const body = useRef<HTMLTableSectionElement>(null);
  const points = new Map<number, CalibrationPoint>(
    calibrations.flatMap(({ calibration, places }) =>
      calibration.points.map((point, at) => [places[at] ?? -1, point] as const),
    ),
  );
  const { holes } = printer;
  const shown = showsAll ? holes : holes.slice(0, ROWS_AT_FIRST);
  const takeOut = (place: number) => {
    // What waits in a field of a hole would wait at another one.
    for (const key of sheet.pending.keys()) if (key.startsWith(`${holesPath(index)}.`)) giveUp(key);
    setOpen(null);
    edit(holesPath(index), withoutHole(document, index, place));
    requestAnimationFrame(() => {
      const presses = body.current?.querySelectorAll<HTMLElement>('[data-take-out]');
      [...(presses ?? [])]
        .slice(0, place + 1)
        .at(-1)
        ?.focus();
    });
  };
  const far = [...points].filter(([, { outlier }]) => outlier).map(([place]) => place + 1);
  return (
    <>
      <table className={styles['holes']} key={sheet.epoch}>
        <caption>Holes read on {printer.name}</caption>
        <thead>
          <tr>
            <th scope="col">Hole</th>
            <th scope="col">drawn ⌀, mm</th>
            <th scope="col">readings, mm</th>
            <th scope="col">bore ⌀, mm</th>
            <th scope="col">printed less drawn, mm</th>
            <td />
          </tr>
        </thead>
        <tbody ref={body}>
          {shown.map((hole, place) => (
            <HoleRow
              key={holePath(index, place)}
              path={holePath(index, place)}
              number={place + 1}
              hole={hole}
              point={points.get(place)}
              isOpen={open === place}
              onOpen={(isOpen) => setOpen(isOpen ? place : null)}
              onTakeOut={() => takeOut(place)}
            />
          ))}
        </tbody>
      </table>
      {shown.length < holes.length ? (
        <p className={styles['more']}>
          {far.length === 0
            ? null
            : `Far from the others: ${far.map((number) => `hole ${number}`).join(', ')}. `}
          <button type="button" className="press" onClick={() => setShowsAll(true)}>
            Show all {holes.length} holes
          </button>
        </p>
      ) : null}
    </>
  );
}
