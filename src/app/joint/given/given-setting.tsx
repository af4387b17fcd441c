import { QUANTITIES } from '../../state/quantities.ts';
import { COMPENSATIONS, SETTINGS } from '../choices.ts';
import { DocumentChoice } from '../document-choice.tsx';
import { DocumentQuantity } from '../document-quantity.tsx';
import { GivenGroup } from './given-group.tsx';

const PLACE = 'given';

/** How the insert goes in and how holes are drawn. */
export function GivenSetting() {
  return (
    <GivenGroup name="Setting and hole">
      <DocumentChoice path="joint.setting" place={PLACE} label="The insert is" choices={SETTINGS} />
      <DocumentChoice
        path="joint.holes.compensation"
        place={PLACE}
        label="Printed holes corrected"
        choices={COMPENSATIONS}
        note="One of the two, never both: the correction would double."
      />
      <DocumentQuantity quantity={QUANTITIES.fit} place={PLACE} />
      <DocumentQuantity quantity={QUANTITIES.holeStep} place={PLACE} />
    </GivenGroup>
  );
}
