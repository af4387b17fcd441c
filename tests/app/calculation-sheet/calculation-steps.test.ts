import { describe, expect, test } from 'vitest';
import { wayOf } from '../../../src/core/steps/steps.ts';
import { expectRelative } from '../../support/published.ts';
import { CALCULATED, stepsOf } from './calculations.ts';

describe.each(CALCULATED.map((one) => [one.name, one] as const))('the calculation of %s', (_, one) => {
  const steps = stepsOf(one);
  test('numbers its steps from one without a gap', () => {
    expect(steps.map(({ number }) => number)).toEqual(steps.map((__, index) => index + 1));
  });
  test('refers to earlier steps only, and to one wherever a number was computed', () => {
    for (const { number, entries } of steps) {
      for (const { entry, step } of entries) {
        expect(wayOf(entry) !== undefined && step === undefined, entry.symbol).toBe(false);
        expect(step ?? 0, `${entry.symbol} of step ${number}`).toBeLessThan(number);
      }
    }
  });
  test('refers to a step of the same value and unit', () => {
    const referred = steps.flatMap(({ entries }) =>
      entries.flatMap(({ entry, step }) =>
        step === undefined ? [] : [{ entry, from: steps[step - 1]?.derived }],
      ),
    );
    expect(referred.length).toBeGreaterThan(40);
    for (const { entry, from } of referred) {
      expect(from?.unit, entry.symbol).toBe(entry.unit);
      expectRelative(from?.value ?? Number.NaN, entry.value, 1e-14);
    }
  });
  test('writes each number once', () => {
    const texts = steps.map(({ derived: { symbol, value, formula, entries } }) =>
      [symbol, value, formula, ...entries.map((entry) => `${entry.symbol}=${entry.value}`)].join(' '),
    );
    expect(new Set(texts).size).toBe(steps.length);
  });
  test('holds finite numbers only', () => {
    for (const { derived } of steps) {
      expect(derived.value, derived.symbol).toSatisfy(Number.isFinite);
      for (const { symbol, value } of derived.entries) expect(value, symbol).toSatisfy(Number.isFinite);
    }
  });
  test('holds every limit against its load, by the numbers of both', () => {
    const { checks } = one.groups.find(({ id }) => id.kind === 'loads') ?? { checks: [] };
    expect(checks.map(({ of }) => of)).toEqual(one.assessment.limits.map(({ mode }) => mode));
    for (const check of checks) {
      expect(steps[check.bearsStep - 1]?.derived.value).toBe(check.bears.value);
      expect(steps[check.askedStep - 1]?.derived.value).toBe(check.asked.value);
    }
  });
  test('has a step for every computed number of the answers, the drawing and the remarks', () => {
    const { hole, screw, torque, preloadLeft, holds, dimensions } = one.assessment;
    const ofHole = [hole.drawn, hole.depth, hole.boreAsPrinted, hole.well, hole.floor, hole.bossDiameter];
    const numbers = [
      ...ofHole,
      hole.bite,
      hole.meltVolume,
      hole.wall,
      hole.chamfer,
      hole.window.chance,
      preloadLeft,
      torque.least,
      torque.most,
      holds.median,
      holds.characteristic,
      dimensions.knurlDiameter.estimate,
      dimensions.length.estimate,
      ...(screw.kind === 'chosen' ? [screw.length] : []),
      ...(torque.kind === 'window' ? [torque.dial, torque.clampForceLow, torque.clampForceHigh] : []),
      ...one.notices.flatMap(({ facts }) => Object.values(facts).filter((fact) => typeof fact === 'object')),
    ];
    for (const number of numbers) {
      const written = steps.filter(({ derived }) => derived.symbol === number.symbol);
      expect(
        written.map(({ derived }) => derived.value),
        number.symbol,
      ).toContain(number.value);
    }
    for (const { margin } of one.hold?.states ?? []) {
      expect(steps.some(({ derived }) => derived.symbol === 'ψ' && derived.value === margin)).toBe(true);
    }
  });
  test('says between what lengths a screw has to be, or would have to be where none fits', () => {
    const { screw } = one.assessment;
    const found = ['l_least', 'l_most'].map(
      (symbol) => steps.find(({ derived }) => derived.symbol === symbol)?.derived.value,
    );
    const chosenFrom =
      screw.kind === 'chosen' && screw.choice === 'standard'
        ? screw.length.entries.map(({ value }) => value)
        : [undefined, undefined];
    expect(found).toEqual(screw.kind === 'refused' ? [screw.leastLength, screw.greatestLength] : chosenFrom);
  });
  test('goes through the life of the joint where it has a torque', () => {
    const states = one.groups.flatMap(({ id }) => (id.kind === 'state' ? [id.state.id] : []));
    expect(states).toEqual(
      one.assessment.torque.kind === 'window' ? ['assembly', 'in-service', 'after'] : [],
    );
  });
});
