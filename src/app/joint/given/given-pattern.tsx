import { memo } from 'react';
import { PatternPlan, PatternScrews } from '../../pattern/pattern-plan.tsx';
import { GROUP_QUANTITIES } from '../../state/group-quantities.ts';
import { patternOfKind } from '../../state/proposals.ts';
import { useSheetValue } from '../../state/sheet-context.ts';
import { LAYOUTS } from '../choices.ts';
import { DocumentChoice } from '../document-choice.tsx';
import { DocumentQuantity } from '../document-quantity.tsx';
import { FreePositions } from './free-positions.tsx';
import styles from './given.module.css';
import { GivenGroup } from './given-group.tsx';

const PLACE = 'given';

/** How many screws hold the part, where they are, and what each of them gets of the loads. */
export const GivenPattern = memo(function GivenPattern() {
  const pattern = useSheetValue(({ journal }) => journal.present.joint.pattern);
  return (
    <div className={styles.pattern}>
      <div>
        <GivenGroup name="Screws of the part">
          <DocumentChoice
            path="joint.pattern"
            place={PLACE}
            label="Layout"
            choices={LAYOUTS}
            read={kindOf}
            write={(kind) => patternOfKind(pattern, kind)}
            note="The joint is asked for the worst of the screws."
          />
          <LayoutFields kind={pattern.kind} />
        </GivenGroup>
        <PatternScrews />
      </div>
      <PatternPlan />
    </div>
  );
});

const kindOf = (value: unknown) =>
  typeof value === 'object' && value !== null && 'kind' in value
    ? LAYOUTS.find((choice) => choice.value === value.kind)?.value
    : undefined;

function LayoutFields({ kind }: { readonly kind: (typeof LAYOUTS)[number]['value'] }) {
  switch (kind) {
    case 'single':
      return null;
    case 'rectangular':
      return (
        <>
          <DocumentQuantity quantity={GROUP_QUANTITIES.columns} place={PLACE} />
          <DocumentQuantity quantity={GROUP_QUANTITIES.rows} place={PLACE} />
          <DocumentQuantity quantity={GROUP_QUANTITIES.spacingX} place={PLACE} />
          <DocumentQuantity quantity={GROUP_QUANTITIES.spacingY} place={PLACE} />
        </>
      );
    case 'circular':
      return (
        <>
          <DocumentQuantity quantity={GROUP_QUANTITIES.circleCount} place={PLACE} />
          <DocumentQuantity quantity={GROUP_QUANTITIES.circleDiameter} place={PLACE} />
        </>
      );
    case 'free':
      return <FreePositions />;
  }
}
