import type { Derived } from '../sources/derived.ts';

/** What the readings of an insert come to; every value with its standard uncertainty. */
export interface InsertDimensions {
  readonly knurlDiameter: MeasuredLength;
  readonly pilotDiameter: MeasuredLength;
  readonly length: MeasuredLength;
  readonly knurledLength: MeasuredLength;
}

/** What readings of one length come to; its uncertainty is worked out when it is asked for, so it is never spread. */
export interface MeasuredLength {
  readonly estimate: Derived;
  /** Combined standard uncertainty u, mm. */
  readonly standardUncertainty: Derived;
  readonly readings: number;
}
