import type { Joint } from '../joint/joint.ts';
import {
  breakingTorqueAtTensileStrength,
  isTorsionTested,
  minimumBreakingTorque,
} from '../screws/breaking-torque.ts';
import { ultimateTensileLoad } from '../screws/tensile-load.ts';
import type { Thread } from '../screws/thread.ts';
import type { Derived } from '../sources/derived.ts';
import { type BenchTest, LEVER_RATIOS, loadOf, TORQUE_KINDS } from './bench-test.ts';

/** A screw stronger than its least by more than this is not to be had, [-] (estimate). */
const STRONGEST_PER_LEAST = 1.5;

/** Why a test says nothing, with its facts. Forces N, torques N·mm. */
export type TestFault =
  | { readonly code: 'no-reading' }
  | { readonly code: 'reading-below-zero'; readonly shown: number }
  | {
      readonly code: 'no-such-lever';
      readonly ratio: number;
      readonly least: number;
      readonly greatest: number;
    }
  | { readonly code: 'not-in-drawer'; readonly insert: string }
  | { readonly code: 'unknown-material'; readonly material: string }
  | { readonly code: 'printer-gone'; readonly printer: string }
  | { readonly code: 'unit-of-other-kind'; readonly wanted: 'force' | 'torque' }
  | { readonly code: 'above-instrument'; readonly shown: number; readonly greatest: number }
  | { readonly code: 'below-step'; readonly shown: number; readonly step: number }
  | { readonly code: 'screw-of-other-thread'; readonly insert: string; readonly screw: string }
  | { readonly code: 'above-screw'; readonly load: number; readonly least: number; readonly screw: string }
  | { readonly code: 'result-of-other-kind' }
  | { readonly code: 'does-not-melt'; readonly material: string }
  | { readonly code: 'bore-leaves-no-bite'; readonly bore: number; readonly knurl: Derived }
  | { readonly code: 'far-from-model'; readonly load: number; readonly model: number }
  | { readonly code: 'duplicate'; readonly of: string };

/**
 * What is wrong with a test, or undefined.
 *
 * The screw of the coupon is taken to be the joint's: its class, its condition, its head; the thread is the insert's. A
 * load above one and a half times the least that such a screw bears is a slip of the pen or of the unit. What another
 * thread makes of a jack-out is not known: its head is not. Two tests are one written twice only where they are alike in
 * all that can be written of them, number of the coupon and note included: equal readings of two coupons are no slip.
 *
 * @param test - the test
 * @param before - the tests entered before it
 * @param joint - its screw
 * @returns the first fault
 * @source iso-898-1 ultimate tensile load
 * @source iso-898-7 breaking torque
 */
export function faultOfTest(
  test: BenchTest,
  before: readonly BenchTest[],
  joint: Joint,
): TestFault | undefined {
  const { shown, kind, insert, result, leverRatio } = test;
  const wanted = TORQUE_KINDS.includes(kind) ? 'torque' : 'force';
  if (shown.quantity !== wanted) return { code: 'unit-of-other-kind', wanted };
  if (shown.value < 0) return { code: 'reading-below-zero', shown: shown.value };
  if (shown.value === 0) return { code: 'no-reading' };
  if (leverRatio < LEVER_RATIOS.least || leverRatio > LEVER_RATIOS.greatest) {
    return { code: 'no-such-lever', ratio: leverRatio, ...LEVER_RATIOS };
  }
  if (insert === undefined) return { code: 'not-in-drawer', insert: test.insertId };
  if (test.material === undefined) return { code: 'unknown-material', material: test.materialId };
  if (test.gonePrinter !== undefined) return { code: 'printer-gone', printer: test.gonePrinter };
  if (!canEnd(kind, result)) return { code: 'result-of-other-kind' };
  const [threadOfInsert, threadOfScrew] = [insert.thread, joint.screw.thread];
  if (kind === 'jack-out-torque' && threadOfInsert.id !== threadOfScrew.id) {
    const names = { insert: threadOfInsert.designation, screw: threadOfScrew.designation };
    return { code: 'screw-of-other-thread', ...names };
  }
  if (shown.resolution !== undefined && shown.resolution > shown.value) {
    return { code: 'below-step', shown: shown.value, step: shown.resolution };
  }
  if (shown.greatest !== undefined && shown.value > shown.greatest) {
    return { code: 'above-instrument', shown: shown.value, greatest: shown.greatest };
  }
  return aboveScrew(test, insert.thread, joint) ?? duplicateOf(test, before);
}

/** An insert turns by torque and comes out by a pull; a screw that jacks it out does both. */
function canEnd(kind: BenchTest['kind'], result: BenchTest['result']): boolean {
  switch (result) {
    case 'insert-turned':
      return TORQUE_KINDS.includes(kind);
    case 'insert-out-clean':
    case 'insert-out-with-plastic':
      return kind !== 'torque-out';
    default:
      return true;
  }
}

function aboveScrew(test: BenchTest, thread: Thread, { screw }: Joint): TestFault | undefined {
  const { propertyClass } = screw;
  const load = loadOf(test);
  const least =
    test.shown.quantity === 'force'
      ? ultimateTensileLoad({ thread, propertyClass }).value
      : isTorsionTested(propertyClass)
        ? minimumBreakingTorque({ thread, propertyClass }).value
        : breakingTorqueAtTensileStrength({ thread, propertyClass });
  return load > STRONGEST_PER_LEAST * least
    ? { code: 'above-screw', load, least, screw: thread.designation }
    : undefined;
}

function duplicateOf({ written }: BenchTest, before: readonly BenchTest[]): TestFault | undefined {
  const twin = before.find((one) => one.written === written);
  return twin && { code: 'duplicate', of: twin.id };
}
