import { lazy, Suspense, useMemo, useState } from 'react';
import { type CalibrationNotice, calibrationNotices } from '../../../core/holes/calibration-notices.ts';
import type { HoleAxis } from '../../../core/holes/hole-reading.ts';
import { REFERENCE_DIAMETER } from '../../../core/holes/print-error.ts';
import type { PrinterRecord } from '../../../storage/document.ts';
import { LIMITS } from '../../../storage/limits.ts';
import { holeAxisOf } from '../../../storage/with-printer.ts';
import { ASSUMED_FROM_VERTICAL, sentenceOfCalibrationNotice } from '../../../wording/my-printer.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import { ChoiceField } from '../../fields/choice-field.tsx';
import { DocumentChoice } from '../../joint/document-choice.tsx';
import { StaleFrame } from '../../shell/stale-frame.tsx';
import {
  useDocumentAtPress,
  useFindings,
  useFindingsValue,
  useSheetActions,
  useSheetValue,
} from '../../state/sheet-context.ts';
import { QuestionSection } from '../question-section.tsx';
import { BedMouth } from './bed-mouth.tsx';
import { calibrationsOf } from './calibrations.ts';
import { CurveTable } from './curve-table.tsx';
import { HOLE_AXES, PLACE, printersOf, UNKNOWN } from './hole-choices.ts';
import { HoleTable } from './hole-table.tsx';
import styles from './my-printer.module.css';
import { NewHoles } from './new-holes.tsx';
import { NextHole } from './next-hole.tsx';
import { addedPrinter, withoutPrinter } from './printer-edits.ts';
import { PrinterFields } from './printer-fields.tsx';
import { WhatToType } from './what-to-type.tsx';

const HoleErrorsChart = lazy(() => import('../../charts/hole-errors-chart.tsx'));

const ASIDE =
  'One machine with one material, nozzle and layer height. Print a gauge, read its holes, and the curve of errors becomes your printer’s: one hole moves it, twenty settle it.';

/** The printer of the joint: what it is, the holes that were read on it, and what they do to the hole to draw. */
export default function MyPrinter() {
  const printers = useSheetValue(({ journal }) => journal.present.printers);
  const chosen = useSheetValue(({ journal }) => journal.present.joint.printer);
  const index = printers.findIndex(({ id }) => id === chosen);
  const printer = printers[index];
  return (
    <QuestionSection id="my-printer" question="My printer" aside={ASIDE}>
      <PrinterChoice printer={printer} />
      {printer ? <PrinterFields key={`fields ${printer.id}`} index={index} /> : null}
      <Calibrated key={printer?.id ?? ''} index={index} printer={printer} />
    </QuestionSection>
  );
}

function PrinterChoice({ printer }: { readonly printer: PrinterRecord | undefined }) {
  const { edit } = useSheetActions();
  const documentAtPress = useDocumentAtPress();
  const printers = useSheetValue(({ journal }) => journal.present.printers);
  const isFull = printers.length >= LIMITS.printers.greatest;
  return (
    <div className={styles['choice']}>
      <DocumentChoice
        path="joint.printer"
        place={PLACE}
        label="This joint is printed on"
        choices={printersOf({ printers })}
        read={(value) => (typeof value === 'string' ? value : UNKNOWN)}
        write={(id) => (id === UNKNOWN ? undefined : id)}
      />
      <p className={styles['add']}>
        <button
          type="button"
          className="press"
          disabled={isFull}
          onClick={() => edit('printers', ...addedPrinter(documentAtPress()))}
        >
          Add a printer
        </button>
        {printer ? (
          <button
            type="button"
            className="press"
            aria-label={`Take out ${printer.name}`}
            onClick={() => edit('printers', ...withoutPrinter(documentAtPress(), printer.id))}
          >
            Take it out
          </button>
        ) : null}
        {isFull ? (
          <span className="line">a joint keeps up to {LIMITS.printers.greatest} printers</span>
        ) : null}
      </p>
    </div>
  );
}

interface CalibratedProps {
  /** Place of the printer in the document; −1 without one. */
  readonly index: number;
  readonly printer: PrinterRecord | undefined;
}

function Calibrated({ index, printer }: CalibratedProps) {
  const own = useSheetValue(({ journal }) => holeAxisOf(journal.present.joint));
  const permissibleError = useSheetValue(({ journal }) => journal.present.caliper.permissibleError_mm);
  const calibrations = useMemo(() => calibrationsOf(printer, permissibleError), [printer, permissibleError]);
  return (
    <>
      {printer ? (
        <>
          {printer.holes.length > 0 ? (
            <HoleTable
              index={index}
              printer={printer}
              calibrations={[calibrations.vertical, calibrations.horizontal]}
            />
          ) : null}
          <NewHoles index={index} printer={printer} axis={own} />
        </>
      ) : null}
      <Curve printer={printer} calibrations={calibrations} own={own} />
      <Consequences index={index} printer={printer} />
    </>
  );
}

interface CurveProps {
  readonly printer: PrinterRecord | undefined;
  readonly calibrations: ReturnType<typeof calibrationsOf>;
  /** Axis of the joint's hole. */
  readonly own: HoleAxis;
}

/** The curve along one axis: what to know of it, its numbers and its picture. */
function Curve({ printer, calibrations, own }: CurveProps) {
  const [chosen, setChosen] = useState<HoleAxis | null>(null);
  const drawn = useFindingsValue(({ shown }) => shown?.assessment.hole.drawn.value);
  const axis = chosen ?? own;
  const { calibration, places } = calibrations[axis];
  const notices = calibrationNotices(calibration, drawn ?? calibration.range?.least ?? REFERENCE_DIAMETER);
  return (
    <section className={styles['part']} aria-label="The curve of errors">
      {printer ? (
        <div className={styles['choice']}>
          <ChoiceField
            label="Curve of the holes that are"
            value={axis}
            choices={HOLE_AXES}
            onTake={setChosen}
          />
        </div>
      ) : null}
      {printer ? notices.map((notice) => <NoticeOfCurve key={notice.code} notice={notice} />) : null}
      {printer && axis === 'horizontal' && calibration.count === 0 ? (
        <p className={styles['words']}>{ASSUMED_FROM_VERTICAL}</p>
      ) : null}
      {calibration.count > 0 ? <CurveTable calibration={calibration} /> : null}
      <Suspense fallback={null}>
        <HoleErrorsChart
          calibration={calibration}
          places={places}
          title={printer ? `How ${printer.name} closes ${axis} holes` : 'How an unknown printer closes holes'}
          wanted={axis === own ? drawn : undefined}
        />
      </Suspense>
    </section>
  );
}

function NoticeOfCurve({ notice }: { readonly notice: CalibrationNotice }) {
  const drawn = useFindingsValue(({ shown }) => shown?.assessment.hole.drawn);
  const slot = `my-printer ${notice.code}`;
  return (
    <DerivationRow slot={slot}>
      <p className={styles['words']}>
        <Told sentence={sentenceOfCalibrationNotice(notice, drawn)} />
      </p>
      <DerivationSlot name={slot} />
    </DerivationRow>
  );
}

/** What follows for the hole of this joint. */
function Consequences({ index, printer }: CalibratedProps) {
  const { joint, shown } = useFindings();
  if (!shown) return null;
  const { assessment } = shown;
  return (
    <StaleFrame of="answers">
      {assessment.hole.existing ? null : (
        <>
          <WhatToType joint={joint} assessment={assessment} printer={printer} />
          <NextHole joint={joint} assessment={assessment} printer={printer} />
        </>
      )}
      <BedMouth index={index} printer={printer} layerHeight={joint.host.layerHeight} />
    </StaleFrame>
  );
}
