import { lengthNumber } from '../../../wording/amount.ts';
import { GROUP_QUANTITIES } from '../../state/group-quantities.ts';
import { proposedSleeve } from '../../state/proposals.ts';
import { QUANTITIES } from '../../state/quantities.ts';
import { useFindingsValue, useSheetActions, useSheetValue } from '../../state/sheet-context.ts';
import { CLAMPED_MATERIALS, SIDES, SLEEVE_MATERIALS, SLEEVES } from '../choices.ts';
import { DocumentChoice } from '../document-choice.tsx';
import { DocumentQuantity } from '../document-quantity.tsx';
import styles from './given.module.css';
import { GivenGroup } from './given-group.tsx';

const PLACE = 'given';

/** The part that the screw clamps, and how it meets the insert. */
export function GivenClamped() {
  return (
    <GivenGroup name="Clamped part">
      <DocumentChoice
        path="joint.clamped.material"
        place={PLACE}
        label="Part of"
        choices={CLAMPED_MATERIALS}
      />
      <DocumentQuantity quantity={QUANTITIES.clampedThickness} place={PLACE} />
      <DocumentQuantity quantity={QUANTITIES.clearanceHole} place={PLACE} />
      <UsualClearance />
      <Spacer />
      <DocumentQuantity quantity={QUANTITIES.gap} place={PLACE} />
      <DocumentQuantity quantity={QUANTITIES.sunk} place={PLACE} />
      <DocumentChoice path="joint.insertSide" place={PLACE} label="Insert is set" choices={SIDES} />
    </GivenGroup>
  );
}

/** A metal tube through the part that takes the clamp force past it. */
function Spacer() {
  const { sleeve, clearanceHole_mm: hole } = useSheetValue(({ journal }) => journal.present.joint.clamped);
  return (
    <>
      <DocumentChoice
        path="joint.clamped.sleeve"
        place={PLACE}
        label="Metal spacer"
        choices={SLEEVES}
        read={(value) => (value === undefined ? 'none' : 'sleeve')}
        write={(choice) => (choice === 'none' ? undefined : (sleeve ?? proposedSleeve(hole)))}
        note="As long as the part is thick; its hole is the clearance hole."
      />
      {sleeve ? (
        <>
          <DocumentQuantity quantity={GROUP_QUANTITIES.sleeveDiameter} place={PLACE} />
          <DocumentChoice
            path="joint.clamped.sleeve.material"
            place={PLACE}
            label="Spacer of"
            choices={SLEEVE_MATERIALS}
          />
        </>
      ) : null}
    </>
  );
}

/** Offers the medium clearance hole of the standard where another one stands. */
function UsualClearance() {
  const { edit } = useSheetActions();
  const present = useSheetValue(({ journal }) => journal.present.joint.clamped.clearanceHole_mm);
  const thread = useFindingsValue(({ joint }) => joint.screw.thread);
  const { medium } = thread.clearanceHoles;
  if (present === medium) return null;
  const { path } = QUANTITIES.clearanceHole;
  const series = thread.system === 'metric' ? 'ISO 273 medium' : 'ASME B18.2.8 normal';
  return (
    <p className={styles.remark}>
      Usual for {thread.designation}, {series}:{' '}
      <button
        type="button"
        className="press"
        onClick={() => edit(`${path}@${PLACE}`, { path, value: medium })}
      >
        use ⌀ {lengthNumber(medium)}
      </button>
    </p>
  );
}
