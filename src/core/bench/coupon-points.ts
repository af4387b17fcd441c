import { insertDimensions } from '../inserts/insert-dimensions.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { bondFactor } from '../pull-out/bond.ts';
import { type Derived, entryFrom } from '../sources/derived.ts';
import type { SetupEvidence } from './evidence.ts';
import { movedHold } from './moved-hold.ts';

/** What one coupon says of the pull-out of its insert in a joint. */
export interface CouponPoint {
  readonly testId: string;
  readonly insertId: string;
  readonly says: 'broke' | 'held';
  /** mm */
  readonly knurlDiameter: number;
  /** Over all, mm. */
  readonly length: number;
  /** N; for a coupon that held, at least this. */
  readonly force: Derived;
}

/**
 * Pull-out that each coupon of a joint's set-up stands for in that joint.
 *
 *     F_pi = F · η_i/η        F knurl shear as estimated, with bond factor η
 *
 * At the joint's temperature, bore and layers, so a pull of another temperature or bore is not the force that the scale
 * showed; torques are taken to a force in the same way. Coupons of another thread have no place in the joint.
 *
 * @param setup - the joint's own set-up
 * @param joint - a joint that may be answered
 * @returns the coupons that spoke of the bond, in their order
 * @source own-model bond factor put into the joint
 */
export function couponPoints(setup: SetupEvidence, joint: AnswerableJoint): readonly CouponPoint[] {
  const factor = bondFactor(setup.setting);
  return setup.findings.flatMap(({ test, says, bond }): readonly CouponPoint[] => {
    const { insert } = test;
    if (insert === undefined || bond === undefined || insert.thread.id !== joint.screw.thread.id) return [];
    if (says !== 'broke' && says !== 'held') return [];
    const { knurlDiameter, length } = insertDimensions(insert);
    const { median } = movedHold(joint, insert, setup.tested).before;
    return [
      {
        testId: test.id,
        insertId: test.insertId,
        says,
        knurlDiameter: knurlDiameter.estimate.value,
        length: length.estimate.value,
        force: {
          symbol: 'F_pi',
          value: (median.value * bond.value) / factor.value,
          unit: 'N',
          formula: 'F_ks · η_i/η',
          entries: [entryFrom(median), entryFrom(bond), entryFrom(factor)],
          source: 'your-tests',
          standing: 'measured',
        },
      },
    ];
  });
}
