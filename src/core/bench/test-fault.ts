import type { Joint } from '../joint/joint.ts';
import {
  breakingTorqueAtTensileStrength,
  isTorsionTested,
  minimumBreakingTorque,
} from '../screws/breaking-torque.ts';
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
  | { readonly code: 'below-step'; readonly shown: number; readonly step: number }
  | { readonly code: 'screw-of-other-thread'; readonly insert: string; readonly screw: string }
  | { readonly code: 'above-screw'; readonly load: number; readonly least: number; readonly screw: string }
  | { readonly code: 'result-of-other-kind' }
  | { readonly code: 'does-not-melt'; readonly material: string }
  | { readonly code: 'bore-leaves-no-bite'; readonly bore: number; readonly knurl: number }
  | { readonly code: 'far-from-model'; readonly load: number; readonly model: number }
  | { readonly code: 'duplicate'; readonly of: string };

/**
 * What is wrong with a test, or undefined.
 *
 * The screw of the coupon is taken to be the joint's: its class, its condition, its head; the thread is the insert's. A
 * load above one and a half times the least that such a screw bears is a slip of the pen or of the unit. What another
 * thread makes of a jack-out is not known: its head is not.
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
  return aboveScrew(test, joint) ?? duplicateOf(test, before);
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

function aboveScrew(test: BenchTest, { screw }: Joint): TestFault | undefined {
  const thread = test.insert?.thread;
  if (thread === undefined) return undefined;
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
