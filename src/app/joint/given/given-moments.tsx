import { useState } from 'react';
import type { JointDocument } from '../../../storage/document.ts';
import { GROUP_QUANTITIES } from '../../state/group-quantities.ts';
import { proposedEdge } from '../../state/proposals.ts';
import { useDocumentAtPress, useSheetValue } from '../../state/sheet-context.ts';
import { PIVOTS } from '../choices.ts';
import { DocumentChoice } from '../document-choice.tsx';
import { DocumentQuantity } from '../document-quantity.tsx';
import styles from './given.module.css';

const PLACE = 'given';

/** Whether anything but a pull and one load across it at the middle of the screws is given. */
const isOffCentre = (loads: JointDocument['joint']['loads']): boolean =>
  loads.pivot.kind === 'edge' ||
  [loads.shearAcross_N, ...Object.values(loads.at_mm), ...Object.values(loads.moment_Nm)].some(
    (value) => value !== 0,
  );

/** Where the loads act, what moments come with them, and what the part turns about; open once any is not zero. */
export function GivenMoments() {
  const documentAtPress = useDocumentAtPress();
  const loads = useSheetValue(({ journal }) => journal.present.joint.loads);
  const isNeeded = isOffCentre(loads);
  const [wasNeeded, setWasNeeded] = useState(isNeeded);
  const [isOpen, setIsOpen] = useState(isNeeded);
  // Never closed from outside: a field that is just set to zero stays where it is.
  if (isNeeded !== wasNeeded) {
    setWasNeeded(isNeeded);
    if (isNeeded) setIsOpen(true);
  }
  return (
    <details
      className={styles.moments}
      open={isOpen}
      onToggle={(event) => setIsOpen(event.currentTarget.open)}
    >
      <summary>Where the loads act, and moments</summary>
      <DocumentQuantity quantity={GROUP_QUANTITIES.shearAcross} place={PLACE} />
      <DocumentQuantity quantity={GROUP_QUANTITIES.atX} place={PLACE} />
      <DocumentQuantity quantity={GROUP_QUANTITIES.atY} place={PLACE} />
      <DocumentQuantity quantity={GROUP_QUANTITIES.atZ} place={PLACE} />
      <DocumentQuantity quantity={GROUP_QUANTITIES.momentX} place={PLACE} />
      <DocumentQuantity quantity={GROUP_QUANTITIES.momentY} place={PLACE} />
      <DocumentQuantity quantity={GROUP_QUANTITIES.momentZ} place={PLACE} />
      <DocumentChoice
        path="joint.loads.pivot"
        place={PLACE}
        label="Lifted, it turns about"
        choices={PIVOTS}
        read={kindOf}
        write={(kind) => (kind === 'edge' ? proposedEdge(documentAtPress().joint) : { kind })}
        note="About an edge the arms are longer and the pulls smaller; the edge must really stay down."
      />
      {loads.pivot.kind === 'edge' ? (
        <>
          <DocumentQuantity quantity={GROUP_QUANTITIES.pivotX} place={PLACE} />
          <DocumentQuantity quantity={GROUP_QUANTITIES.pivotY} place={PLACE} />
        </>
      ) : null}
    </details>
  );
}

const kindOf = (value: unknown) =>
  typeof value === 'object' && value !== null && 'kind' in value
    ? PIVOTS.find((choice) => choice.value === value.kind)?.value
    : undefined;
