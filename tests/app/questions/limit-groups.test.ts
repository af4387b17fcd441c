import { describe, expect, test } from 'vitest';
import { limitGroups } from '../../../src/app/questions/limits/limit-groups.ts';
import { assessed } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

describe('limitGroups', () => {
  test('puts every limit in the group of what loads it, pull first, torque last', () => {
    const { limits } = assessed();
    const groups = limitGroups(limits);
    expect(groups.map(({ path }) => path)).toEqual(['pull', 'clamp', 'torque']);
    for (const { path, rows } of groups) for (const { limit } of rows) expect(limit.path).toBe(path);
    expect(groups.flatMap(({ rows }) => rows)).toHaveLength(limits.length);
  });
  test('leaves out a path that loads nothing', () => {
    const groups = limitGroups(assessed({ gap_mm: 1.1 }).limits);
    expect(groups.map(({ path }) => path)).not.toContain('pull');
  });
  test('orders by danger within a group', () => {
    for (const { rows } of limitGroups(assessed().limits)) {
      const factors = rows.map(({ limit }) => limit.factor ?? Number.POSITIVE_INFINITY);
      expect(factors).toEqual([...factors].sort((one, other) => one - other));
    }
  });
  test('the scale reaches the load and the most endangered limit', () => {
    for (const { rows, demand, greatest } of limitGroups(assessed().limits)) {
      expect(greatest).toBeGreaterThanOrEqual(demand.value);
      expect(greatest).toBeGreaterThan(rows[0]?.spread.characteristic ?? Number.POSITIVE_INFINITY);
    }
  });
  test('the spread is even about the median on a logarithmic scale', () => {
    for (const { spread } of limitGroups(assessed().limits).flatMap(({ rows }) => rows)) {
      expectRelative(spread.upper / spread.median, spread.median / spread.characteristic);
    }
  });
});
