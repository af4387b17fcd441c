import { describe, expect, test } from 'vitest';
import { seededGenerator } from '../../../src/core/chance/generator.ts';
import { normalVariate } from '../../../src/core/chance/normal-variate.ts';
import { withinScatter } from '../../../src/core/evidence/within-scatter.ts';
import fc from '../../support/fast-check.ts';
import { notFinite } from '../../support/not-finite.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const logs = (...loads: readonly number[]) => loads.map(Math.log);
const scatterWithin = (sizes: readonly (readonly number[])[]) =>
  withinScatter(sizes.map((values) => ({ values, unit: '-' })));

describe('withinScatter', () => {
  test('without two like coupons is what is assumed, 0.10', () => {
    for (const sizes of [[], [logs(0.7)], [logs(0.7), logs(0.95)]]) {
      const { scatter, freedom } = scatterWithin(sizes);
      expectRelative(scatter.value, 0.1);
      expect(scatter.standing).toBe('estimate');
      expect(freedom).toBe(0);
    }
  });
  test('of three and two like coupons (hand calculation)', () => {
    // Logarithms 0.1, 0.3, 0.5 about 0.3: 0.08; −0.2, −0.1 about −0.15: 0.005. √((0.04 + 0.085)/(4 + 3)) = 0.13363
    const { scatter, careful, freedom } = scatterWithin([
      [0.1, 0.3, 0.5],
      [-0.2, -0.1],
    ]);
    expect(freedom).toBe(3);
    expectPublished(scatter.value, '0.13363');
    expect(scatter.standing).toBe('measured');
    // χ² of 7 degrees of freedom has its lower 5 % at 2.167 (printed tables, from memory): 0.13363 · √(7/2.167)
    expectPublished(careful.value, '0.2402');
  });
  test('leads to the squares of each size and to the quantile that a table has', () => {
    const { scatter, careful } = scatterWithin([
      [0.1, 0.3, 0.5],
      [-0.2, -0.1],
    ]);
    const [, , squares] = scatter.entries;
    expect(squares?.from).toMatchObject({ formula: 'Q_1 + Q_2' });
    expectPublished(squares?.from?.entries[0]?.value ?? 0, '0.0800');
    expectPublished(squares?.from?.entries[1]?.value ?? 0, '0.0050');
    expectPublished(careful.entries[2]?.value ?? 0, '2.167');
    expectWays([scatter, careful]);
    expectWays(Object.values(scatterWithin([])).filter((one) => typeof one !== 'number'));
  });
  test('does not move with the strength of a size (law)', () => {
    const [near, far] = [0, 1.7].map((shift) =>
      scatterWithin([logs(0.7, 0.84, 0.9).map((log) => log + shift), logs(0.8, 0.75)]),
    );
    expectRelative(far?.scatter.value ?? 0, near?.scatter.value ?? 1, 1e-12);
  });
  test('of many coupons is theirs, and its careful end comes near (law)', () => {
    const generator = seededGenerator(4711);
    const many = Array.from({ length: 4000 }, () => 0.23 * normalVariate(generator));
    const { scatter, careful } = scatterWithin([many]);
    // The deviation of a deviation is its 1/√(2n): four of them are 4.5 %.
    expect(Math.abs(scatter.value / 0.23 - 1)).toBeLessThan(0.045);
    expect(careful.value / scatter.value).toBeLessThan(1.02);
  });
  test('has a careful end that 19 of 20 set-ups drawn from the prior stay below', () => {
    const generator = seededGenerator(20261);
    const runs = 8000;
    let below = 0;
    for (let run = 0; run < runs; run += 1) {
      // 4 · 0.10²/σ² ~ χ² of 4: a sum of four squares
      const chi = Array.from({ length: 4 }, () => normalVariate(generator) ** 2).reduce((a, b) => a + b, 0);
      const sigma = Math.sqrt(0.04 / chi);
      const sizes = [3, 2].map((count) =>
        Array.from({ length: count }, () => sigma * normalVariate(generator)),
      );
      if (sigma < scatterWithin(sizes).careful.value) below += 1;
    }
    // Four deviations of a binomial share of 0.95.
    expect(Math.abs(below / runs - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / runs));
  });
  test('holds only finite numbers, for equal coupons too', () => {
    expect(notFinite(scatterWithin([[0.2, 0.2, 0.2]]))).toEqual([]);
    const sizes = fc.array(fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { maxLength: 6 }), {
      maxLength: 4,
    });
    fc.assert(
      fc.property(sizes, (drawn) => {
        const found = scatterWithin(drawn);
        expect(notFinite(found)).toEqual([]);
        expect(found.careful.value).toBeGreaterThan(found.scatter.value);
      }),
    );
  });
});
