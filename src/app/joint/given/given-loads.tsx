import { memo } from 'react';
import { DURATION, QUANTITIES } from '../../state/quantities.ts';
import { durationUnit } from '../../state/quantity-of-key.ts';
import { useSheetValue } from '../../state/sheet-context.ts';
import { RETIGHTENINGS, USES, VIBRATIONS } from '../choices.ts';
import { DocumentChoice } from '../document-choice.tsx';
import { DocumentQuantity } from '../document-quantity.tsx';
import { GivenGroup } from './given-group.tsx';
import { GivenMoments } from './given-moments.tsx';
import { WorstScrew } from './worst-screw.tsx';

const PLACE = 'given';

/** Loads on a part with several screws are those of the part, not of one screw. */
const ON_THE_PART = {
  pull: { ...QUANTITIES.pull, label: 'Pull on the whole part' },
  shear: { ...QUANTITIES.shear, label: 'Load across it, along x' },
};

/** What pulls at the joint, how warm, how long, and what hangs on it. */
export const GivenLoads = memo(function GivenLoads() {
  const isSingle = useSheetValue(({ journal }) => journal.present.joint.pattern.kind === 'single');
  const unit = useSheetValue(({ journal }) => durationUnit(journal.present.joint.loads.duration_h));
  const { pull, shear } = isSingle ? QUANTITIES : ON_THE_PART;
  return (
    <GivenGroup name="Loads and use">
      <DocumentQuantity quantity={pull} place={PLACE} />
      <DocumentQuantity quantity={shear} place={PLACE} />
      <GivenMoments />
      <WorstScrew />
      <DocumentQuantity quantity={QUANTITIES.serviceTemperature} place={PLACE} />
      <DocumentQuantity quantity={DURATION} place={PLACE} shown={unit} />
      <DocumentChoice
        path="joint.loads.retightenings"
        place={PLACE}
        label="Tightened again"
        choices={RETIGHTENINGS}
        read={(value) => RETIGHTENINGS.find((choice) => Number(choice.value) === value)?.value}
        write={Number}
        note="After plastic has crept, tightening again restores the clamp force."
      />
      <DocumentChoice path="joint.loads.vibration" place={PLACE} label="Vibration" choices={VIBRATIONS} />
      <DocumentChoice
        path="joint.use"
        place={PLACE}
        label="Used for"
        choices={USES}
        note="Every use but the general one stops the program."
      />
    </GivenGroup>
  );
});
