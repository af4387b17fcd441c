import { describe, expect, test } from 'vitest';
import { seededGenerator } from '../../../src/core/chance/generator.ts';
import { normalVariate } from '../../../src/core/chance/normal-variate.ts';
import { partsToProve, proofPlan, proofRatio, provenShare } from '../../../src/core/evidence/proof-plan.ts';
import { normalQuantile } from '../../../src/core/numerics/normal-distribution.ts';
import { type Derived, entry } from '../../../src/core/sources/derived.ts';
import fc from '../../support/fast-check.ts';
import { given } from '../../support/joints.ts';
import { notFinite } from '../../support/not-finite.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const usual = { deviation: 0.1, share: 0.95, confidence: 0.95 };
const scatterOf = (value: number): Derived => ({
  symbol: 's_w',
  value,
  unit: '-',
  formula: 's_0',
  entries: [],
  source: 'own-model',
  standing: 'estimate',
});
const asked = { scatter: scatterOf(0.1), share: 0.95, confidence: 0.95 };
const YEAR = { hours: 8760, creep: given('φ', 1.83, '-') };

describe('provenShare and partsToProve', () => {
  test.each([
    [0.9, 29],
    [0.95, 59],
    [0.99, 299],
  ])(
    'a share of %f at 0.95 confidence takes %i parts (nonparametric basis values, from memory)',
    (share, parts) => {
      expect(partsToProve(share, 0.95)).toBe(parts);
      expect(provenShare(parts, 0.95)).toBeGreaterThanOrEqual(share);
      expect(provenShare(parts - 1, 0.95)).toBeLessThan(share);
    },
  );
  test('one part at 0.95 proves that 5 % hold', () => {
    expectRelative(provenShare(1, 0.95), 0.05, 1e-14);
  });
  test('a whole number of parts is not rounded up by dust', () => {
    // 0.5^k exactly, and 0.9^3.
    expect(partsToProve(0.5, 1 - 0.5 ** 7)).toBe(7);
    expect(partsToProve(0.9, 1 - 0.9 ** 3)).toBe(3);
  });
});

describe('proofRatio', () => {
  test.each([
    [1, '1.390'],
    [3, '1.219'],
    [5, '1.164'],
  ])('of %i parts at s 0.10 is %s (z from printed tables, worked apart)', (count, printed) => {
    // exp(0.1·(1.64485 + 1.64485)), exp(0.1·(1.64485 + 0.33605)), exp(0.1·(1.64485 − 0.12386))
    expectPublished(proofRatio({ ...usual, count }), printed);
  });
  test('is 1 where the success run alone proves the share', () => {
    const count = 12;
    const share = provenShare(count, 0.9);
    expectRelative(proofRatio({ count, deviation: 0.3, share, confidence: 0.9 }), 1, 1e-13);
  });
  test('falls with the number of parts and rises with the deviation', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 58 }),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        (count, deviation) => {
          const ratio = proofRatio({ ...usual, count, deviation });
          expect(ratio).toBeGreaterThan(proofRatio({ ...usual, count: count + 1, deviation }));
          expect(ratio).toBeLessThan(proofRatio({ ...usual, count, deviation: deviation * 1.1 }));
        },
      ),
    );
  });
  test.each([1, 3, 5])(
    'misleads in 1 − γ of all runs of %i parts at most: the worst case, drawn 40,000 times',
    (count) => {
      const question = { count, deviation: 0.15, share: 0.95, confidence: 0.9 };
      const load = 500;
      const proofLoad = load * proofRatio(question);
      const generator = seededGenerator(20260 + count);
      // The median for which the share of 95 % holds just the load to rely on: a hair less would be a wrong promise.
      const worst = Math.log(load) + question.deviation * normalQuantile(question.share);
      const runs = 40_000;
      let allHeld = 0;
      for (let run = 0; run < runs; run += 1) {
        let held = true;
        for (let part = 0; part < count; part += 1) {
          held = Math.exp(worst + question.deviation * normalVariate(generator)) >= proofLoad && held;
        }
        if (held) allHeld += 1;
      }
      // Four deviations of a binomial share of 0.1.
      expect(Math.abs(allHeld / runs - 0.1)).toBeLessThan(4 * Math.sqrt((0.1 * 0.9) / runs));
    },
  );
});

describe('proofPlan', () => {
  test('names the load for each part and what the run alone proves', () => {
    const plan = proofPlan({ ...asked, load: 620, count: 3 });
    expect(plan.proofLoad).toMatchObject({ symbol: 'F_pl', unit: 'N', standing: 'estimate' });
    expectRelative(plan.proofLoad.value, 620 * 1.219, 5e-4);
    expectRelative(plan.shareAtProofLoad.value, 0.05 ** (1 / 3), 1e-12);
    expect(plan).not.toHaveProperty('heldLoad');
  });
  test('takes the scatter that it is given, wider for a higher load', () => {
    // exp(0.18·(1.64485 + 0.33605)) = 1.42840 (z from printed tables)
    const plan = proofPlan({ ...asked, scatter: scatterOf(0.18), load: 620, count: 3 });
    expectRelative(plan.proofLoad.value, 620 * 1.4284, 5e-5);
    expect(plan.proofLoad.entries).toContainEqual(expect.objectContaining({ symbol: 's_w', value: 0.18 }));
  });
  test('for a time under load asks a short pull for c times as much, or the load itself for all that time', () => {
    const short = proofPlan({ ...asked, load: 620, count: 3 });
    const lasting = proofPlan({ ...asked, load: 620, count: 3, lasting: YEAR });
    expectRelative(lasting.proofLoad.value, 1.83 * short.proofLoad.value);
    expectRelative(lasting.heldLoad?.value ?? 0, short.proofLoad.value);
    expect(lasting.shareAtProofLoad).toEqual(short.shareAtProofLoad);
    expect(lasting.proofLoad.formula).toBe('F_r · c · exp(s_w · (z_p + z_n))');
    expect(lasting.proofLoad.entries).toContainEqual({
      symbol: 'c',
      value: 1.83,
      unit: '-',
      from: YEAR.creep,
    });
    expect(lasting.proofLoad.entries).toContainEqual(entry('t', 8760, 'h'));
  });
  test('holds only finite numbers', () => {
    const questions = fc.record({
      load: fc.double({ min: 1, max: 9000, noNaN: true }),
      count: fc.integer({ min: 1, max: 400 }),
      scatter: fc.double({ min: 0.005, max: 0.8, noNaN: true }).map(scatterOf),
      share: fc.double({ min: 0.51, max: 0.999, noNaN: true }),
      confidence: fc.double({ min: 0.5, max: 0.999, noNaN: true }),
    });
    fc.assert(
      fc.property(questions, (question) => {
        expect(notFinite(proofPlan(question))).toEqual([]);
      }),
    );
  });
});
