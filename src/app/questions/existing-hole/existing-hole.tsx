import { type ReactNode, useMemo } from 'react';
import type { Insert } from '../../../core/inserts/insert.ts';
import { type ExistingFinding, existingFinding } from '../../../core/joint/existing-finding.ts';
import { admit } from '../../../core/joint/stop.ts';
import type { Rescue } from '../../../core/recommend/rescue.ts';
import { rescuesFor } from '../../../core/recommend/rescues.ts';
import { NUTS } from '../../../data/nuts.ts';
import { insertName } from '../../joint/drawer/insert-name.ts';
import { StaleFrame } from '../../shell/stale-frame.tsx';
import type { Findings } from '../../state/findings.ts';
import { useFindings, useSheet } from '../../state/sheet-context.ts';
import { QuestionSection } from '../question-section.tsx';
import styles from './existing-hole.module.css';
import { EXISTING_PATH, editsOfDrill } from './hole-edits.ts';
import { HoleFields } from './hole-fields.tsx';
import { RescueTable } from './rescue-table.tsx';
import { Verdict } from './verdict.tsx';

const ASIDE =
  'For a part that cannot be redrawn, or a print that lies before you. Every answer of this page then takes the hole as it is.';

export interface ExistingHoleProps {
  /** Stands below the fields: another way to find the hole, such as a file of the part. */
  readonly finder?: ReactNode;
}

/** The inverse question: what a hole that is there already does with the insert, and what helps where it does not serve. */
export default function ExistingHole({ finder }: ExistingHoleProps) {
  const findings = useFindings();
  return (
    <QuestionSection id="existing-hole" question="A hole that is there" aside={ASIDE}>
      <HoleFields designed={findings.shown?.assessment.hole} finder={finder} />
      {findings.joint.holes.existing ? (
        <StaleFrame of="answers">
          <InThisHole findings={findings} />
        </StaleFrame>
      ) : null}
    </QuestionSection>
  );
}

function InThisHole({ findings }: { readonly findings: Findings }) {
  const { joint, shown } = findings;
  const finding = shown && existingFinding(joint, shown.assessment);
  if (!shown || !finding) return <p>No insert of the drawer can be computed in this hole.</p>;
  return (
    <>
      <Verdict finding={finding} name={insertName(shown.insert)} />
      <WaysOut findings={findings} insert={shown.insert} finding={finding} />
    </>
  );
}

interface WaysOutProps {
  readonly findings: Findings;
  readonly insert: Insert;
  readonly finding: ExistingFinding;
}

function WaysOut({ findings, insert, finding }: WaysOutProps) {
  const { document, edit } = useSheet();
  const rescues = useMemo(() => rescuesOf(findings, insert, finding), [findings, insert, finding]);
  const isOut = findings.shown?.rejection !== undefined;
  if (finding.verdict === 'fits' && !isOut) {
    return <p className={styles['served']}>The hole serves this insert; nothing has to be rescued.</p>;
  }
  return (
    <RescueTable
      rescues={rescues}
      drawer={findings.drawer}
      onChoose={(id) => edit('chosenInsert', { path: 'chosenInsert', value: id })}
      onDrill={(drilled) => edit(`${EXISTING_PATH}@rescue`, ...editsOfDrill(document.joint, drilled))}
      onDeepen={(depth) =>
        edit(`${EXISTING_PATH}@rescue`, { path: `${EXISTING_PATH}.depth_mm`, value: depth })
      }
      onReprint={() => edit(`${EXISTING_PATH}@rescue`, { path: EXISTING_PATH, value: undefined })}
    />
  );
}

function rescuesOf(
  { joint: given, drawer, recommendation }: Findings,
  insert: Insert,
  finding: ExistingFinding,
): readonly Rescue[] {
  const admission = admit(given);
  if (admission.kind === 'stopped' || recommendation.kind === 'stopped') return [];
  return rescuesFor({ joint: admission.joint, insert, finding, drawer, recommendation, nuts: NUTS });
}
