import type { Thread } from '../screws/thread.ts';

/** Several readings of one feature with one caliper, mm; permissible error ±, mm. */
export interface Readings {
  readonly values: readonly number[];
  readonly permissibleError: number;
}

export type SettingMethod = 'heat-set' | 'cold-pressed' | 'hammered';

/** A brass insert as measured; its thread's row resolved. */
export interface Insert {
  readonly id: string;
  readonly label?: string;
  readonly thread: Thread;
  readonly knurlDiameter: Readings;
  readonly pilotDiameter: Readings;
  readonly length: Readings;
  /** Absent: estimated from length and knurl diameter. */
  readonly knurledLength?: Readings;
  /** How many lie in the drawer; absent: not counted. */
  readonly count?: number;
}
