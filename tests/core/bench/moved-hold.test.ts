import { describe, expect, test } from 'vitest';
import { movedHold } from '../../../src/core/bench/moved-hold.ts';
import { assess } from '../../../src/core/joint/assess.ts';
import { answerableJoint, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const INSERT = theInsert();
const pulled = { centre: Math.log(0.68), scale: 0.14, freedom: 7, coupons: 3, broke: 3 };
const other = { centre: Math.log(0.74), scale: 0.19, freedom: 7, coupons: 3, broke: 3 };
const TESTED = { unpulled: other, bySize: new Map([[INSERT.id, pulled]]) };
const JOINT = answerableJoint();

describe('movedHold', () => {
  const { before, after } = movedHold(JOINT, INSERT, TESTED);
  test('moves the median as the bond factor moves: 0.68 over 0.85', () => {
    expectRelative(after.median.value / before.median.value, 0.8);
  });
  test('gives 19 of 20 by the scatter that the coupons left: t of 7 degrees of freedom 1.8946 (tables of t)', () => {
    expectRelative(after.characteristic.value / after.median.value, Math.exp(-1.8946 * 0.14), 1e-5);
  });
  test('is what the answers say with the tests, and without them', () => {
    const knurlOf = (joint: typeof JOINT) =>
      assess(joint, INSERT).limits.find(({ mode }) => mode === 'knurl-shear')?.capacity;
    expectRelative(before.median.value, knurlOf(JOINT)?.median.value ?? 0);
    expectRelative(
      after.characteristic.value,
      knurlOf({ ...JOINT, tested: TESTED })?.characteristic.value ?? 0,
    );
  });
  test('does not care whether the tests speak in the answers', () => {
    const spoken = movedHold({ ...JOINT, tested: TESTED }, INSERT, TESTED);
    expect([spoken.before.median.value, spoken.after.median.value]).toEqual([
      before.median.value,
      after.median.value,
    ]);
  });
  test('takes what is said of other sizes for an insert that nobody pulled', () => {
    const moved = movedHold(JOINT, { ...INSERT, id: 'not-pulled' }, TESTED);
    expectRelative(moved.after.median.value / moved.before.median.value, 0.74 / 0.85);
  });
  test('is there on the far side, where nothing loads the knurl', () => {
    const far = movedHold({ ...JOINT, insertSide: 'far-side' }, INSERT, TESTED);
    expectRelative(far.after.median.value, after.median.value, 0.02);
  });
});
