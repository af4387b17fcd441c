import { describe, expect, test } from 'vitest';
import type { Insert } from '../../../src/core/inserts/insert.ts';
import { assess } from '../../../src/core/joint/assess.ts';
import type { JointAssessment } from '../../../src/core/joint/assessment.ts';
import type { AnswerableJoint } from '../../../src/core/joint/stop.ts';
import { holdOf } from '../../../src/core/service/hold.ts';
import { shifted } from '../../../src/core/service/lever.ts';
import fc from '../../support/fast-check.ts';
import { answerableJoint, given, theInsert } from '../../support/joints.ts';
import { usualJoints } from '../../support/usual-joints.ts';
import { moved } from './subject-of.ts';

/** Room for binary dust where two ways come to the same. */
const DUST = 1e-9;
const RUNS = { numRuns: 120 };
const INSERT = theInsert({ knurledLength_mm: [3.1] });

const expectNotBelow = (after: number, before: number): void =>
  expect(after).toBeGreaterThanOrEqual(before - DUST * Math.abs(before));

/** What an insert holds, and what turns it: characteristic values. */
const holding = ({ holds, limits }: JointAssessment): readonly number[] => [
  holds.characteristic.value,
  ...limits.filter(({ mode }) => mode === 'torque-out').map(({ capacity }) => capacity.characteristic.value),
];
function expectToHoldAsMuch(joint: AnswerableJoint, after: { joint: AnswerableJoint; insert: Insert }): void {
  const before = holding(assess(joint, INSERT));
  const now = holding(assess(after.joint, after.insert));
  expect(now).toHaveLength(before.length);
  for (const [index, value] of now.entries()) expectNotBelow(value, before[index] ?? 0);
}
const law = (check: (joint: AnswerableJoint, by: number) => void) =>
  fc.assert(
    fc.property(usualJoints, fc.double({ min: 0.01, max: 1, noNaN: true }), (changes, by) =>
      check(answerableJoint(changes), by),
    ),
    RUNS,
  );
/** Smallest margin of a life at one torque that stays the same. */
const margin = (joint: AnswerableJoint) => holdOf(joint, INSERT, given('T', 370, 'N·mm')).worst.margin;
const withLoads = (joint: AnswerableJoint, loads: Partial<AnswerableJoint['loads']>): AnswerableJoint => ({
  ...joint,
  loads: { ...joint.loads, ...loads },
});

describe('what an insert holds, and what turns it, does not fall', () => {
  test('with the knurled length', () => {
    law((joint, by) => {
      const longer = { ...INSERT, knurledLength: shifted(INSERT.knurledLength ?? INSERT.length, by) };
      expectToHoldAsMuch(joint, { joint, insert: longer });
    });
  });
  test('with the knurl diameter at equal bite: whole steps of the drawn hole', () => {
    law((drawn, by) => {
      const joint: AnswerableJoint = { ...drawn, holes: { ...drawn.holes, compensation: 'in-slicer' } };
      const step = Math.ceil(10 * by) * joint.holes.step;
      const wider = {
        ...INSERT,
        knurlDiameter: shifted(INSERT.knurlDiameter, step),
        pilotDiameter: shifted(INSERT.pilotDiameter, step),
      };
      expectToHoldAsMuch(joint, { joint, insert: wider });
    });
  });
  test('with wall lines', () => {
    law((joint, by) => {
      expectToHoldAsMuch(joint, moved({ joint, insert: INSERT }, 'wall-lines', Math.ceil(5 * by)));
    });
  });
  test('with infill', () => {
    law((joint, by) => {
      const { host } = joint;
      const density = host.infill.density + by * (1 - host.infill.density);
      expectToHoldAsMuch(joint, {
        joint: { ...joint, host: { ...host, infill: { ...host.infill, density } } },
        insert: INSERT,
      });
    });
  });
});

describe('the torque window', () => {
  test('does not rise at its upper end as friction may be lower, nor fall at its lower end as it may be higher', () => {
    law((joint, by) => {
      const { friction } = joint.screw;
      const wider = ({ low, high }: { readonly low: number; readonly high: number }) => ({
        low: low * (1 - 0.6 * by),
        high: high * (1 + by),
      });
      const widened = assess(
        {
          ...joint,
          screw: {
            ...joint.screw,
            friction: {
              ...friction,
              thread: wider(friction.thread),
              headOnMetal: wider(friction.headOnMetal),
              headOnPlastic: wider(friction.headOnPlastic),
            },
          },
        },
        INSERT,
      ).torque;
      const before = assess(joint, INSERT).torque;
      expectNotBelow(before.most.value, widened.most.value);
      expectNotBelow(widened.least.value, before.least.value);
    });
  });
  test('is refused wherever its ends are the wrong way round, and only for a reason', () => {
    law((joint) => {
      const { torque } = assess(joint, INSERT);
      const inverted = torque.least.value > torque.most.value;
      expect(torque.kind === 'refused' && torque.code === 'no-window').toBe(inverted);
    });
  });
});

describe('the smallest margin at a torque does not rise', () => {
  test('with the pull', () => {
    law((joint, by) => {
      expectNotBelow(margin(joint), margin(withLoads(joint, { pull: joint.loads.pull * (1 + by) })));
    });
  });
  test('with the shear', () => {
    law((joint, by) => {
      expectNotBelow(margin(joint), margin(withLoads(joint, { shear: joint.loads.shear * (1 + by) })));
    });
  });
  // With time, warmth also takes preload away, and what is clamped less is pulled on less: no law there.
  test('with the temperature, before anything has relaxed', () => {
    law((joint, by) => {
      const fresh = withLoads(joint, { duration: 0 });
      const serviceTemperature = joint.loads.serviceTemperature + 8 * by;
      expectNotBelow(margin(fresh), margin(withLoads(fresh, { serviceTemperature })));
    });
  });
  test('with the factors', () => {
    law((joint, by) => {
      const { limits, closed } = joint.factors;
      const stricter = { ...joint, factors: { limits: limits + by, closed: closed + by } };
      expectNotBelow(margin(joint), margin(stricter));
    });
  });
});

describe('re-tightening', () => {
  test('never makes a joint open or slip earlier, though it loads the plastic anew', () => {
    const closing = (joint: AnswerableJoint) =>
      holdOf(joint, INSERT, given('T', 370, 'N·mm')).states.flatMap(({ closed }) =>
        closed.map((one) => one.margin),
      );
    law((joint) => {
      const before = closing(withLoads(joint, { retightenings: 0 }));
      const after = closing(withLoads(joint, { retightenings: 4 }));
      for (const [index, value] of after.entries()) expectNotBelow(value, before[index] ?? 0);
    });
  });
});
