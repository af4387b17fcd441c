import { describe, expect, test } from 'vitest';
import {
  type BondedRing,
  columnCompliance,
  endHeldCompliance,
  lagFactor,
  rimHeldCompliance,
} from '../../../src/core/joint/bonded-ring.ts';
import { expectRelative } from '../../support/published.ts';
import { closedCompliance, ringOf } from './closed-compliance.ts';
import { REFINED, SOLVED, shared, solved } from './results.ts';

// The comparison itself: what docs/finite-element.md claims of the closed forms.
const CLAIMED = 0.2;

describe('the closed form for where the reaction stands', () => {
  test.each(SOLVED)('gives the compliance of $id, reaction $load, within 20 %', (one) => {
    expectRelative(closedCompliance(one), one.compliance, CLAIMED);
  });
});

describe('a ring held at a rigid rim of at most 3 · Dk', () => {
  const asRimHeld = (id: string, load: string) => {
    const one = solved(id, load);
    return rimHeldCompliance(ringOf(one, 3 * shared.knurlDiameter)) / one.compliance;
  };
  test('is a quarter of the compliance of a thin boss with a long insert', () => {
    // Both printed with two digits in docs/finite-element.md: half a unit of the last.
    expect(Math.abs(asRimHeld('boss-1.75-2-petg', 'base') - 0.25)).toBeLessThan(0.005);
  });
  test('is more than twice the compliance where a ring of the face next to a short insert is pressed', () => {
    expect(asRimHeld('part-1-petg', 'clamp')).toBeGreaterThan(2);
  });
});

describe('the compliance of the solved cases', () => {
  test.each(REFINED)(
    'of $id, reaction $load, moves by less than 3 % on half the mesh width',
    ({ fine, coarse }) => {
      expectRelative(coarse.compliance, fine.compliance, 0.03);
    },
  );
  test.each(['base', 'clamp'])('hardly falls beyond Lk = Dk in a thin boss, reaction %s', (load) => {
    expectRelative(
      solved('boss-1.75-2-petg', load).compliance,
      solved('boss-1.75-1-petg', load).compliance,
      0.03,
    );
  });
  test('grows by the column that a higher boss adds', () => {
    const [low, high] = [solved('boss-1.75-1-petg', 'base'), solved('boss-1.75-1-petg-tall', 'base')];
    const added = (high.floor - low.floor) / (low.modulus * (Math.PI / 4) * 8.75 ** 2);
    // The end of the low boss is held sideways, that of the added length is not: a twentieth.
    expectRelative(high.compliance - low.compliance, added, 0.05);
  });
});

describe('the ring held at one end', () => {
  const ring: BondedRing = {
    knurlDiameter: 4.7,
    outerDiameter: 8.6,
    length: 5.9,
    modulus: 1730,
    poissonRatio: 0.37,
  };
  const lag = lagFactor(8.6 / 4.7);
  const G = 1730 / (2 * 1.37);
  const area = (Math.PI / 4) * (8.6 ** 2 - 4.7 ** 2);
  test('has the lag factor of the mean displacement of a sheared ring, integrated', () => {
    const p = 1.83;
    const steps = 20_000;
    let sum = 0;
    for (let i = 0; i < steps; i += 1) {
      // τ = τk·(p² − r²)/(r·(p² − 1)) over the ring; displacement ∫τ dr, averaged over the section.
      const r = 1 + ((i + 0.5) / steps) * (p - 1);
      const lag = (p ** 2 * Math.log(r) - (r ** 2 - 1) / 2) / (p ** 2 - 1);
      sum += (lag * 2 * r * (p - 1)) / steps / (p ** 2 - 1);
    }
    // Midpoint rule with 20 000 steps.
    expectRelative(lagFactor(p), sum, 1e-8);
  });
  test('has a lag factor of (p − 1)/3 for a thin ring, without a step where the limit takes over', () => {
    expectRelative(lagFactor(1.000_01), 0.000_01 / 3, 1e-9);
    // The next term of the series is of the order of (p − 1)².
    expectRelative(lagFactor(1.001_01), 0.001_01 / 3, 2e-3);
  });
  test('needs no length once it is long: C = √(Λ/(2π · G · E · A))', () => {
    const expected = Math.sqrt(lag / (2 * Math.PI * G * 1730 * area));
    expectRelative(endHeldCompliance({ ...ring, length: 100 }), expected);
  });
  test('is sheared evenly and stretched by a third of its length while it is short', () => {
    const sheared = lag / (2 * Math.PI * G * 0.05);
    const stretched = 0.05 / (3 * 1730 * area);
    // x·coth x = 1 + x²/3 − x⁴/45 + …; x² = Lk² · 2π · G/(Λ · E · A)
    const squared = 0.05 ** 2 * ((2 * Math.PI * G) / (lag * 1730 * area));
    expectRelative(endHeldCompliance({ ...ring, length: 0.05 }), sheared + stretched, squared ** 2 / 40);
  });
});

describe('the solid bottom of a boss', () => {
  const boss = { outerDiameter: 10, boreDiameter: 4.3, room: 1, modulus: 1000, poissonRatio: 0.25 };
  const added = (from: number, to: number) =>
    columnCompliance({ ...boss, solid: to }) - columnCompliance({ ...boss, solid: from });
  const full = Math.PI * 25;
  test('gives by the modulus without lateral strain next to its base: 1200 of 1000 MPa at ν = 0.25', () => {
    expectRelative(added(0, 1.3), 1.3 / (1200 * full), 1e-9);
  });
  test('gives by the plain modulus beyond a quarter of its diameter', () => {
    expectRelative(added(2.5, 7.1), 4.6 / (1000 * full), 1e-9);
  });
});
