import { describe, expect, test } from 'vitest';
import { FRICTION_CONDITIONS } from '../../src/data/friction.ts';
import { theRow } from '../support/the-row.ts';

const conditionOf = (id: string) => theRow(FRICTION_CONDITIONS, (condition) => condition.id === id);
const FACES = ['thread', 'headOnMetal', 'headOnPlastic'] as const;

describe('FRICTION_CONDITIONS', () => {
  test('are the four states a screw may be in', () => {
    expect(FRICTION_CONDITIONS.map(({ id }) => id)).toEqual(['as-delivered', 'dry', 'oiled', 'greased']);
  });

  test('take greased from class B, 0.08 to 0.16 (vdi-2230)', () => {
    expect(conditionOf('greased').thread).toEqual({ low: 0.08, high: 0.16 });
    expect(conditionOf('greased').headOnMetal).toEqual({ low: 0.08, high: 0.16 });
    expect(conditionOf('greased').source).toBe('vdi-2230');
  });

  test('let as-delivered start inside class B and end with class C, 0.14 to 0.24 (vdi-2230)', () => {
    for (const { low, high } of [
      conditionOf('as-delivered').thread,
      conditionOf('as-delivered').headOnMetal,
    ]) {
      expect(low).toBeGreaterThan(0.08);
      expect(low).toBeLessThan(0.14);
      expect(high).toBe(0.24);
    }
  });

  test('hold the judged ranges of dry, oiled and greased screws where no class is published (friction-judgement)', () => {
    expect(conditionOf('dry').thread).toEqual({ low: 0.14, high: 0.3 });
    expect(conditionOf('oiled').thread).toEqual({ low: 0.1, high: 0.17 });
    expect(conditionOf('dry').headOnPlastic).toEqual({ low: 0.2, high: 0.45 });
    expect(conditionOf('dry').headOnMetal).toEqual({ low: 0.14, high: 0.24 });
    expect(conditionOf('oiled').headOnMetal).toEqual({ low: 0.08, high: 0.16 });
    expect(conditionOf('oiled').headOnPlastic).toEqual({ low: 0.1, high: 0.3 });
    expect(conditionOf('greased').headOnPlastic).toEqual({ low: 0.1, high: 0.3 });
  });

  test.each([0.32, 0.35, 0.45])(
    'hold the read %f of dry steel on polyamide or ABS under a head on plastic',
    (read) => {
      const { low, high } = conditionOf('dry').headOnPlastic;
      expect(read).toBeGreaterThanOrEqual(low);
      expect(read).toBeLessThanOrEqual(high);
    },
  );

  test('hold the read 0.10 of lubricated steel on polyamide under an oiled and a greased head', () => {
    for (const id of ['oiled', 'greased']) {
      expect(conditionOf(id).headOnPlastic.low).toBeLessThanOrEqual(0.1);
      expect(conditionOf(id).headOnPlastic.high).toBeGreaterThan(0.1);
    }
  });

  test.each(FRICTION_CONDITIONS)(
    'give $id three ranges with their ends in order, as an estimate',
    (condition) => {
      for (const face of FACES) {
        expect(condition[face].low).toBeGreaterThan(0);
        expect(condition[face].high).toBeGreaterThan(condition[face].low);
        expect(condition[face].high).toBeLessThan(1);
      }
      expect(condition.standing).toBe('estimate');
    },
  );

  test('put a lubricated screw below a dry one on every face', () => {
    for (const id of ['oiled', 'greased']) {
      for (const face of FACES) {
        expect(conditionOf(id)[face].low).toBeLessThan(conditionOf('dry')[face].low);
        expect(conditionOf(id)[face].high).toBeLessThan(conditionOf('dry')[face].high);
      }
    }
  });
});
