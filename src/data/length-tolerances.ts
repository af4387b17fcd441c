import type { SourceId } from '../core/sources/sources.ts';

/** Permissible deviation ± of a nominal screw length, mm, for lengths over `over` up to and including `upTo`. */
export interface LengthTolerance {
  readonly over: number;
  readonly upTo: number;
  readonly deviation: number;
  readonly source: SourceId;
  readonly howKnown: 'read' | 'from-memory';
}

/**
 * js15 on the length of metric screws, ascending. The deviations of 6 to 60 mm are read; the steps between them are
 * the nominal ranges of ISO 286-1, remembered, as are the first row and 60 to 80 mm.
 */
export const LENGTH_TOLERANCES: readonly LengthTolerance[] = [
  { over: 0, upTo: 3, deviation: 0.2, source: 'iso-4759', howKnown: 'from-memory' },
  { over: 3, upTo: 6, deviation: 0.24, source: 'iso-4759', howKnown: 'read' },
  { over: 6, upTo: 10, deviation: 0.29, source: 'iso-4759', howKnown: 'read' },
  { over: 10, upTo: 18, deviation: 0.35, source: 'iso-4759', howKnown: 'read' },
  { over: 18, upTo: 30, deviation: 0.42, source: 'iso-4759', howKnown: 'read' },
  { over: 30, upTo: 50, deviation: 0.5, source: 'iso-4759', howKnown: 'read' },
  { over: 50, upTo: 80, deviation: 0.6, source: 'iso-4759', howKnown: 'read' },
];
