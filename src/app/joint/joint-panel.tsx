import { useRef } from 'react';
import { DerivationSlot } from '../derivation/derivation-slot.tsx';
import { SectionDrawing } from '../drawing/section-drawing.tsx';
import { sectionInput } from '../drawing/section-input.ts';
import { PanelBoundary } from '../shell/panel-boundary.tsx';
import { StaleFrame } from '../shell/stale-frame.tsx';
import type { Shown } from '../state/findings.ts';
import { useFindings, useSheetValue } from '../state/sheet-context.ts';
import { DrawingKey } from './drawing-key.tsx';
import { GivenLoads } from './given/given-loads.tsx';
import { GivenPattern } from './given/given-pattern.tsx';
import { GivenTool } from './given/given-tool.tsx';
import { InsertMeasured } from './insert-measured.tsx';
import styles from './joint-panel.module.css';
import { SeatChoice, SeatReason } from './seat-choice.tsx';
import { DRAWING_SLOT, sectionControls } from './section-controls.tsx';
import { useMessagesInView } from './use-messages-in-view.ts';

/** The joint drawn, with its values in their places; the insert alone beside it. */
export function JointPanel() {
  const { shown, stop } = useFindings();
  const panel = useRef<HTMLElement>(null);
  // Drawn anew with what waits, as messages are.
  useSheetValue(({ pending }) => pending);
  useSheetValue(({ unread }) => unread);
  useMessagesInView(panel);
  if (stop) return null;
  return (
    <section ref={panel} className={styles.joint} id="joint" aria-label="The joint" tabIndex={-1}>
      {shown ? <Drawn shown={shown} /> : <NothingToDraw />}
    </section>
  );
}

function Drawn({ shown }: { readonly shown: Shown }) {
  const host = useSheetValue(({ journal }) => journal.present.joint.host);
  const { joint, drawer } = useFindings();
  const { assessment } = shown;
  const index = drawer.findIndex(({ id }) => id === assessment.insertId);
  return (
    <>
      <div className={styles.section}>
        <div className={styles.caption}>
          <h2>The joint in section</h2>
          <SeatChoice />
        </div>
        <SeatReason seat={assessment.seat} />
        <PanelBoundary name="The drawing">
          <StaleFrame of="answers">
            <SectionDrawing
              input={sectionInput(joint, assessment)}
              controls={sectionControls({ joint, assessment }, host, index)}
            />
          </StaleFrame>
        </PanelBoundary>
        <DerivationSlot name={DRAWING_SLOT} />
        <DrawingKey />
      </div>
      <div className={styles.beside}>
        <PanelBoundary name="The insert, as measured">
          <InsertMeasured shown={shown} index={index} />
        </PanelBoundary>
        <PanelBoundary name="The loads">
          <div className={styles.loads}>
            <GivenLoads />
            <GivenTool />
          </div>
        </PanelBoundary>
      </div>
      <div className={styles.below}>
        <PanelBoundary name="The screws">
          <GivenPattern />
        </PanelBoundary>
      </div>
    </>
  );
}

function NothingToDraw() {
  const { joint } = useFindings();
  return (
    <div className={styles.section}>
      <h2>Nothing to draw yet</h2>
      <p className={styles.nothing}>
        No insert of the drawer has the thread of the screw, {joint.screw.thread.designation}. Give the screw
        another thread below, or measure an insert that has this one and put it in the drawer.
      </p>
    </div>
  );
}
