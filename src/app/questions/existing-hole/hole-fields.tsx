import type { ReactNode } from 'react';
import type { HoleDesign } from '../../../core/joint/assessment.ts';
import type { Choice } from '../../fields/field-props.ts';
import { DocumentChoice } from '../../joint/document-choice.tsx';
import { DocumentQuantity } from '../../joint/document-quantity.tsx';
import { useSheetValue } from '../../state/sheet-context.ts';
import styles from './existing-hole.module.css';
import { EXISTING_PATH, HOLE_DEPTH, holeDiameter, holeKnownAs, type KnownAs } from './hole-edits.ts';

export const PLACE = 'existing-hole';

const KNOWN: readonly Choice<KnownAs | 'none'>[] = [
  { value: 'none', label: 'yet to be drawn' },
  { value: 'as-drawn', label: 'there, size as drawn' },
  { value: 'as-measured', label: 'there, measured' },
];

interface HoleFieldsProps {
  /** Hole of the joint as it is answered; absent where no insert can be computed. */
  readonly designed: HoleDesign | undefined;
  /** Stands below the fields: another way to find the hole. */
  readonly finder?: ReactNode;
}

/** Whether the hole is there already, and what is known of it. */
export function HoleFields({ designed, finder }: HoleFieldsProps) {
  const there = useSheetValue((sheet) => sheet.journal.present.joint.holes.existing);
  const knownOf = (value: unknown) =>
    typeof value === 'object' && value !== null && 'known' in value
      ? KNOWN.find((choice) => choice.value === value.known)?.value
      : 'none';
  return (
    <>
      <div className={styles['fields']}>
        <DocumentChoice
          path={EXISTING_PATH}
          place={PLACE}
          label="The hole is"
          choices={KNOWN}
          read={knownOf}
          write={(choice) => (choice === 'none' ? undefined : holeKnownAs(choice, there, designed))}
        />
        {there ? (
          <>
            <DocumentQuantity key={there.known} quantity={holeDiameter(there.known)} place={PLACE} />
            <DocumentQuantity quantity={HOLE_DEPTH} place={PLACE} optional />
          </>
        ) : null}
      </div>
      {finder}
    </>
  );
}
