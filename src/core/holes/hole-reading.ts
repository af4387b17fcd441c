/** What a hole was read with: inside jaws of a caliper, or the largest pin or drill shank that enters. */
export type HoleInstrument = 'caliper-jaws' | 'pin-gauge' | 'drill-shank';
export type HoleAxis = 'vertical' | 'horizontal';

/** One printed hole beside its drawing. Vertical and horizontal holes are calibrated apart. */
export interface HoleReading {
  /** Of the circle, mm; where a polygon was exported, of the circle through its corners. */
  readonly drawn: number;
  /** Several readings of this one hole, mm, at least one. */
  readonly measured: readonly number[];
  readonly instrument: HoleInstrument;
  readonly axis: HoleAxis;
  /** Corners of the polygon that was exported instead of a circle; absent: a true circle. */
  readonly facets?: number;
  /** Of the caliper, ± mm; counts for its jaws alone. */
  readonly permissibleError: number;
  /** Width of the inside jaws' flats and their offset together, across the hole, mm; counts for jaws alone. */
  readonly jawFlat: number;
  /** Step between one pin or drill and the next, mm; counts for these alone. */
  readonly gaugeStep: number;
}
