import type { ReactNode } from 'react';
import type { DimensionId, NoteId } from './dimension-ids.ts';
import styles from './drawing.module.css';
import { labelName } from './label-size.ts';
import type { PlacedNote } from './note-layout.ts';
import type { NotePiece } from './notes.ts';
import type { PlacedLabel } from './placed.ts';
import { plainNumber, valueSign } from './plain-value.ts';
import type { SectionInput } from './section-input.ts';
import type { Variant } from './view.ts';

export type Controls = Partial<Record<DimensionId, ReactNode>>;
export type Details = Partial<Record<NoteId, ReactNode>>;

interface Sheet {
  readonly width: number;
  readonly height: number;
}

const percent = (part: number, whole: number) => `${((part / whole) * 100).toFixed(3)}%`;

export interface LabelOverlayProps {
  readonly label: PlacedLabel;
  readonly input: SectionInput;
  readonly control: ReactNode;
  readonly variant: Variant;
  readonly sheet: Sheet;
}

/** A value over its dimension line, with its small name. */
export function LabelOverlay({ label, input, control, variant, sheet }: LabelOverlayProps) {
  const { id, middle, arrangement, isMain } = label;
  const name = labelName(input, id, variant);
  const classes = [styles.label, arrangement === 'row' && styles.row, isMain && styles.main];
  return (
    <div
      className={classes.filter(Boolean).join(' ')}
      data-dimension={id}
      style={{ left: percent(middle.x, sheet.width), top: percent(middle.y, sheet.height) }}
    >
      {name ? <span className={styles.name}>{name}</span> : null}
      <span className={styles.value}>
        {valueSign(id)}
        {control ?? plainNumber(input, id)}
      </span>
    </div>
  );
}

interface PiecesProps {
  readonly pieces: readonly NotePiece[];
  readonly input: SectionInput;
  readonly controls: Controls;
}

/** Words of a note with a control, or the plain number, where a value stands. */
export function Pieces({ pieces, input, controls }: PiecesProps) {
  return pieces.map((piece) =>
    typeof piece === 'string' ? (
      piece
    ) : (
      <span key={piece.value} className={styles.noteValue} data-dimension={piece.value}>
        {controls[piece.value] ?? plainNumber(input, piece.value)}
      </span>
    ),
  );
}

export interface NoteOverlayProps {
  readonly placed: PlacedNote;
  readonly input: SectionInput;
  readonly controls: Controls;
  readonly detail: ReactNode;
  readonly sheet: Sheet;
}

/** A note at the right end of its leader. */
export function NoteOverlay({ placed, input, controls, detail, sheet }: NoteOverlayProps) {
  const { note, left, top, width } = placed;
  return (
    <div
      className={styles.note}
      data-note={note.id}
      style={{
        left: percent(left, sheet.width),
        top: percent(top, sheet.height),
        width: percent(width, sheet.width),
      }}
    >
      <span className={styles.noteHead}>
        <Pieces pieces={note.head} input={input} controls={controls} />
      </span>
      {detail !== undefined || note.detail.length > 0 ? (
        <span className={styles.noteDetail}>
          {detail ?? <Pieces pieces={note.detail} input={input} controls={controls} />}
        </span>
      ) : null}
    </div>
  );
}
