import { describe, expect, test } from 'vitest';
import { type CreepingLoop, creepingLoop, creepOf } from '../../../src/core/joint/clamp-loop.ts';
import { jointAt } from '../../../src/core/joint/joint-at.ts';
import {
  bestPreloadLeft,
  lifeOf,
  preloadLeft,
  preloadLeftAt,
  preloadLeftOf,
  preloadOnCreptHost,
  preloadOnCreptHostOf,
} from '../../../src/core/joint/preload-left.ts';
import type { AnswerableJoint } from '../../../src/core/joint/stop.ts';
import { tighten } from '../../../src/core/joint/tightening.ts';
import { creepFactorOf } from '../../../src/core/relaxation/findley.ts';
import { polymerCreep } from '../../../src/core/relaxation/polymer-creep.ts';
import { ASA, PETG } from '../../../src/data/host-materials.ts';
import fc from '../../support/fast-check.ts';
import {
  answerableJoint,
  assessed,
  type Changes,
  given,
  situationWith,
  theInsert,
} from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

/** The loop over a gap, with the creep of a joint and a stretched length of the screw, mm. */
const loopOf = (joint: AnswerableJoint, grip: number) =>
  creepingLoop(joint, situationWith({ gap_mm: 0.3 }), given('g', grip, 'mm'), creepOf(joint));

const lived = (loop: CreepingLoop, { loads }: Pick<AnswerableJoint, 'loads'>) =>
  [loop, lifeOf(loop.creep, loads)] as const;

const left = (changes: Changes) => assessed(changes).preloadLeft.value;

describe('preloadLeft', () => {
  test('loses nothing under a metal part on the insert: no plastic in the loop', () => {
    expect(left({})).toBe(1);
    expect(left({ loads: { duration_h: 438_000 } })).toBe(1);
  });
  test('loses something wherever plastic is in the loop', () => {
    expect(left({ gap_mm: 0.3 })).toBeLessThan(1);
    expect(left({ clamped: { material: 'petg' } })).toBeLessThan(1);
    // Less is lost than if the screw did not spring at all: the most that PETG may have crept in the year at 31 °C.
    const alone = 1 / creepFactorOf(polymerCreep(PETG, 31).low, 8760);
    expect(left({ clamped: { material: 'petg' }, gap_mm: 0.3 })).toBeGreaterThan(alone);
  });
  test('falls with time, never below what the plastic alone would keep', () => {
    const at = (duration_h: number) =>
      left({ gap_mm: 0.3, loads: { duration_h, serviceTemperature_degC: 23 } });
    expect(at(0)).toBe(1);
    expect(at(100)).toBeLessThan(at(10));
    // 0.65 with its loss doubled.
    expect(at(1000)).toBeGreaterThan(0.65 / 1.35);
  });
  test('is more the longer the screw is stretched, with all else alike', () => {
    const joint = answerableJoint({ gap_mm: 0.3, loads: { duration_h: 1000, serviceTemperature_degC: 23 } });
    const at = (grip: number) => preloadLeft(...lived(loopOf(joint, grip), joint)).value;
    expect(at(9.1)).toBeGreaterThan(at(3.1));
    expect(at(3.1)).toBeGreaterThan(0.65 / 1.35);
    // A screw a thousand times as springy as the plastic loses next to nothing.
    expect(at(1e6)).toBeGreaterThan(0.99);
  });
});

describe('preloadLeft through a life with re-tightenings', () => {
  const cool = { serviceTemperature_degC: 23 };
  const jointFor = (duration_h: number, retightenings: number) =>
    answerableJoint({ gap_mm: 0.3, loads: { ...cool, duration_h, retightenings } });
  const joint = jointFor(0, 0);
  const at = (given: AnswerableJoint, hours: number) =>
    preloadLeftAt(loopOf(given, 3.1), given.loads, hours).value;
  const never = (hours: number) => at(joint, hours);
  const worst = (duration: number, retightenings: number) => {
    const worn = jointFor(duration, retightenings);
    const [loop, life] = lived(loopOf(worn, 3.1), worn);
    expect(preloadLeftOf(loop, life)).toBe(preloadLeft(loop, life).value);
    return preloadLeft(loop, life).value;
  };
  test('is at each time what is left since the last re-tightening: a quotient of two losses', () => {
    const twice = jointFor(9000, 2);
    expectRelative(at(twice, 0.4), never(0.4));
    expectRelative(at(twice, 24), 1);
    expectRelative(at(twice, 9000), never(9000) / never(24));
  });
  test('is the smallest of all times: right after a re-tightening that of the hours before', () => {
    expectRelative(worst(24, 2), Math.min(never(1), never(24) / never(1)));
    expect(at(jointFor(24, 2), 24)).toBe(1);
    expectRelative(worst(9000, 2), Math.min(never(1), never(24) / never(1), never(9000) / never(24)));
    expectRelative(worst(9000, 0), never(9000));
  });
  test('never grows with time, never falls with re-tightenings', () => {
    const hours = fc.double({ min: 0, max: 438_000, noNaN: true });
    fc.assert(
      fc.property(hours, hours, fc.integer({ min: 0, max: 3 }), (one, other, count) => {
        const [early, late] = [Math.min(one, other), Math.max(one, other)];
        expect(worst(late, count)).toBeLessThanOrEqual(worst(early, count) * (1 + 1e-12));
        expect(worst(late, count + 1)).toBeGreaterThanOrEqual(worst(late, count) * (1 - 1e-12));
      }),
      { numRuns: 60 },
    );
  });
  test('falls in the warmth', () => {
    const at = (serviceTemperature_degC: number) =>
      left({ gap_mm: 0.3, loads: { duration_h: 700, serviceTemperature_degC } });
    expect(at(41)).toBeLessThan(at(29));
    expect(at(17)).toBe(at(23));
  });
  test('of a printed part with a spacer on the insert loses nothing', () => {
    const sleeve = { material: 'steel', outsideDiameter_mm: 5.3 };
    expect(left({ clamped: { material: 'petg', sleeve } })).toBe(1);
  });
});

describe('preloadOnCreptHost', () => {
  const joint = answerableJoint({
    gap_mm: 0.4,
    host: { material: 'abs' },
    clamped: { material: 'petg' },
    loads: { retightenings: 1 },
  });
  const { loads } = joint;
  const leftIn = (given: AnswerableJoint) =>
    preloadLeftAt(tighten(given, theInsert()).loop, loads, loads.duration).value;

  test('takes the most creep of the host and the least of the clamped part', () => {
    const { host, clamped } = { host: jointAt(joint, 'low').host, clamped: jointAt(joint, 'high').clamped };
    const { loop } = tighten(joint, theInsert());
    expectRelative(preloadOnCreptHost(...lived(loop, joint)).value, leftIn({ ...joint, host, clamped }));
    expect(preloadOnCreptHostOf(...lived(loop, joint))).toBe(preloadOnCreptHost(...lived(loop, joint)).value);
  });
  test('is what is left where both are known', () => {
    const known = jointAt(joint, 'middle');
    const { loop } = tighten(known, theInsert());
    expectRelative(preloadOnCreptHost(...lived(loop, joint)).value, leftIn(known));
  });
});

describe('preloadLeft with a little known modulus', () => {
  const joint = answerableJoint({ gap_mm: 0.4, host: { material: 'asa' }, loads: { duration_h: 700 } });
  /** The loop of ASA as it stands, or of one whose modulus is known, MPa. */
  const loopWith = (modulus?: number) => {
    const known = modulus && { modulusInPlane: { value: modulus, provenance: 'from-memory' as const } };
    return tighten({ ...joint, host: { ...joint.host, material: { ...ASA, ...known } } }, theInsert()).loop;
  };
  const leftWith = (modulus?: number) => preloadLeft(...lived(loopWith(modulus), joint));
  const wearing = (modulus?: number) => preloadOnCreptHost(...lived(loopWith(modulus), joint)).value;
  test('takes the softest that it may be, 1600 MPa of ASA, and shows the stiffest, 2300 MPa', () => {
    expect(ASA.modulusInPlane).toMatchObject({ low: 1600, high: 2300, lowConfidence: true });
    const doubted = leftWith();
    expectRelative(doubted.value, leftWith(1600).value);
    expectRelative(doubted.range?.high ?? 0, leftWith(2300).range?.high ?? 1);
    expectRelative(doubted.range?.middle ?? 0, leftWith(1900).range?.middle ?? 1);
    expect(leftWith(1600).value).toBeLessThan(leftWith(1900).value);
  });
  test('has a way to the stiffest end too, also between re-tightenings', () => {
    for (const retightenings of [0, 2]) {
      const through = lived(loopWith(), { loads: { ...joint.loads, retightenings } });
      expectRelative(bestPreloadLeft(...through).value, preloadLeft(...through).range?.high ?? 0);
      expect(bestPreloadLeft(...through).range).toBeUndefined();
    }
    expectRelative(bestPreloadLeft(...lived(loopWith(1900), joint)).value, leftWith(1900).range?.high ?? 0);
  });
  test('what wears the host down takes the stiffest, at which the force lasts longest', () => {
    expectRelative(wearing(), wearing(2300));
    expect(wearing(2300)).toBeGreaterThan(wearing(1600));
  });
});
