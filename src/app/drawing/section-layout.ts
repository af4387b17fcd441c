import { levelDimensions } from './level-dimensions.ts';
import { notesHeight, type PlacedNote, placeNotes } from './note-layout.ts';
import { sectionNotes } from './notes.ts';
import type { DimensionGroup, PlacedLabel } from './placed.ts';
import { type SectionGeometry, sectionGeometry } from './section-geometry.ts';
import type { SectionInput } from './section-input.ts';
import { uprightDimensions } from './upright-dimensions.ts';
import { sectionView, sheets, type Variant, type View } from './view.ts';

/** The whole sheet: shapes in mm, how they are placed, and everything that is written round them in px. */
export interface SectionLayout {
  readonly width: number;
  readonly height: number;
  readonly view: View;
  readonly geometry: SectionGeometry;
  readonly dimensions: readonly DimensionGroup[];
  /** Top to bottom, then left to right. */
  readonly labels: readonly PlacedLabel[];
  readonly notes: readonly PlacedNote[];
}

export interface LayoutChoice {
  readonly variant: Variant;
  readonly withSkinNote: boolean;
}

export function sectionLayout(input: SectionInput, { variant, withSkinNote }: LayoutChoice): SectionLayout {
  const view = sectionView(input, variant);
  const geometry = sectionGeometry(input, view.frame);
  const below = levelDimensions(input, geometry, view);
  const notes = sectionNotes(input, geometry, withSkinNote);
  const height = Math.ceil(Math.max(below.bottom, notesHeight(input, notes, variant)));
  const left = uprightDimensions(input, geometry.levels, view, height);
  const labels = [...left.labels, ...below.labels].sort(
    (a, b) => a.middle.y - b.middle.y || a.middle.x - b.middle.x,
  );
  return {
    width: sheets[variant].width,
    height,
    view,
    geometry,
    dimensions: [left, below],
    labels,
    notes: placeNotes(input, notes, view, variant === 'wide' ? height : below.top),
  };
}
