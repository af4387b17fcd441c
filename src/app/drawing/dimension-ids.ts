/**
 * Every value that has a place of its own on the section, in the order of the groups on the sheet.
 * The page hands a control for any of them; the drawing shows the plain number for the rest.
 */
export const dimensionIds = [
  // Vertical, left of the drawing.
  'clamped-thickness',
  'gap',
  'sunk',
  'insert-length',
  'well',
  'floor',
  'screw-length',
  'hole-depth',
  'host-thickness',
  // Level, in and below the drawing.
  'bore-printed',
  'bore-drawn',
  'boss-least',
  'boss-diameter',
  // In the notes, right of the drawing.
  'screw-choice',
  'clearance-hole',
  'knurl-diameter',
  'bite',
  'wall-count',
  'line-width',
  'wall',
  'layer-height',
  'melt-volume',
  'infill',
  'top-skin',
] as const;

export type DimensionId = (typeof dimensionIds)[number];

export interface DimensionDoc {
  /** The small name beside the value. */
  readonly name: string;
  /** What it measures, for whoever places a control. */
  readonly measures: string;
  /** Digits after the point where the plain number is shown. */
  readonly digits: number;
  readonly unit: 'mm' | 'mm³' | '%' | '-';
}

export const dimensionDocs: Readonly<Record<DimensionId, DimensionDoc>> = {
  'clamped-thickness': { name: 'lid', measures: 'thickness of the clamped part', digits: 1, unit: 'mm' },
  gap: {
    name: 'gap',
    measures: 'free distance under the clamped part; drawn when open',
    digits: 1,
    unit: 'mm',
  },
  sunk: {
    name: 'sunk',
    measures: 'insert below the face it was set from; drawn when sunk',
    digits: 1,
    unit: 'mm',
  },
  'insert-length': { name: 'insert', measures: 'length of the insert', digits: 1, unit: 'mm' },
  well: { name: 'well', measures: 'free hole beyond the insert, for melt and screw', digits: 1, unit: 'mm' },
  floor: {
    name: 'floor',
    measures: 'what is left beyond the hole; the shoulder of a far side',
    digits: 1,
    unit: 'mm',
  },
  'screw-length': { name: 'screw', measures: 'length of the screw that was chosen', digits: 0, unit: 'mm' },
  'hole-depth': { name: 'hole', measures: 'depth to draw', digits: 1, unit: 'mm' },
  'host-thickness': { name: 'part', measures: 'material under the face, all of it', digits: 1, unit: 'mm' },
  'bore-printed': { name: 'prints', measures: 'diameter of the bore as printed', digits: 2, unit: 'mm' },
  'bore-drawn': { name: 'draw', measures: 'diameter to draw in CAD', digits: 2, unit: 'mm' },
  'boss-least': { name: 'boss at least', measures: 'smallest boss diameter', digits: 1, unit: 'mm' },
  'boss-diameter': {
    name: 'boss',
    measures: 'diameter of a free-standing boss; drawn when there is one',
    digits: 1,
    unit: 'mm',
  },
  'screw-choice': {
    name: 'screw',
    measures: 'length of the screw in its note, where it can be fixed',
    digits: 0,
    unit: 'mm',
  },
  'clearance-hole': { name: 'clearance', measures: 'hole in the clamped part', digits: 1, unit: 'mm' },
  'knurl-diameter': { name: 'knurl', measures: 'knurl diameter of the insert', digits: 1, unit: 'mm' },
  bite: { name: 'bite', measures: 'radial bite of the knurl', digits: 2, unit: 'mm' },
  'wall-count': { name: 'walls', measures: 'number of wall lines', digits: 0, unit: '-' },
  'line-width': { name: 'line', measures: 'width of a wall line', digits: 2, unit: 'mm' },
  wall: { name: 'wall', measures: 'wall round the bore, all lines together', digits: 2, unit: 'mm' },
  'layer-height': { name: 'layers', measures: 'height of a layer', digits: 2, unit: 'mm' },
  'melt-volume': { name: 'melt', measures: 'plastic that the insert displaces', digits: 1, unit: 'mm³' },
  infill: { name: 'infill', measures: 'density of the infill', digits: 0, unit: '%' },
  'top-skin': {
    name: 'skin',
    measures: 'solid layers at the face; noted when a control is given',
    digits: 1,
    unit: 'mm',
  },
};

/** The notes beside the drawing, top to bottom as a rule; the letters of the narrow drawing follow this list. */
export const noteIds = [
  'screw',
  'washer',
  'sleeve',
  'clearance',
  'seat',
  'knurl',
  'skin',
  'walls',
  'melt',
  'infill',
] as const;

export type NoteId = (typeof noteIds)[number];
