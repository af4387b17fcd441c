import type { Derived } from '../sources/derived.ts';

/** The ways in which the joint can fail; the list is extended by one file in pull-out, one line in joint/modes.ts. */
export type FailureMode =
  | 'knurl-shear'
  | 'wall-plug'
  | 'boss-tear'
  | 'boss-split'
  | 'shoulder-yield'
  | 'shoulder-punch'
  | 'insert-thread'
  | 'screw-thread'
  | 'screw-yield'
  | 'head-bearing'
  | 'seat-bearing'
  | 'torque-out';

/** Where the clamped part bears, and so which way the clamp force closes. */
export type SeatKind = 'on-insert' | 'on-plastic' | 'over-gap' | 'far-side';

/** What loads a mode: the clamp force of the screw, the pull from outside, or the torque on the insert. */
export type LoadPath = 'clamp' | 'pull' | 'torque';

/** What a mode can bear: half of all joints bear the median, 19 of 20 the characteristic value. */
export interface Capacity {
  readonly median: Derived;
  readonly characteristic: Derived;
}
