import { describe, expect, test } from 'vitest';
import { chanceModel } from '../../../src/core/chance/chance-model.ts';
import { chanceOverTorque } from '../../../src/core/chance/chance-over-torque.ts';
import { seededGenerator } from '../../../src/core/chance/generator.ts';
import { answerableJoint, theInsert } from '../../support/joints.ts';
import { sampled } from './only.ts';

const SAMPLES = 20_000;
const joint = answerableJoint({ gap_mm: 0.4 });
const model = chanceModel(joint, theInsert(), 333);
const over = (torques: readonly number[]) =>
  chanceOverTorque(model, torques, { generator: seededGenerator(4711), count: SAMPLES });

describe('chanceOverTorque', () => {
  test('counts at each torque what a sampling at that torque counts from the same seed', () => {
    const torques = [70, 150, 290, 333, 520, 1100];
    const curve = over(torques);
    const single = torques.map((torque) => {
      const { harm, outcomes, anything } = sampled({ ...model, torque }, SAMPLES);
      return { torque, harm, loose: outcomes.loose, anything };
    });
    expect(curve).toEqual(single);
  });
  test('rises in harm and falls in looseness without a step back', () => {
    const curve = over(Array.from({ length: 80 }, (_, index) => 13 * (index + 1)));
    curve.slice(1).forEach((point, index) => {
      const before = curve[index];
      expect(point.harm.count).toBeGreaterThanOrEqual(before?.harm.count ?? Number.NaN);
      expect(point.loose.count).toBeLessThanOrEqual(before?.loose.count ?? Number.NaN);
    });
    expect(curve[0]?.loose.probability).toBe(1);
    expect(curve.at(-1)?.harm.probability).toBeGreaterThan(0.5);
  });
  test('puts torques in order', () => {
    expect(over([520, 70, 333]).map(({ torque }) => torque)).toEqual([70, 333, 520]);
  });
  test('takes a single torque', () => {
    expect(over([290])).toHaveLength(1);
  });
});
