import { CATALOGUE } from '../../../data/catalogue.ts';
import { useDocumentAtPress } from '../../state/sheet-context.ts';
import { FRICTIONS, HEADS, PROPERTY_CLASSES, THREAD_LOCKINGS, THREADS, WASHERS } from '../choices.ts';
import { DocumentChoice } from '../document-choice.tsx';
import { ScrewLengthChoice } from '../screw-length-choice.tsx';
import { threadEdits } from '../thread-edits.ts';
import { GivenGroup } from './given-group.tsx';

const PLACE = 'given';

/** The screw and what is on it. */
export function GivenScrew() {
  const documentAtPress = useDocumentAtPress();
  return (
    <GivenGroup name="Screw">
      <DocumentChoice
        path="joint.screw.thread"
        place={PLACE}
        label="Thread"
        choices={THREADS}
        along={(thread) => threadEdits(documentAtPress(), thread, CATALOGUE)}
      />
      <DocumentChoice path="joint.screw.head" place={PLACE} label="Head" choices={HEADS} />
      <DocumentChoice
        path="joint.screw.propertyClass"
        place={PLACE}
        label="Property class"
        choices={PROPERTY_CLASSES}
      />
      <ScrewLengthChoice place={PLACE} />
      <DocumentChoice path="joint.screw.washer" place={PLACE} label="Washer" choices={WASHERS} />
      <DocumentChoice path="joint.screw.friction" place={PLACE} label="Friction" choices={FRICTIONS} />
      <DocumentChoice
        path="joint.screw.threadLocking"
        place={PLACE}
        label="Thread locking"
        choices={THREAD_LOCKINGS}
      />
    </GivenGroup>
  );
}
