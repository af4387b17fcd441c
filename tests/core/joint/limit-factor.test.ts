import { describe, expect, test } from 'vitest';
import { limitFactor } from '../../../src/core/joint/limit-factor.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { assessed } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

describe('limitFactor', () => {
  const { limits } = assessed({ gap_mm: 0.4, loads: { pull_N: 31, shear_N: 3 } });
  test('is the plain factor of every loaded limit, and its formula comes to it', () => {
    const loaded = limits.flatMap((limit) => limitFactor(limit) ?? []);
    expect(loaded.length).toBeGreaterThan(5);
    expect(loaded.map(({ value }) => value)).toEqual(limits.flatMap(({ factor }) => factor ?? []));
    for (const factor of loaded) expectRelative(evaluated(factor) ?? 0, factor.value);
  });
  test('is absent where nothing loads the mode', () => {
    const unloaded = assessed({ loads: { pull_N: 0, shear_N: 0 } }).limits.filter(
      ({ path }) => path === 'pull',
    );
    expect(unloaded.length).toBeGreaterThan(0);
    for (const limit of unloaded) expect(limitFactor(limit)).toBeUndefined();
  });
});
