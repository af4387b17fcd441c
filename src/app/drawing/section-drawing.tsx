import { useId, useMemo } from 'react';
import { describeSection } from './describe-section.ts';
import { besideLines, DimensionFigure, LeaderFigure } from './dimension-figure.tsx';
import styles from './drawing.module.css';
import lines from './lines.module.css';
import { useNarrowScreen } from './narrow-screen.ts';
import { NoteList } from './note-list.tsx';
import { SectionFigure } from './section-figure.tsx';
import type { SectionInput } from './section-input.ts';
import { sectionLayout } from './section-layout.ts';
import { type Controls, type Details, LabelOverlay, NoteOverlay } from './section-overlays.tsx';

export interface SectionDrawingProps {
  readonly input: SectionInput;
  /** What stands in the place of a number; the plain number where none is given. */
  readonly controls?: Controls;
  /** Second line of a note in place of the drawing's own. */
  readonly details?: Details;
  /** Which drawing; absent: the narrow one on screens up to 960 px. */
  readonly variant?: 'wide' | 'narrow';
}

const none = {};

/** The joint in full section, to scale, with its values in their places. */
export function SectionDrawing({ input, controls = none, details = none, variant }: SectionDrawingProps) {
  const isNarrowScreen = useNarrowScreen();
  const chosen = variant ?? (isNarrowScreen ? 'narrow' : 'wide');
  const withSkinNote = controls['top-skin'] !== undefined;
  const layout = useMemo(
    () => sectionLayout(input, { variant: chosen, withSkinNote }),
    [input, chosen, withSkinNote],
  );
  const id = useId();
  const { width, height, view, geometry } = layout;
  const isNarrow = chosen === 'narrow';
  return (
    <div className={isNarrow ? styles.narrow : styles.wide} data-variant={chosen}>
      <div className={styles.figure}>
        <svg
          className={isNarrow ? lines.narrow : lines.wide}
          viewBox={`0 0 ${width} ${height}`}
          role="img"
          aria-label={describeSection(input)}
        >
          <SectionFigure id={id} input={input} geometry={geometry} view={view} />
          {layout.dimensions.map((group, index) => (
            <DimensionFigure
              key={index === 0 ? 'upright' : 'level'}
              group={{ ...group, ties: [...group.ties, ...besideLines(group.labels, group.lines)] }}
            />
          ))}
          <LeaderFigure notes={layout.notes} withLetters={isNarrow} />
        </svg>
        {layout.labels.map((label) => (
          <LabelOverlay
            key={label.id}
            label={label}
            input={input}
            control={controls[label.id]}
            variant={chosen}
            sheet={layout}
          />
        ))}
        {isNarrow
          ? null
          : layout.notes.map((placed) => (
              <NoteOverlay
                key={placed.note.id}
                placed={placed}
                input={input}
                controls={controls}
                detail={details[placed.note.id]}
                sheet={layout}
              />
            ))}
      </div>
      {isNarrow ? <NoteList layout={layout} input={input} controls={controls} details={details} /> : null}
    </div>
  );
}
