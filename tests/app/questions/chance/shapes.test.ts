import { describe, expect, test } from 'vitest';
import { curveShapes, curveTorques, settingOf } from '../../../../src/app/questions/chance/curve-shapes.ts';
import { forceLines, forceShapes } from '../../../../src/app/questions/chance/force-shapes.ts';
import { nameOver } from '../../../../src/app/questions/chance/plot.ts';
import { chanceModel } from '../../../../src/core/chance/chance-model.ts';
import { chanceOverTorque } from '../../../../src/core/chance/chance-over-torque.ts';
import { seededGenerator } from '../../../../src/core/chance/generator.ts';
import { sampled } from '../../../core/chance/only.ts';
import { answerableJoint, assessed, theInsert } from '../../../support/joints.ts';
import { expectRelative } from '../../../support/published.ts';

const joint = answerableJoint();
const { torque } = assessed();
const model = chanceModel(joint, theInsert(), settingOf(torque));
const result = sampled(model, 3000);
const curve = chanceOverTorque(model, curveTorques(torque), { generator: seededGenerator(3), count: 3000 });
const WORDS = { clampForce: 'one name', plastic: 'another name' };

describe('curveTorques', () => {
  test('rise from above 0 to one and a half times the most', () => {
    const torques = curveTorques(torque);
    expect(torques[0]).toBeGreaterThan(0);
    expectRelative(torques.at(-1) ?? Number.NaN, 1.5 * torque.most.value);
    torques.slice(1).forEach((one, index) => {
      expect(one).toBeGreaterThan(torques[index] ?? Number.NaN);
    });
  });
});

describe('curveShapes', () => {
  const shapes = curveShapes(curve, torque, { width: 700, setting: 'dial 0.55' });
  test('puts each power of ten at the same distance, 1 in 1 at the top', () => {
    const levels = shapes.levels.map(({ y }) => y);
    expect(levels[0]).toBe(shapes.top);
    expectRelative(levels.at(-1) ?? Number.NaN, shapes.base);
    expectRelative((levels[1] ?? 0) - (levels[0] ?? 0), (levels[4] ?? 0) - (levels[3] ?? 0));
  });
  test('draws the window from the least to the most, with the dial in it', () => {
    const { x = Number.NaN, width = Number.NaN } = shapes.window ?? {};
    expectRelative(x, shapes.scale.xOf(torque.least.value));
    expectRelative(x + width, shapes.scale.xOf(torque.most.value));
    expect(shapes.setting.at).toBeGreaterThan(x);
    expect(shapes.setting.at).toBeLessThan(x + width);
  });
  test('leaves out what is rarer than the scale shows', () => {
    const none = curve.map((at) => ({ ...at, harm: { ...at.harm, probability: 0 } }));
    expect(curveShapes(none, torque, { width: 700, setting: '' }).harm).toBe('');
    expect(shapes.loose).toMatch(/^M[\d.]+ [\d.]+L/);
  });
  test('stays within its width on a phone', () => {
    const narrow = curveShapes(curve, torque, { width: 340, setting: 'dial 0.55' });
    expect(narrow.right).toBeLessThanOrEqual(340);
    expect(narrow.scale.ticks.every(({ x }) => x <= narrow.right + 1e-9)).toBe(true);
  });
});

describe('forceShapes', () => {
  test('reaches its full height with the higher of both distributions', () => {
    const { clampForce, names, base } = forceShapes(result, 640, WORDS);
    const levels = [...clampForce.matchAll(/V([\d.]+)/g)].map(([, level]) => Number(level));
    expectRelative(Math.min(...levels), base - 150);
    expect(names.map(({ text }) => text)).toEqual([WORDS.plastic, WORDS.clampForce]);
  });
  test('names no plastic where all of it bears more than the chart shows', () => {
    const { weakestPlastic } = result;
    const beyond = { ...weakestPlastic, bars: weakestPlastic.bars.map(() => 0), above: 3000 };
    const { names } = forceShapes({ ...result, weakestPlastic: beyond }, 640, WORDS);
    expect(names.map(({ text }) => text)).toEqual([WORDS.clampForce]);
  });
});

describe('forceLines', () => {
  test('hold every joint once', () => {
    const lines = forceLines(result);
    const below = result.clampForce.below / result.samples;
    expectRelative(
      lines.reduce((sum, line) => sum + line.clampForce.probability, below),
      1,
    );
  });
});

describe('nameOver', () => {
  test.each([
    ['the left end', 3],
    ['the right end', 297],
  ])('stays inside at %s', (_end, at) => {
    const { x } = nameOver('sixteen letters!', at, 300);
    expect(x).toBeGreaterThanOrEqual(2);
    expect(x + 16 * 7.5).toBeLessThanOrEqual(298);
  });
});
