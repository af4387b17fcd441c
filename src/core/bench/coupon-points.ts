import { insertDimensions } from '../inserts/insert-dimensions.ts';
import { type TorqueToForce, torqueToForce } from '../joint/demand.ts';
import { surroundingsOf } from '../joint/situation-of.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { bondFactor } from '../pull-out/bond.ts';
import { type Derived, entryFrom } from '../sources/derived.ts';
import type { BenchTest } from './bench-test.ts';
import type { SetupEvidence } from './evidence.ts';
import { movedHold } from './moved-hold.ts';

/** What a torque turned: the insert itself, or the screw that was to pull it out. */
export type TorquePointKind = 'torque-out' | 'jack-out';

/** What one coupon says of the pull-out of its insert in a joint, and of the torque that it was tested with. */
export interface CouponPoint {
  readonly testId: string;
  readonly insertId: string;
  readonly says: 'broke' | 'held';
  /** mm */
  readonly knurlDiameter: Derived;
  /** Over all, mm. */
  readonly length: Derived;
  /** N; for a coupon that held, at least this. */
  readonly force: Derived;
  /** N·mm; absent where the coupon was pulled. */
  readonly torque?: { readonly of: TorquePointKind; readonly value: Derived };
}

/**
 * Pull-out that each coupon of a joint's set-up stands for in that joint.
 *
 *     F_pi = F · η_i/η        F knurl shear as estimated, with bond factor η
 *     T_pi = F_pi · Dk/2      turned: the torque at the insert
 *     T_pi = F_pi · √(k_low · k_high)        jacked out: the torque on the screw, at the middle of friction
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
  const { ways } = torqueToForce(joint, surroundingsOf(joint));
  return setup.findings.flatMap(({ test, says, bond }): readonly CouponPoint[] => {
    const { insert } = test;
    if (insert === undefined || bond === undefined || insert.thread.id !== joint.screw.thread.id) return [];
    if (says !== 'broke' && says !== 'held') return [];
    const { knurlDiameter, length } = insertDimensions(insert);
    const { median } = movedHold(joint, insert, setup.tested).before;
    const force: Derived = {
      symbol: 'F_pi',
      value: (median.value * bond.value) / factor.value,
      unit: 'N',
      formula: 'F_ks · η_i/η',
      entries: [entryFrom(median), entryFrom(bond), entryFrom(factor)],
      source: 'your-tests',
      standing: 'measured',
    };
    const of = torqueOf(test);
    return [
      {
        testId: test.id,
        insertId: test.insertId,
        says,
        knurlDiameter: knurlDiameter.estimate,
        length: length.estimate,
        force,
        ...(of === undefined
          ? {}
          : {
              torque: {
                of,
                value: of === 'torque-out' ? turned(force, knurlDiameter.estimate) : jackedOut(force, ways),
              },
            }),
      },
    ];
  });
}

/** A jack-out that ended with the insert turning says what torque turns it: the share that the thread passed on. */
function torqueOf({ kind, result }: BenchTest): TorquePointKind | undefined {
  if (kind === 'torque-out') return 'torque-out';
  if (kind !== 'jack-out-torque') return undefined;
  return result === 'insert-turned' ? 'torque-out' : 'jack-out';
}

const turned = (force: Derived, knurl: Derived): Derived => ({
  symbol: 'T_pi',
  value: (force.value * knurl.value) / 2,
  unit: 'N·mm',
  formula: 'F_pi · D_k/2',
  entries: [entryFrom(force), entryFrom(knurl)],
  source: 'your-tests',
  standing: 'measured',
});

const jackedOut = (force: Derived, { slippery, sticky }: TorqueToForce['ways']): Derived => ({
  symbol: 'T_pi',
  value: force.value * Math.sqrt(slippery.value * sticky.value),
  unit: 'N·mm',
  formula: 'F_pi · √(k_low · k_high)',
  entries: [entryFrom(force), entryFrom(slippery), entryFrom(sticky)],
  source: 'your-tests',
  standing: 'measured',
});
