import type { ReactNode } from 'react';
import { describeSection } from './describe-section.ts';
import type { DimensionId, NoteId } from './dimension-ids.ts';
import type { SectionInput } from './section-input.ts';

export interface SectionDrawingProps {
  readonly input: SectionInput;
  /** What stands in the place of a number; the plain number where none is given. */
  readonly controls?: Partial<Record<DimensionId, ReactNode>>;
  /** Second line of a note in place of the drawing's own. */
  readonly details?: Partial<Record<NoteId, ReactNode>>;
  /** Which drawing; absent: the narrow one on screens up to 960 px. */
  readonly variant?: 'wide' | 'narrow';
}

/** The joint in full section, to scale, with its values in their places. */
export function SectionDrawing({ input }: SectionDrawingProps) {
  return <svg role="img" aria-label={describeSection(input)} />;
}
