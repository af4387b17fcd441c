import { describe, expect, test } from 'vitest';
import { rimHeldCompliance } from '../../../src/core/joint/bonded-ring.ts';
import { bossSplitForce } from '../../../src/core/pull-out/boss-split.ts';
import { expectRelative } from '../../support/published.ts';
import { theRow } from '../../support/the-row.ts';
import { benchmarks, REFINED, SOLVED, shared } from './results.ts';
import { seatedIn } from './seated-in.ts';

const benchmark = (id: string) => theRow(benchmarks, (one) => one.id === id);
const number = (value: number | undefined): number => value ?? Number.NaN;

/** One hundredth: what is asked of a set-up before its other answers are looked at. */
const SET_UP = 0.01;

describe('the set-up of the solved models', () => {
  const lame = benchmark('lame-ring');
  const sheared = benchmark('sheared-ring');
  test('gives the hoop stress at the bore of a ring under inner pressure (Lamé)', () => {
    const p = number(lame.outerPerInner);
    const exact = (number(lame.pressure) * (p ** 2 + 1)) / (p ** 2 - 1);
    expectRelative(number(lame.leastHoopAtBore), exact, SET_UP);
    expectRelative(number(lame.mostHoopAtBore), exact, SET_UP);
  });
  test('gives the compliance of a ring sheared along its axis between rigid rims', () => {
    const ring = {
      knurlDiameter: shared.knurlDiameter,
      outerDiameter: number(sheared.outerPerInner) * shared.knurlDiameter,
      length: number(sheared.length),
      modulus: number(sheared.modulus),
      poissonRatio: number(sheared.poissonRatio),
    };
    expectRelative(number(sheared.compliance), rimHeldCompliance(ring), SET_UP);
  });
  test('gives the hoop stress that bossSplitForce takes for its pressure', () => {
    const situation = seatedIn({ bossPerKnurl: number(lame.outerPerInner), lengthPerKnurl: 0.83 });
    const { knurlDiameter: Dk, knurledLength: Lk } = situation.insert;
    const pressure = bossSplitForce(situation).value / (Math.PI * Dk.estimate.value * Lk.estimate.value);
    const hoopPerPressure = number(lame.mostHoopAtBore) / number(lame.pressure);
    expectRelative(pressure * hoopPerPressure, situation.strengths.hoop.value, SET_UP);
  });
});

describe('the shear read at the knurl', () => {
  // Bosses only: there the outside is free, so that nothing but the knurl adds to the force.
  test.each(SOLVED.filter((one) => one.host === 'boss'))(
    'of $id, reaction $load, is what the axial force in the host gains',
    ({ shear }) => {
      const { read, fromEquilibrium } = shear.atHalfLength;
      // In shares of the mean: straight lines between the integration points of one row and to the knurl.
      expect(Math.abs(read - fromEquilibrium)).toBeLessThan(0.005);
    },
  );
  test.each(REFINED)(
    'of $id, reaction $load, moves by less than 3 % on half the mesh width',
    ({ fine, coarse }) => {
      expectRelative(coarse.shear.maxPerMean, fine.shear.maxPerMean, 0.03);
    },
  );
});
