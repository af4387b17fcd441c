import type { InsertAxis } from '../host/host.ts';
import type { HostMaterial } from '../host/material.ts';
import type { Insert, SettingMethod } from '../inserts/insert.ts';
import { type Derived, entry } from '../sources/derived.ts';

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
  /** Absent: not named, or gone. */
  readonly printer?: string;
  /** A printer that is named and no longer there; absent: none such. */
  readonly gonePrinter?: string;
  readonly materialId: string;
  /** Absent: it is not in the tables. */
  readonly material?: HostMaterial;
  readonly axis: InsertAxis;
  readonly setting: TestSetting;
  readonly kind: TestKind;
  readonly shown: Shown;
  /** Force at the insert over the one shown, [-]; what was written, even where no lever has it. */
  readonly leverRatio: number;
  readonly result: TestResult;
  /** Bore before setting, mm; absent: the one intended. */
  readonly bore?: number;
  /** Wall lines of the coupon, and its infill as a share [-]; absent: not written down. */
  readonly wallLines?: number;
  readonly infill?: number;
  /** Of the iron, °C, and how long the setting took, h; absent: not written down. */
  readonly ironTemperature?: number;
  readonly settingTime?: number;
  /** Name for what was varied. */
  readonly batch?: string;
  /** All that was written of it, its name apart, as one text: tests alike in it say the same. */
  readonly written: string;
}

/** Ratios between which a lever lies, [-]. */
export const LEVER_RATIOS = { least: 0.05, greatest: 100 } as const;

export const TORQUE_KINDS: readonly TestKind[] = ['jack-out-torque', 'torque-out'];

/** Load at the insert: what was shown, times the lever, N or N·mm. */
export const loadOf = ({ shown, leverRatio }: Pick<BenchTest, 'shown' | 'leverRatio'>): number =>
  shown.value * leverRatio;

/**
 * Load at the insert, with its derivation; see loadOf.
 *
 *     R = W · i
 *
 * @param test - reading W [N or N·mm] and lever ratio i [-]
 * @returns R [N or N·mm]
 * @source your-tests reading of the instrument
 */
export function loadAtInsert({ shown, leverRatio }: Pick<BenchTest, 'shown' | 'leverRatio'>): Derived {
  const unit = shown.quantity === 'torque' ? 'N·mm' : 'N';
  return {
    symbol: 'R_w',
    value: loadOf({ shown, leverRatio }),
    unit,
    formula: 'W_r · i_L',
    entries: [entry('W_r', shown.value, unit), entry('i_L', leverRatio, '-')],
    source: 'your-tests',
    standing: 'measured',
  };
}

const GAVE_WAY: readonly TestResult[] = ['insert-out-clean', 'insert-out-with-plastic', 'insert-turned'];

/** Whether the hold of the insert in the plastic ended, and nothing else did. */
export const hasGivenWay = ({ result }: Pick<BenchTest, 'result'>): boolean => GAVE_WAY.includes(result);
