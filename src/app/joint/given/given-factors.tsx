import { QUANTITIES } from '../../state/quantities.ts';
import { DocumentQuantity } from '../document-quantity.tsx';
import { GivenGroup } from './given-group.tsx';

const PLACE = 'given';

/** The room that a person keeps beside the scatter that is counted already. */
export function GivenFactors() {
  return (
    <GivenGroup name="Factors">
      <DocumentQuantity quantity={QUANTITIES.limitsFactor} place={PLACE} />
      <DocumentQuantity quantity={QUANTITIES.closedFactor} place={PLACE} />
    </GivenGroup>
  );
}
