import { describe, expect, test } from 'vitest';
import { hostComplianceOf } from '../../../src/core/joint/host-compliance.ts';
import type { SeatKind } from '../../../src/core/pull-out/limit.ts';
import type { Situation } from '../../../src/core/pull-out/situation.ts';
import { pullShare, pullShares } from '../../../src/core/service/load-factor.ts';
import { CATALOGUE } from '../../../src/data/catalogue.ts';
import { answerableJoint, type Changes, given } from '../../support/joints.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';
import { situationOfNumbers } from '../../support/situations.ts';

/** M3 with 4.6 mm of thread carrying, head 5.07 over a hole of 3.4 mm, knurl 5 by 3.6 mm. */
const seated = (seat: SeatKind, floor = 3.1): Situation => ({
  ...situationOfNumbers({ floor }),
  seat,
  engagement: given('L_E', 4.6, 'mm'),
});
const gripOf = (length: number) => given('g', length, 'mm');
const share = (seat: SeatKind, changes: Changes = {}, grip = 2.7) =>
  pullShare(answerableJoint(changes), seated(seat), gripOf(grip)).value;

// As = 5.0309 mm² (iso-898-1); kb = 205 000 · 5.0309/(2.7 + 2.3) = 206 265 N/mm.
const SCREW = 1 / 206_265;

describe('pullShare', () => {
  test('of an aluminium lid of 2.7 mm on the insert is 0.261 (hand calculation after shigley, Eq. 8-20)', () => {
    // kc = 0.57735 · π · 70 000 · 3.4/ln[(3.1177 + 1.67) · 8.47/((3.1177 + 8.47) · 1.67)] = 431 684/0.73981 = 583 506 N/mm
    // 206 265/(206 265 + 583 506)
    expectPublished(share('on-insert'), '0.2612');
  });
  test('of a spacer is that of a tube: E · A/t (hand calculation)', () => {
    // A = π/4 · (5.4² − 3.4²) = 13.823 mm²; k = 205 000 · 13.823/2.7 = 1 049 525 N/mm; 206 265/(206 265 + 1 049 525)
    const sleeve = { material: 'steel', outsideDiameter_mm: 5.4 };
    expectPublished(share('on-insert', { clamped: { material: 'petg', sleeve } }), '0.16425');
  });
  test('beside the insert the plastic gives with the screw, and its cone with the lid', () => {
    // cone at the lid's end 5.07 + 3.1177 = 8.1877; below, L 3.6 on the hole 5, E 1800:
    // 0.57735 · π · 1800 · 5/ln[(4.1569 + 3.1877) · 13.1877/((4.1569 + 13.1877) · 3.1877)] = 16 324.2/0.56067 = 29 115 N/mm
    const members = 1 / 583_506 + 1 / 29_115;
    const screwSide = SCREW + hostComplianceOf(seated('on-plastic'));
    expectRelative(share('on-plastic'), members / (members + screwSide), 1e-5);
  });
  test('of a far-side insert has the shoulder among the members', () => {
    // 0.57735 · π · 1800 · 3.4/ln[(3.5796 + 4.7877) · 11.5877/((3.5796 + 11.5877) · 4.7877)] = 11 100.5/0.28908 = 38 399 N/mm
    const members = 1 / 583_506 + 1 / 38_399;
    expectRelative(share('far-side'), members / (members + SCREW), 1e-5);
  });
  test('over a gap is 1: the screw feels the whole pull', () => {
    expect(pullShare(answerableJoint({ gap_mm: 0.37 }), seated('over-gap'), gripOf(3.07))).toMatchObject({
      symbol: 'Φ',
      value: 1,
      entries: [{ symbol: 'gap', value: 0.37 }],
    });
  });
  test('falls as the screw is stretched over more length, grows as the lid softens', () => {
    expect(share('on-insert', {}, 9.1)).toBeLessThan(share('on-insert', {}, 3.3));
    expect(share('on-insert', { clamped: { material: 'petg' } })).toBeGreaterThan(share('on-insert'));
  });
  test('says that it is an estimate, of both stiffnesses', () => {
    expect(pullShare(answerableJoint(), seated('on-insert'), gripOf(2.7))).toMatchObject({
      standing: 'estimate',
      entries: [{ symbol: 'k_b' }, { symbol: 'k_m' }],
    });
  });
});

describe('pullShares', () => {
  const lid = (material: string) => answerableJoint({ clamped: { material } });

  test('of a lid of ASA, 1600 to 2300 MPa, is 0.915 to 0.939, and 0.929 is expected (hand calculation)', () => {
    // kc of the aluminium lid above, times E/70 000: 13 337.3, 15 837.9 and 19 172.3 N/mm beside 206 265 N/mm
    const { most, least } = pullShares(lid('asa'), seated('on-insert'), gripOf(2.7));
    expectPublished(most.value, '0.9393');
    expectPublished(least.value, '0.9150');
    expectPublished(most.range?.middle ?? 0, '0.9287');
    expect(most.range).toEqual(least.range);
    expect([least.range?.low, least.range?.high]).toEqual([least.value, most.value]);
  });
  test('are one where the moduli are known, with no range', () => {
    const { most, least } = pullShares(lid('petg'), seated('on-plastic'), gripOf(3.3));
    expect(most).toBe(least);
    expect(most).toEqual(pullShare(lid('petg'), seated('on-plastic'), gripOf(3.3)));
    expect(most.range).toBeUndefined();
  });
  test('of two plastics that are little known lie at ends of both, with the share between', () => {
    const material = CATALOGUE.hostMaterials.find(({ id }) => id === 'pla-plus');
    if (material?.melts !== true) throw new Error('PLA+ is in the tables');
    for (const seat of ['on-insert', 'on-plastic', 'far-side'] as const) {
      const situation = { ...seated(seat), material };
      const { most, least } = pullShares(lid('asa'), situation, gripOf(4.1));
      const middle = pullShare(lid('asa'), situation, gripOf(4.1)).value;
      expect(least.value).toBeLessThan(middle);
      expect(most.value).toBeGreaterThan(middle);
      expect(most.value).toBeLessThan(1);
    }
  });
});
