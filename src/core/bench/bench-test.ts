import type { InsertAxis } from '../host/host.ts';
import type { HostMaterial } from '../host/material.ts';
import type { Insert, SettingMethod } from '../inserts/insert.ts';

/** How an insert, or what stands in for one, was set. */
export type TestSetting = SettingMethod | 'screwed-in' | 'nut';

export type TestKind = 'pull-out' | 'jack-out-torque' | 'torque-out' | 'proof-pull';

export type TestResult =
  | 'insert-out-clean'
  | 'insert-out-with-plastic'
  | 'insert-turned'
  | 'boss-split'
  | 'layers-parted'
  | 'screw-broke'
  | 'thread-stripped'
  | 'held';

/** What one instrument showed, in N or N·mm. */
export interface Shown {
  readonly quantity: 'force' | 'torque';
  readonly value: number;
  /** Smallest step that it shows; absent: not known. */
  readonly resolution?: number;
  /** Most that it can show; absent: not known. */
  readonly greatest?: number;
}

/** One test at the bench, its ids resolved. */
export interface BenchTest {
  readonly id: string;
  readonly date: string;
  readonly insertId: string;
  /** Absent: it is not in the drawer. */
  readonly insert?: Insert;
  /** Absent: not named. */
  readonly printer?: string;
  readonly material: HostMaterial;
  readonly axis: InsertAxis;
  readonly setting: TestSetting;
  readonly kind: TestKind;
  readonly shown: Shown;
  /** Force at the insert over the one shown, [-]. */
  readonly leverRatio: number;
  readonly result: TestResult;
  /** Bore before setting, mm; absent: the one intended. */
  readonly bore?: number;
  /** Name for what was varied. */
  readonly batch?: string;
}

export const TORQUE_KINDS: readonly TestKind[] = ['jack-out-torque', 'torque-out'];

/** Load at the insert: what was shown, times the lever, N or N·mm. */
export const loadOf = ({ shown, leverRatio }: Pick<BenchTest, 'shown' | 'leverRatio'>): number =>
  shown.value * leverRatio;
