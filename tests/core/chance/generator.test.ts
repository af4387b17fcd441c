import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  fillProducts,
  type Generator,
  nextBits,
  seededGenerator,
  uniformVariate,
} from '../../../src/core/chance/generator.ts';
import { expectDistribution, expectShare } from './expect-chance.ts';

interface Reference {
  readonly fromState: { readonly state: readonly number[]; readonly words: readonly number[] };
  readonly fromSeed: readonly { readonly seed: number; readonly words: readonly number[] }[];
  readonly thousandth: number;
}

const reference = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../fixtures/xoshiro/generator.json'), 'utf8'),
) as Reference;

const words = (generator: Generator, count: number) =>
  Array.from({ length: count }, () => nextBits(generator) >>> 0);

describe('nextBits', () => {
  test('gives the words of an independent xoshiro128** from the state 1, 2, 3, 4', () => {
    const { state, words: expected } = reference.fromState;
    expect(words({ state: Int32Array.from(state) }, expected.length)).toEqual(expected);
  });
  test.each(reference.fromSeed)('gives the words of an independent program from seed $seed', (row) => {
    expect(words(seededGenerator(row.seed), row.words.length)).toEqual(row.words);
  });
  test('agrees with it still after a thousand steps', () => {
    expect(words(seededGenerator(1234), 1000).at(-1)).toBe(reference.thousandth);
  });
  test('sets each of the 32 bits in half of the words', () => {
    const generator = seededGenerator(8);
    const samples = 50_000;
    const counts = new Uint32Array(32);
    for (const word of words(generator, samples)) {
      for (let bit = 0; bit < 32; bit += 1) counts[bit] = (counts[bit] ?? 0) + ((word >>> bit) & 1);
    }
    for (const count of counts) expectShare(count, samples, 0.5);
  });
});

describe('uniformVariate', () => {
  test('is spread evenly between 0 and 1 (Kolmogorov and Smirnov, 1 %)', () => {
    const generator = seededGenerator(31);
    expectDistribution(
      new Float64Array(100_000).map(() => uniformVariate(generator)),
      (x) => x,
    );
  });
  test('never reaches either end, whatever the bits', () => {
    // States whose next word is all zeros and all ones: s1 · 5, turned by 7, times 9.
    const none = uniformVariate({ state: Int32Array.of(1, 0, 3, 4) });
    expect(none).toBe(2 ** -33);
    expect(none).toBeGreaterThan(0);
    const generator = seededGenerator(5);
    const greatest = new Float64Array(100_000)
      .map(() => uniformVariate(generator))
      .reduce((a, b) => Math.max(a, b));
    expect(greatest).toBeLessThan(1);
    expect(greatest).toBeGreaterThan(0.9999);
  });
});

describe('fillProducts', () => {
  test.each([1, 3])(
    'gives the products of %i single draws, and leaves the generator where they do',
    (factors) => {
      const products = new Float64Array(200);
      const filled = seededGenerator(31);
      fillProducts(filled, factors, products);
      const single = seededGenerator(31);
      const productOfDraws = () => {
        let product = 1;
        for (let factor = 0; factor < factors; factor += 1) product *= uniformVariate(single);
        return product;
      };
      expect([...products]).toEqual(Array.from(products, productOfDraws));
      expect(filled.state).toEqual(single.state);
    },
  );
});
