import { describe, expect, test } from 'vitest';
import type { CreepingLoop, Plastic } from '../../../src/core/joint/clamp-loop.ts';
import { type CreptSpan, creptOver, shareLeft, shareLeftOf } from '../../../src/core/joint/share-left.ts';
import { polymerCreep } from '../../../src/core/relaxation/polymer-creep.ts';
import { wayOf } from '../../../src/core/steps/steps.ts';
import { PC, PETG } from '../../../src/data/host-materials.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import fc from '../../support/fast-check.ts';
import { given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

const CREEP = { host: polymerCreep(PETG, 29), clamped: polymerCreep(PC, 29) };
const EXPECTED = { creep: 'middle', modulus: 'middle' } as const;
const KNOWN = { host: EXPECTED, clamped: EXPECTED };
const at = (factor: number) => ({ low: factor, middle: factor, high: factor });

/** A loop of a screw and plastics with these compliances, µm/kN. */
function loopOf(screw: number, plastics: Partial<Record<Plastic, number>>): CreepingLoop {
  const linkOf = (of: Plastic) => {
    const compliance = 1e-6 * (plastics[of] ?? Number.NaN);
    return {
      of,
      compliance: at(compliance),
      way: () => () => given(of === 'host' ? 'C_h' : 'C_l', compliance, 'mm/N'),
    };
  };
  const links = (['clamped', 'host'] as const).filter((of) => plastics[of] !== undefined).map(linkOf);
  const elasticCompliance = 1e-6 * screw;
  return { elasticCompliance, screw: () => given('C_b', elasticCompliance, 'mm/N'), links, creep: CREEP };
}

/** A span in which the plastics crept from one factor to another. */
const span = (first: Record<Plastic, number>, last: Record<Plastic, number>): CreptSpan => ({
  restored: 1,
  until: 70,
  atFirst: { host: at(first.host), clamped: at(first.clamped) },
  atLast: { host: at(last.host), clamped: at(last.clamped) },
});
const fromRest = (host: number, clamped = 1) => span({ host: 1, clamped: 1 }, { host, clamped });

const compliance = fc.double({ min: 0.1, max: 1000, noNaN: true });
const factor = fc.double({ min: 1, max: 20, noNaN: true });

describe('shareLeftOf', () => {
  test('is 12/17 for a screw of 5, a plastic of 7 µm/kN and c 12/7 (hand calculation; no published example known)', () => {
    expectRelative(shareLeftOf(loopOf(5, { host: 7 }), fromRest(12 / 7), KNOWN), 12 / 17);
  });
  test('of as much give in the plastic as in the screw, c 1.5, is 0.8 (hand calculation)', () => {
    expectPublished(shareLeftOf(loopOf(4, { clamped: 4 }), fromRest(9, 1.5), KNOWN), '0.8');
  });
  test('of two plastics sums what each gives: (5 + 7 + 3)/(5 + 7 · 2 + 3 · 4) = 15/31 (hand calculation)', () => {
    expectRelative(shareLeftOf(loopOf(5, { host: 7, clamped: 3 }), fromRest(2, 4), KNOWN), 15 / 31);
  });
  test('since a re-tightening is a quotient of what is left then and now', () => {
    const loop = loopOf(5, { host: 7, clamped: 3 });
    const since = span({ host: 1.3, clamped: 1.1 }, { host: 2.1, clamped: 3.7 });
    expectRelative(
      shareLeftOf(loop, since, KNOWN),
      shareLeftOf(loop, fromRest(2.1, 3.7), KNOWN) / shareLeftOf(loop, fromRest(1.3, 1.1), KNOWN),
    );
  });
  test('keeps the length of the loop: Cb · F + C · c · F is the first (Cb + C) · F0', () => {
    fc.assert(
      fc.property(compliance, compliance, factor, (screw, plastic, c) => {
        const left = shareLeftOf(loopOf(screw, { host: plastic }), fromRest(c), KNOWN);
        expectRelative(screw * left + plastic * c * left, screw + plastic);
      }),
    );
  });
  test('falls as the plastic creeps on, rises with a springier screw', () => {
    fc.assert(
      fc.property(compliance, compliance, factor, (screw, plastic, c) => {
        const left = (times: number, more = 0) =>
          shareLeftOf(loopOf(times * screw, { host: plastic }), fromRest(c + more), KNOWN);
        expect(left(1, 0.1)).toBeLessThanOrEqual(left(1));
        expect(left(2, 0.1)).toBeGreaterThan(left(1, 0.1) * (1 - 1e-12));
      }),
    );
  });
  test('comes to 1/c for a rigid screw', () => {
    expectRelative(shareLeftOf(loopOf(1e-9, { host: 3 }), fromRest(1.7), KNOWN), 1 / 1.7, 1e-8);
  });
  test('is 1 without plastic in the loop and 1 at the start', () => {
    expect(shareLeftOf(loopOf(3, {}), fromRest(9.1), KNOWN)).toBe(1);
    expect(shareLeftOf(loopOf(3, { host: 8 }), fromRest(1), KNOWN)).toBe(1);
  });
});

describe('shareLeft', () => {
  test.each([
    ['(C_b + C_h)/(C_b + C_h · c_h)', { host: 61 }, undefined],
    ['(C_b + C_l · c_lr)/(C_b + C_l · c_l)', { clamped: 43 }, 24],
    ['(C_b + C_l · c_lr + C_h · c_hr)/(C_b + C_l · c_l + C_h · c_h)', { clamped: 43, host: 61 }, 168],
  ] as const)(
    'shows %s, which is the same number, with the way to each value',
    (formula, plastics, restored) => {
      const loop = loopOf(5.3, plastics);
      const crept = creptOver(CREEP, { restored, until: 900 });
      const shown = shareLeft(loop, crept, KNOWN);
      expect(shown).toMatchObject({ symbol: 'R_F', formula, value: shareLeftOf(loop, crept, KNOWN) });
      expectRelative(evaluated(shown) ?? 0, shown.value);
      const computed = shown.entries.filter(({ symbol }) => symbol !== 't');
      expect(computed.map((one) => wayOf(one)?.value)).toEqual(computed.map(({ value }) => value));
    },
  );
  test('without plastic says that nothing is lost', () => {
    const crept = creptOver(CREEP, { restored: undefined, until: 900 });
    expect(shareLeft(loopOf(5.3, {}), crept, KNOWN)).toMatchObject({
      value: 1,
      formula: '1, no plastic lies in the clamp path',
    });
  });
});
