import { describe, expect, test } from 'vitest';
import { calibrateHoles } from '../../../src/core/holes/calibrate-holes.ts';
import { assumedFigures, movedFigures } from '../../../src/core/holes/curve-figures.ts';
import { holePoint } from '../../../src/core/holes/hole-point.ts';
import type { HoleBehaviour } from '../../../src/core/holes/print-error.ts';
import { holeReading } from '../../support/hole-readings.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const PRIOR: HoleBehaviour = {
  offset: { value: -0.31, standardUncertainty: 0.11 },
  slope: { value: 0.22, standardUncertainty: 0.09 },
  repeatability: 0.053,
  standing: 'estimate',
};
const AFTER: HoleBehaviour = {
  offset: { value: -0.19, standardUncertainty: 0.027 },
  slope: { value: 0.17, standardUncertainty: 0.061 },
  repeatability: 0.038,
  standing: 'measured',
};
const POINTS = [holeReading(4.5, [4.2, 4.24]), holeReading(5.7, 5.41)].map(holePoint);
const NAMES = ['offset', 'offsetUncertainty', 'slope', 'slopeUncertainty', 'scatter'] as const;

describe('the numbers of a curve of errors', () => {
  const assumed = assumedFigures(PRIOR);
  const moved = movedFigures(assumed, AFTER, POINTS);
  test('are those of the curve, before the readings and after them', () => {
    expect(NAMES.map((name) => assumed[name].value)).toEqual([-0.31, 0.11, 0.22, 0.09, 0.053]);
    expect(NAMES.map((name) => moved[name].value)).toEqual([-0.19, 0.027, 0.17, 0.061, 0.038]);
  });
  test('name the published slope apart from what is judged', () => {
    expect(NAMES.filter((name) => assumed[name].source === 'hole-metrology-note')).toEqual(['slope']);
  });
  test.each(NAMES)('begin with what was assumed: %s', (name) => {
    expect(moved[name].entries[0]?.from).toBe(assumed[name]);
    expect(moved[name].standing).toBe('measured');
  });
  test('come of one line, which lists what was assumed and every hole with its uncertainty', () => {
    expect(moved.offset.entries.map(({ symbol }) => symbol).join(' ')).toBe(
      'a_0 b_0 u_a0 u_b0 s_0 e_1 e_2 u_1 u_2 n',
    );
    for (const name of NAMES.slice(1)) expect(moved[name].entries[1]?.from).toBe(moved.offset);
    expect(moved.covariance?.entries[0]?.from).toBe(moved.offset);
  });
  test('lead to the readings, each with a meaning', () => {
    expectWays(Object.values({ ...moved }));
    expect(moved.offset.entries[5]?.from?.formula).toBe('D_m − D_e');
  });
  test('lead to the hole that raised the ceiling, and to none where the table’s stands', () => {
    const [point] = POINTS;
    const raised = movedFigures(assumed, { ...AFTER, ceiling: point?.error ?? 0 }, POINTS).ceiling;
    expect(raised?.value).toBe(point?.error);
    expectWays(raised ? [raised] : []);
    expect(raised).toBeDefined();
    expect(movedFigures(assumed, { ...AFTER, ceiling: 0.3 }, POINTS).ceiling).toBeUndefined();
  });
  test('come with every calibration, unmoved without a reading', () => {
    const none = calibrateHoles(PRIOR, []);
    const one = calibrateHoles(PRIOR, [holeReading(4.5, [4.2, 4.24])]);
    for (const name of NAMES) expect(none.figures[name].value).toBe(none.assumed[name].value);
    expectRelative(one.figures.offsetUncertainty.value, one.behaviour.offset.standardUncertainty);
    expect(one.figures.offsetUncertainty.value).toBeLessThan(one.assumed.offsetUncertainty.value);
  });
});
