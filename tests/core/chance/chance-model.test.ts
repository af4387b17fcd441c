import { describe, expect, test } from 'vitest';
import { type ChanceModel, chanceModel } from '../../../src/core/chance/chance-model.ts';
import type { SampledMode } from '../../../src/core/chance/sampled-modes.ts';
import { jointAt } from '../../../src/core/joint/joint-at.ts';
import { preloadLeftAt, preloadOnCreptHost } from '../../../src/core/joint/preload-left.ts';
import type { AnswerableJoint } from '../../../src/core/joint/stop.ts';
import { isWorn } from '../../../src/core/joint/sustained.ts';
import { tighten } from '../../../src/core/joint/tightening.ts';
import { normalProbability } from '../../../src/core/numerics/normal-distribution.ts';
import type { FailureMode } from '../../../src/core/pull-out/limit.ts';
import { torqueOut } from '../../../src/core/pull-out/torque-out.ts';
import { wallPlugForce } from '../../../src/core/pull-out/wall-plug.ts';
import { creepFactorOf } from '../../../src/core/relaxation/findley.ts';
import { polymerCreep } from '../../../src/core/relaxation/polymer-creep.ts';
import type { FrictionRange } from '../../../src/core/screws/screw.ts';
import { headTorquePerForce, threadTorquePerForce } from '../../../src/core/torque/tightening-torque.ts';
import { torsionFactor } from '../../../src/core/torque/yield-preload.ts';
import { answerableJoint, situationWith, theInsert } from '../../support/joints.ts';
import { expectShare } from './expect-chance.ts';
import { failuresOf, only, sampled, withoutScatter } from './only.ts';

const SAMPLES = 100_000;

const insert = theInsert();
const onInsert = answerableJoint();
const overGap = answerableJoint({ gap_mm: 0.4, tool: { kind: 'hand' } });

const middleOf = ({ low, high }: FrictionRange) => Math.sqrt(low * high);

/** What the analytic side says of a joint, at the middle of friction unless told otherwise. */
function analytic(joint: AnswerableJoint) {
  const { actives: careful, conversion, left, loop } = tighten(joint, insert);
  // Half of all joints hold what is expected; 19 of 20 hold the careful end.
  const expected = tighten(jointAt(joint, 'middle'), insert).actives;
  const actives = careful.map((active, index) => ({
    ...active,
    capacity: { ...active.capacity, ...(expected[index] && { median: expected[index].capacity.median }) },
  }));
  const { threadFriction, headFriction, bearingDiameter } = conversion;
  const inThread = (friction = middleOf(threadFriction)) =>
    threadTorquePerForce(joint.screw.thread, friction);
  const underHead = (friction = middleOf(headFriction)) => headTorquePerForce(bearingDiameter, friction);
  const capacityOf = (mode: FailureMode) => {
    const found = actives.find((active) => active.mode === mode);
    if (found === undefined) throw new Error(`the joint has no ${mode}`);
    return { median: found.capacity.median.value, characteristic: found.capacity.characteristic.value };
  };
  const { loads, host } = joint;
  // Both plastics in the loop are known alike: what is expected is the middle of both.
  const crept = creepFactorOf(polymerCreep(host.material, loads.serviceTemperature).middle, loads.duration);
  const atEnd = preloadLeftAt(loop, loads, loads.duration);
  /** Clamp force at which a mode that bears so much fails: plastic bears less after the time, and is loaded less. */
  const failsAt = (mode: FailureMode, borne: number) =>
    isWorn(mode, 'clamp')
      ? (borne / crept - loads.pull) / (atEnd.range?.middle ?? atEnd.value)
      : borne - loads.pull;
  return {
    actives,
    conversion,
    failsAt,
    left: left.from.range?.middle ?? left.value,
    inThread,
    underHead,
    perForce: inThread() + underHead(),
    capacityOf,
    pull: joint.loads.pull,
  };
}

const modelAt = (joint: AnswerableJoint, torque: number): ChanceModel => chanceModel(joint, insert, torque);
const keepDeviation =
  (mode: FailureMode) =>
  (one: SampledMode): SampledMode => ({
    ...one,
    deviation: one.mode === mode ? one.deviation : 0,
    perKnurlDiameter: 0,
    perWall: 0,
  });

describe('without any scatter', () => {
  test.each([
    ['on the insert', onInsert],
    ['over a gap', overGap],
    ['from the far side', answerableJoint({ insertSide: 'far-side' })],
    ['cold-pressed, on the plastic', answerableJoint({ setting: 'cold-pressed', sunk_mm: 0.3 })],
  ])(
    'a joint %s is harmed for certain just above the weakest median and never just below',
    (_seat, joint) => {
      const { actives, conversion, failsAt, inThread, perForce } = analytic(joint);
      const { thread } = joint.screw;
      const middle = middleOf(conversion.threadFriction);
      const forces = actives
        .filter(({ path }) => path !== 'pull')
        .map(({ mode, path, capacity }) => {
          const median = capacity.median.value;
          if (path === 'torque') return median / inThread();
          const twisted =
            mode === 'screw-yield'
              ? torsionFactor(thread, conversion.threadFriction.low) / torsionFactor(thread, middle)
              : 1;
          return failsAt(mode, median * twisted);
        });
      const torque = Math.min(...forces) * perForce;
      expect(sampled(withoutScatter(modelAt(joint, torque * 0.999)), 50).harm.probability).toBe(0);
      expect(sampled(withoutScatter(modelAt(joint, torque * 1.001)), 50).harm.probability).toBe(1);
    },
  );
  test('a joint is loose for certain just below the force that it must keep, and never just above', () => {
    const { perForce, left, pull } = analytic(onInsert);
    const slip = middleOf(onInsert.screw.friction.headOnMetal);
    const torque = ((pull + onInsert.loads.shear / slip) / left) * perForce;
    expect(sampled(withoutScatter(modelAt(onInsert, torque * 0.999)), 50).outcomes.loose.probability).toBe(1);
    expect(sampled(withoutScatter(modelAt(onInsert, torque * 1.001)), 50).outcomes.loose.probability).toBe(0);
  });
});

describe('with one scatter alone', () => {
  /** Share of joints whose clamp force is above a limit: the screw's yield is set there. */
  const shareAbove = (model: ChanceModel, force: number) => {
    const [mode] = model.modes.filter((one) => one.mode === 'screw-thread');
    if (mode === undefined) throw new Error('the joint has no screw thread');
    const marked = { ...model, modes: [{ ...mode, median: force + model.pull, deviation: 0 }] };
    return sampled(marked, SAMPLES).harm.count;
  };

  test('the tool exceeds its deviation +δ in 1 of 40 joints', () => {
    const { perForce } = analytic(overGap);
    const model = only(modelAt(overGap, 731), ['toolDeviation']);
    expectShare(shareAbove(model, (731 * 1.35) / perForce), SAMPLES, 0.025);
  });
  test('friction of the thread is below its low end in 1 of 20 joints', () => {
    const { inThread, underHead, conversion } = analytic(onInsert);
    const model = only(modelAt(onInsert, 731), ['threadFriction']);
    const force = 731 / (inThread(conversion.threadFriction.low) + underHead());
    expectShare(shareAbove(model, force), SAMPLES, 0.05);
  });
  test('friction under the head is above its high end in 1 of 20 joints', () => {
    const { inThread, underHead, conversion } = analytic(onInsert);
    const model = only(modelAt(onInsert, 731), ['headFriction']);
    const force = 731 / (inThread() + underHead(conversion.headFriction.high));
    expectShare(shareAbove(model, force), SAMPLES, 0.95);
  });
  test('the insert turns in 1 of 20 joints at its characteristic torque', () => {
    const { inThread, perForce, capacityOf } = analytic(onInsert);
    const torque = (capacityOf('torque-out').characteristic * perForce) / inThread();
    const model = only(modelAt(onInsert, torque), [], keepDeviation('torque-out'));
    expectShare(sampled(model, SAMPLES).outcomes.turns.count, SAMPLES, 0.05);
  });
  test.each(['knurl-shear', 'wall-plug', 'boss-split', 'head-bearing'] as const)(
    '%s fails in 1 of 20 joints at its characteristic force, after the time, pull on top',
    (mode) => {
      const joint = answerableJoint({ gap_mm: 0.4, clamped: { material: 'petg' } });
      const { perForce, capacityOf, failsAt } = analytic(joint);
      const model = modelAt(joint, failsAt(mode, capacityOf(mode).characteristic) * perForce);
      expectShare(failuresOf(sampled(only(model, [], keepDeviation(mode)), SAMPLES), mode), SAMPLES, 0.05);
    },
  );
  test('the bore leaves too little bite as often as the normal distribution says', () => {
    const { inThread, perForce, capacityOf } = analytic(onInsert);
    const full = modelAt(onInsert, 1);
    const share = 0.55;
    const biteAtMedian = tighten(onInsert, insert).found.hole.biteFactor.value;
    const torque = ((capacityOf('torque-out').median / biteAtMedian) * share * perForce) / inThread();
    const bore = full.knurlDiameter - share * (full.knurlDiameter - full.intendedBore);
    const expected = normalProbability((full.expectedBore - bore) / full.boreDeviation);
    const result = sampled(only({ ...full, torque }, ['boreDeviation']), SAMPLES);
    expectShare(result.outcomes.turns.count, SAMPLES, expected);
  });
  test('the screw yields in 1 of 20 joints where the low end of thread friction just lets it', () => {
    const joint = answerableJoint({ screw: { propertyClass: '4.8' } });
    const { inThread, underHead, conversion, capacityOf, pull } = analytic(joint);
    const perForce = inThread(conversion.threadFriction.low) + underHead();
    const model = only(modelAt(joint, (capacityOf('screw-yield').median - pull) * perForce), [
      'threadFriction',
    ]);
    expectShare(failuresOf(sampled(model, SAMPLES), 'screw-yield'), SAMPLES, 0.05);
  });
  test('the joint slips in 1 of 20 joints where the low end of friction just holds it', () => {
    const joint = answerableJoint({ loads: { pull_N: 37, shear_N: 61 } });
    const { perForce, left } = analytic(joint);
    const torque = ((37 + 61 / joint.screw.friction.headOnMetal.low) / left) * perForce;
    const model = only(modelAt(joint, torque), ['slipFriction']);
    expectShare(sampled(model, SAMPLES).outcomes.loose.count, SAMPLES, 0.05);
  });
  test('the joint is loose in 1 of 20 joints where the careful end of creep just leaves enough', () => {
    const joint = answerableJoint({ gap_mm: 0.4, loads: { pull_N: 37, shear_N: 0 } });
    const { perForce } = analytic(joint);
    const { range } = tighten(joint, insert).left.from;
    const at = (share = Number.NaN) => only(modelAt(joint, (37 / share) * perForce), ['lost']);
    expectShare(sampled(at(range?.low), SAMPLES).outcomes.loose.count, SAMPLES, 0.05);
    expectShare(sampled(at(range?.middle), SAMPLES).outcomes.loose.count, SAMPLES, 0.5);
    expectShare(sampled(at(range?.high), SAMPLES).outcomes.loose.count, SAMPLES, 0.95);
  });
  test('the knurl shears in 1 of 20 joints where the most creep of its median just lets it', () => {
    const { perForce, capacityOf } = analytic(overGap);
    const { loads, host } = overGap;
    const { low } = polymerCreep(host.material, loads.serviceTemperature);
    const { loop, life } = tighten(overGap, insert);
    const left = preloadOnCreptHost(loop, life).value;
    const torque =
      ((capacityOf('knurl-shear').median / creepFactorOf(low, loads.duration) - loads.pull) / left) *
      perForce;
    const model = only(modelAt(overGap, torque), ['crept', 'lostAtEnd']);
    expectShare(failuresOf(sampled(model, SAMPLES), 'knurl-shear'), SAMPLES, 0.05);
  });
  test('a knurl one standard uncertainty too thin turns as the formula with that knurl says', () => {
    const { inThread, perForce } = analytic(onInsert);
    const full = { ...modelAt(onInsert, 1), expectedBore: 4.5 };
    const situation = situationWith();
    const thin = full.knurlDiameter - full.knurlDeviation;
    const withKnurl = {
      ...situation,
      insert: {
        ...situation.insert,
        knurlDiameter: {
          ...situation.insert.knurlDiameter,
          estimate: { ...situation.insert.knurlDiameter.estimate, value: thin },
        },
        knurledLength: {
          ...situation.insert.knurledLength,
          estimate: {
            ...situation.insert.knurledLength.estimate,
            value: situation.insert.knurledLength.estimate.value + 0.28 * full.knurlDeviation,
          },
        },
      },
      biteFactor: {
        ...situation.biteFactor,
        value: (thin - 4.5) / (full.knurlDiameter - full.intendedBore),
      },
    };
    const torque = (torqueOut(withKnurl).value * perForce) / inThread();
    const keepKnurl = (mode: SampledMode): SampledMode => ({ ...mode, deviation: 0, perWall: 0 });
    const model = only({ ...full, torque }, ['knurlDeviation'], keepKnurl);
    expectShare(sampled(model, SAMPLES).outcomes.turns.count, SAMPLES, normalProbability(-1));
  });
  test('a wall one repeatability too thin lets the plug out as the formula with that wall says', () => {
    const { perForce, failsAt } = analytic(overGap);
    const situation = situationWith({ gap_mm: 0.4 });
    const thin = { ...situation.wall, value: situation.wall.value - overGap.holes.behaviour.repeatability };
    const torque = failsAt('wall-plug', wallPlugForce({ ...situation, wall: thin }).value) * perForce;
    const keepWall = (mode: SampledMode): SampledMode => ({ ...mode, deviation: 0, perKnurlDiameter: 0 });
    const result = sampled(only(modelAt(overGap, torque), [], keepWall), SAMPLES);
    expectShare(failuresOf(result, 'wall-plug'), SAMPLES, normalProbability(-1));
  });
});

describe('beside the torque window', () => {
  /**
   * The window takes the characteristic capacity, the low end of friction and the high end of the tool together. Each
   * end alone is passed by 1 of 20 or fewer, so all of them together by fewer than 1 of 20.
   */
  test.each([
    ['on the insert', {}],
    ['over a gap', { gap_mm: 0.4 }],
    ['over a gap, by hand', { gap_mm: 0.4, tool: { kind: 'hand' } }],
    ['of printed parts', { clamped: { material: 'petg' } }],
    ['with a soft screw', { screw: { propertyClass: '4.8' } }],
    ['from the far side', { insertSide: 'far-side' }],
    ['on the plastic, without pull', { sunk_mm: 0.3, loads: { pull_N: 0 } }],
  ] as const)(
    'the limiting mode of a joint %s fails in fewer than 1 of 20 at the most torque',
    (_joint, changes) => {
      const joint = answerableJoint({ ...changes, factors: { limits: 1 } });
      const { most } = tighten(joint, insert);
      const result = sampled(modelAt(joint, most.torque.value), SAMPLES);
      expect(failuresOf(result, most.mode) / SAMPLES).toBeLessThan(0.05);
    },
  );
  test('at the least torque fewer than 1 of 20 are loose, with a closing factor of 1', () => {
    const joint = answerableJoint({ factors: { closed: 1 } });
    const { least } = tighten(joint, insert);
    const { loose } = sampled(modelAt(joint, least.value), SAMPLES).outcomes;
    expect(loose.probability).toBeLessThan(0.05);
    expect(sampled(modelAt(joint, least.value / 3), SAMPLES).outcomes.loose.probability).toBeGreaterThan(0.5);
  });
});
