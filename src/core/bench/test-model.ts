import { biteFactor, boreAsPrinted } from '../holes/bore.ts';
import type { PrintedMaterial } from '../host/material.ts';
import { hostStrengths } from '../host/strengths.ts';
import { REFERENCE_TEMPERATURE } from '../host/temperature.ts';
import type { Insert } from '../inserts/insert.ts';
import { insertDimensions } from '../inserts/insert-dimensions.ts';
import { torqueToForce } from '../joint/demand.ts';
import { surroundingsOf } from '../joint/situation-of.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { type Bond, deviationOfRange, UNTESTED } from '../pull-out/bond.ts';
import { knurlShearForce } from '../pull-out/knurl-shear.ts';
import { torqueOut } from '../pull-out/torque-out.ts';
import { frictionDiameter } from '../screws/head-bearing.ts';
import type { FrictionRange } from '../screws/screw.ts';
import { type Derived, entry, entryFrom, withWays } from '../sources/derived.ts';
import { threadShareOfTorque } from '../torque/tightening-torque.ts';
import type { BenchTest } from './bench-test.ts';

/** A knurl that holds all of the ideal shear cylinder. */
const FULL_BOND: Bond = {
  factor: {
    symbol: 'η',
    value: 1,
    unit: '-',
    formula: '1',
    entries: [],
    source: 'own-model',
    standing: 'estimate',
  },
  scatter: UNTESTED,
  coupons: 0,
};

/** Load at which a coupon would give way with bond factor 1, and what blurs it. */
export interface TestModel {
  readonly load: Derived;
  /** Deviation of its logarithm that the test brings in itself, [-]. */
  readonly ownDeviation: number;
}

/**
 * Load at which the model lets a coupon's bond give way, with bond factor 1 at 23 °C.
 *
 *     pulled:      F1 = τ · π · Dk · Lk · kb
 *     turned:      T1 = F1 · Dk/2
 *     jacked out:  T1 = F1 · √(k_low · k_high)        k torque per clamp force at the ends of friction
 *     turned by it: T1 = F1 · Dk/2/a                  a share of the torque that the thread passes on, at the middle
 *
 * A jack-out goes through the friction of the screw, which is not measured: its range, taken to hold 9 of 10, blurs the
 * ratio by ln(k_high/k_low)/(2 · 1.645), or by that of a. The screw, its condition and its bearing face are taken to be the joint's.
 *
 * @param test - kind, result, axis, bore [mm]
 * @param coupon - the insert of the test, and the material it was set in
 * @param joint - its fit, screw and clamped part
 * @returns F1 [N] or T1 [N·mm], and the blur [-]
 * @source own-model shear cylinder
 * @source vdi-2230 torque per clamp force
 */
export function testModel(
  test: BenchTest,
  { insert, material }: { readonly insert: Insert; readonly material: PrintedMaterial },
  joint: AnswerableJoint,
): TestModel {
  const dimensions = insertDimensions(insert);
  const intended = boreAsPrinted(dimensions, joint.holes.fit);
  const hold = {
    bond: FULL_BOND,
    insert: dimensions,
    biteFactor: biteFactor(
      dimensions,
      intended,
      test.bore === undefined ? entryFrom(intended) : entry('D', test.bore, 'mm'),
    ),
    strengths: hostStrengths(material, test.axis, REFERENCE_TEMPERATURE),
  };
  if (test.kind === 'torque-out') return { load: torqueOut(hold), ownDeviation: 0 };
  const force = knurlShearForce(hold);
  if (test.kind !== 'jack-out-torque') return { load: force, ownDeviation: 0 };
  return test.result === 'insert-turned' ? turnedByScrew(torqueOut(hold), joint) : jackOut(force, joint);
}

/** Middle of a range of friction: half of all lie below. */
const middleOf = ({ low, high }: FrictionRange): number => Math.sqrt(low * high);

/** The same, put into a formula under its symbol, with its way. */
const middleFriction = (symbol: 'μ_G' | 'μ_K', range: FrictionRange): Derived => ({
  symbol,
  value: middleOf(range),
  unit: '-',
  formula: `√(${symbol}l · ${symbol}h)`,
  entries: [entry(`${symbol}l`, range.low, '-'), entry(`${symbol}h`, range.high, '-')],
  source: 'own-model',
  standing: 'estimate',
});

function turnedByScrew(torque: Derived, joint: AnswerableJoint): TestModel {
  const surroundings = surroundingsOf(joint);
  const { threadFriction, headFriction, bearingDiameter } = torqueToForce(joint, surroundings);
  const { thread } = joint.screw;
  const shareAt = (inThread: number, underHead: number): Derived =>
    threadShareOfTorque({ thread, threadFriction: inThread, headFriction: underHead, bearingDiameter });
  const share = withWays(shareAt(middleOf(threadFriction), middleOf(headFriction)), {
    D_Km: frictionDiameter(surroundings.bearingFace),
    μ_G: middleFriction('μ_G', threadFriction),
    μ_K: middleFriction('μ_K', headFriction),
  });
  const most = shareAt(threadFriction.high, headFriction.low).value;
  const least = shareAt(threadFriction.low, headFriction.high).value;
  return {
    load: {
      symbol: 'T_jack',
      value: torque.value / share.value,
      unit: 'N·mm',
      formula: 'T_out/a',
      entries: [entryFrom(torque), entryFrom(share)],
      source: 'vdi-2230',
      standing: 'estimate',
    },
    ownDeviation: deviationOfRange({ low: least, high: most }),
  };
}

function jackOut(force: Derived, joint: AnswerableJoint): TestModel {
  const { slippery, sticky, ways } = torqueToForce(joint, surroundingsOf(joint));
  return {
    load: {
      symbol: 'T_jack',
      value: force.value * Math.sqrt(slippery * sticky),
      unit: 'N·mm',
      formula: 'F_ks · √(k_low · k_high)',
      entries: [entryFrom(force), entryFrom(ways.slippery), entryFrom(ways.sticky)],
      source: 'vdi-2230',
      standing: 'estimate',
    },
    ownDeviation: deviationOfRange({ low: slippery, high: sticky }),
  };
}

/**
 * Share of the ideal shear cylinder that a coupon showed.
 *
 *     η = R/R1
 *
 * @param load - of loadAtInsert: R [N or N·mm], > 0
 * @param model - load with bond factor 1, R1
 * @returns η [-]
 * @source your-tests reading of the instrument
 */
export const measuredBond = (load: Derived, model: Derived): Derived => ({
  symbol: 'η_i',
  value: load.value / model.value,
  unit: '-',
  formula: 'R_w/R_1',
  entries: [entryFrom(load), { symbol: 'R_1', value: model.value, unit: model.unit, from: model }],
  source: 'your-tests',
  standing: 'measured',
});
