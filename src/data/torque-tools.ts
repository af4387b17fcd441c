import type { TorqueTool } from '../core/joint/joint.ts';
import type { Standing } from '../core/sources/derived.ts';
import type { SourceId } from '../core/sources/sources.ts';

/** A kind of tool to tighten with; a joint's own tool takes its deviation from here and its settings from the person. */
export interface TorqueToolClass {
  readonly kind: TorqueTool['kind'];
  readonly deviation: number;
  /** Largest torque the deviation holds for, N·mm; absent: no limit known. */
  readonly largestTorque?: number;
  readonly source: SourceId;
  readonly standing: Standing;
}

/**
 * Driver: ISO 6789, ±6 % where the largest torque of the tool is 10 N·m or less.
 * By hand: ±35 %, printed as the scatter of preload when tightened by feel, taken here for the torque itself.
 */
export const TORQUE_TOOL_CLASSES: readonly TorqueToolClass[] = [
  { kind: 'torque-driver', deviation: 0.06, largestTorque: 10000, source: 'iso-6789', standing: 'published' },
  { kind: 'hand', deviation: 0.35, source: 'machinery-handbook', standing: 'common-practice' },
];

/**
 * Settings shown until a person enters those of their own driver, ascending, N·mm.
 * A choice of this program, taken from no standard: steps of about a quarter, on round numbers.
 */
export const DEFAULT_TORQUE_SETTINGS: readonly number[] = [
  100, 120, 150, 200, 250, 300, 400, 500, 600, 800, 1000, 1200, 1500, 2000, 2500, 3000, 4000, 5000,
];

/** Step of a driver with a scale instead of fixed settings, N·mm; a choice of this program. */
export const DEFAULT_TORQUE_STEP = 50;
