import type { Joint } from '../joint/joint.ts';
import { ultimateTensileLoad } from '../screws/tensile-load.ts';
import { type BenchTest, loadOf, TORQUE_KINDS } from './bench-test.ts';

/** A screw stronger than its least by more than this is not to be had, [-] (estimate). */
const STRONGEST_PER_LEAST = 1.5;

/** Why a test says nothing, with its facts. Forces N, torques N·mm. */
export type TestFault =
  | { readonly code: 'no-reading' }
  | { readonly code: 'not-in-drawer'; readonly insert: string }
  | { readonly code: 'unit-of-other-kind'; readonly wanted: 'force' | 'torque' }
  | { readonly code: 'above-instrument'; readonly shown: number; readonly greatest: number }
  | { readonly code: 'above-screw'; readonly load: number; readonly most: number; readonly screw: string }
  | { readonly code: 'result-of-other-kind' }
  | { readonly code: 'does-not-melt'; readonly material: string }
  | { readonly code: 'bore-leaves-no-bite'; readonly bore: number; readonly knurl: number }
  | { readonly code: 'far-from-model'; readonly load: number; readonly model: number }
  | { readonly code: 'duplicate'; readonly of: string };

/**
 * What is wrong with a test, or undefined.
 *
 * The screw of the coupon is taken to be the joint's: the same thread, its class. A load above one and a half times the
 * least that such a screw bears is a slip of the pen or of the unit.
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
  const { shown, kind, insert, result } = test;
  const wanted = TORQUE_KINDS.includes(kind) ? 'torque' : 'force';
  if (shown.quantity !== wanted) return { code: 'unit-of-other-kind', wanted };
  if (shown.value <= 0) return { code: 'no-reading' };
  if (insert === undefined) return { code: 'not-in-drawer', insert: test.insertId };
  if ((result === 'insert-turned') !== (kind === 'torque-out') && turnsOrComesOut(result)) {
    return { code: 'result-of-other-kind' };
  }
  if (shown.greatest !== undefined && shown.value > shown.greatest) {
    return { code: 'above-instrument', shown: shown.value, greatest: shown.greatest };
  }
  return aboveScrew(test, joint) ?? duplicateOf(test, before);
}

const turnsOrComesOut = (result: BenchTest['result']): boolean =>
  result === 'insert-turned' || result === 'insert-out-clean' || result === 'insert-out-with-plastic';

function aboveScrew(test: BenchTest, joint: Joint): TestFault | undefined {
  const { screw } = joint;
  if (test.insert?.thread.id !== screw.thread.id) return undefined;
  const load = loadOf(test);
  const least =
    test.shown.quantity === 'torque' ? screw.breakingTorque?.torque : ultimateTensileLoad(screw).value;
  if (least === undefined || load <= STRONGEST_PER_LEAST * least) return undefined;
  return { code: 'above-screw', load, most: least, screw: screw.thread.designation };
}

/** A test that says again what an earlier one of the same day and batch does. */
function duplicateOf(test: BenchTest, before: readonly BenchTest[]): TestFault | undefined {
  const twin = before.find(
    (one) =>
      one.date === test.date &&
      one.insertId === test.insertId &&
      one.kind === test.kind &&
      one.result === test.result &&
      one.batch === test.batch &&
      one.setting === test.setting &&
      one.shown.value === test.shown.value &&
      // Instruments that show whole numbers repeat themselves; two equal readings of one are no slip.
      test.result !== 'held',
  );
  return twin && { code: 'duplicate', of: twin.id };
}
