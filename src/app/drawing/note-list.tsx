import { type DimensionId, dimensionDocs } from './dimension-ids.ts';
import styles from './drawing.module.css';
import { plainNumber, valueSign } from './plain-value.ts';
import type { SectionInput } from './section-input.ts';
import type { SectionLayout } from './section-layout.ts';
import { type Controls, type Details, Pieces } from './section-overlays.tsx';

/** Values of the wide drawing that the narrow one has no room for; they follow the notes. */
const listedBelow: readonly DimensionId[] = ['screw-length', 'host-thickness', 'bore-printed'];

const listedNames: Partial<Record<DimensionId, string>> = {
  'screw-length': 'Screw, length',
  'host-thickness': 'Part under the face',
  'bore-printed': 'Hole, as printed',
};

export interface NoteListProps {
  readonly layout: SectionLayout;
  readonly input: SectionInput;
  readonly controls: Controls;
  readonly details: Details;
}

/** What the letters of the narrow drawing stand for. */
export function NoteList({ layout, input, controls, details }: NoteListProps) {
  return (
    <ul className={styles.notes}>
      {layout.notes.map(({ note, letter }) => {
        const detail = details[note.id] ?? <Pieces pieces={note.detail} input={input} controls={controls} />;
        const hasDetail = details[note.id] !== undefined || note.detail.length > 0;
        return (
          <li key={note.id} data-note={note.id}>
            <i>{letter}</i>
            <span>
              <Pieces pieces={note.head} input={input} controls={controls} />
              {hasDetail ? <>, {detail}</> : null}
            </span>
          </li>
        );
      })}
      {listedBelow.map((id) => (
        <li key={id} data-dimension={id}>
          <i />
          <span>
            {listedNames[id] ?? dimensionDocs[id].name} {valueSign(id)}
            {controls[id] ?? plainNumber(input, id)}
          </span>
        </li>
      ))}
    </ul>
  );
}
