import { describe, expect, test } from 'vitest';
import { bossSection, bossTear } from '../../../src/core/pull-out/boss-tear.ts';
import { wallPlug } from '../../../src/core/pull-out/wall-plug.ts';
import { expectRelative } from '../../support/published.ts';
import { SOLVED, type SolvedCase, shared, solved } from './results.ts';
import { seatedIn } from './seated-in.ts';

const bosses = SOLVED.filter((one) => one.host === 'boss');
const pulled = bosses.filter((one) => one.load === 'base');
const pressed = SOLVED.filter((one) => one.load === 'clamp' || one.load === 'wide');
const peakPerMean = ({ holeBottom }: SolvedCase) => holeBottom.peakStress / holeBottom.meanStress;

describe('a boss pulled against its base', () => {
  test.each(pulled)('of $id carries the whole pull on bossSection at the hole’s bottom', (one) => {
    const situation = seatedIn({ bossPerKnurl: one.outerPerKnurl, lengthPerKnurl: one.lengthPerKnurl });
    const section = bossSection(situation, one.outerPerKnurl * shared.knurlDiameter).value;
    // A balance of forces, integrated with two points over each element.
    expectRelative(one.holeBottom.meanStress * section, shared.pull, 0.005);
    expectRelative(one.belowInsert.carried, 1, 0.005);
  });
  test.each(pulled.filter((one) => one.outerPerKnurl <= 1.75))(
    'of $id has a peak of at most 1.5 means',
    (one) => {
      expect(peakPerMean(one)).toBeLessThan(1.5);
    },
  );
  test('is stressed unevenly when it is three knurls wide: two to three and a half means', () => {
    const wide = pulled.filter((one) => one.outerPerKnurl === 3);
    expect(wide.length).toBeGreaterThan(0);
    expect(Math.min(...wide.map(peakPerMean))).toBeGreaterThan(2);
    expect(Math.max(...wide.map(peakPerMean))).toBeLessThan(3.5);
  });
});

describe('a host pressed on its face next to the insert', () => {
  test.each(pressed)('of $id, ring $load, hardly pulls below the insert', (one) => {
    // A quarter: what is gathered over a short insert in a wide boss, pressed on a wide ring.
    expect(one.holeBottom.gathered).toBeLessThan(0.25);
  });
  test('so that the clamp force on the plastic is no load of boss tear and wall plug', () => {
    expect([bossTear.path('on-plastic'), wallPlug.path('on-plastic')]).toEqual(['pull', 'pull']);
  });
});

describe('a large part pulled against a ring on its face', () => {
  test('pulls below a short insert with half of the force, below a long one with a quarter', () => {
    expect(solved('part-0.7-petg', 'ring').holeBottom.gathered).toBeGreaterThan(0.5);
    expect(solved('part-2-petg', 'ring').holeBottom.gathered).toBeLessThan(0.3);
  });
});
