import { describe, expect, test } from 'vitest';
import { calibrateHoles } from '../../../src/core/holes/calibrate-holes.ts';
import { assumedFigures, movedFigures } from '../../../src/core/holes/curve-figures.ts';
import type { HoleBehaviour } from '../../../src/core/holes/print-error.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { holeReading } from '../../support/hole-readings.ts';
import { expectRelative } from '../../support/published.ts';

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
const NAMES = ['offset', 'offsetUncertainty', 'slope', 'slopeUncertainty', 'scatter'] as const;

describe('the numbers of a curve of errors', () => {
  const assumed = assumedFigures(PRIOR);
  const moved = movedFigures(assumed, AFTER, 7);
  test('are those of the curve, before the readings and after them', () => {
    expect(NAMES.map((name) => assumed[name].value)).toEqual([-0.31, 0.11, 0.22, 0.09, 0.053]);
    expect(NAMES.map((name) => moved[name].value)).toEqual([-0.19, 0.027, 0.17, 0.061, 0.038]);
  });
  test('name the published slope apart from what is judged', () => {
    expect(NAMES.filter((name) => assumed[name].source === 'hole-metrology-note')).toEqual(['slope']);
  });
  test.each(NAMES)('say what the readings changed: %s', (name) => {
    const { entries, standing } = moved[name];
    expect(entries[0]?.from).toBe(assumed[name]);
    expectRelative(evaluated(moved[name]) ?? Number.NaN, moved[name].value);
    expect(entries.at(-1)).toEqual({ symbol: 'n', value: 7, unit: '-' });
    expect(standing).toBe('measured');
  });
  test('come with every calibration, unmoved without a reading', () => {
    const none = calibrateHoles(PRIOR, []);
    const one = calibrateHoles(PRIOR, [holeReading(4.5, [4.2, 4.24])]);
    for (const name of NAMES) expect(none.figures[name].value).toBe(none.assumed[name].value);
    expectRelative(one.figures.offsetUncertainty.value, one.behaviour.offset.standardUncertainty);
    expect(one.figures.offsetUncertainty.value).toBeLessThan(one.assumed.offsetUncertainty.value);
  });
});
