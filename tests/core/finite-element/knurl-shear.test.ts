import { describe, expect, test } from 'vitest';
import { SOLVED, type SolvedCase } from './results.ts';

const of = (...loads: readonly string[]) => SOLVED.filter((one) => loads.includes(one.load));
const pulled = of('base', 'far', 'ring');

const places = (one: SolvedCase) => one.shear.profile.map(([at = 0, value = 0]) => ({ at, value }));
const placeOfMost = (one: SolvedCase) =>
  places(one).reduce((most, place) => (place.value > most.value ? place : most)).at;

describe('the shear of a bonded elastic knurl, ends of 0.07 · Dk left out', () => {
  test.each(pulled)('is more than 1.3 means somewhere in $id, reaction $load: not even', (one) => {
    expect(one.shear.maxPerMean).toBeGreaterThan(1.3);
  });
  test.each(pulled)('has its peak at the bottom in $id, reaction $load', (one) => {
    expect(placeOfMost(one)).toBeGreaterThanOrEqual(0.9);
  });
  test.each(of('clamp', 'wide').filter((one) => one.lengthPerKnurl >= 1))(
    'has its peak at the pressed face in $id, ring $load',
    (one) => {
      expect(placeOfMost(one)).toBeLessThan(0.1);
    },
  );
  test.each(pulled.filter((one) => one.lengthPerKnurl <= 1))(
    'stays below 2.2 means up to Lk = Dk in $id, $load',
    (one) => {
      expect(one.shear.maxPerMean).toBeLessThan(2.2);
    },
  );
  test('grows more uneven with length in every host', () => {
    for (const one of pulled) {
      const longer = pulled.filter(
        (other) =>
          other.load === one.load &&
          other.material === one.material &&
          other.outerPerKnurl === one.outerPerKnurl &&
          other.floor === one.floor &&
          other.lengthPerKnurl > one.lengthPerKnurl,
      );
      for (const other of longer) expect(other.shear.maxPerMean).toBeGreaterThan(one.shear.maxPerMean);
    }
  });
});
