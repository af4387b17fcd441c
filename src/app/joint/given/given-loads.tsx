import { DURATION, QUANTITIES } from '../../state/quantities.ts';
import { durationUnit } from '../../state/quantity-of-key.ts';
import { useSheet } from '../../state/sheet-context.ts';
import { USES } from '../choices.ts';
import { DocumentChoice } from '../document-choice.tsx';
import { DocumentQuantity } from '../document-quantity.tsx';
import { GivenGroup } from './given-group.tsx';

const PLACE = 'given';

/** What pulls at the joint, how warm, how long, and what hangs on it. */
export function GivenLoads() {
  const { document } = useSheet();
  return (
    <GivenGroup name="Loads and use">
      <DocumentQuantity quantity={QUANTITIES.pull} place={PLACE} />
      <DocumentQuantity quantity={QUANTITIES.shear} place={PLACE} />
      <DocumentQuantity quantity={QUANTITIES.serviceTemperature} place={PLACE} />
      <DocumentQuantity
        quantity={DURATION}
        place={PLACE}
        shown={durationUnit(document.joint.loads.duration_h)}
      />
      <DocumentChoice
        path="joint.use"
        place={PLACE}
        label="Used for"
        choices={USES}
        note="Every use but the general one stops the program."
      />
    </GivenGroup>
  );
}
