import { describe, expect, test } from 'vitest';
import type { Insert } from '../../../src/core/inserts/insert.ts';
import type { AnswerableJoint } from '../../../src/core/joint/stop.ts';
import { recommend } from '../../../src/core/recommend/recommend.ts';
import type { Rejection } from '../../../src/core/recommend/recommendation.ts';
import { type RejectedFact, rejectionWay } from '../../../src/core/recommend/rejection-way.ts';
import { derivationsWithin, meaningOf } from '../../../src/wording/symbols.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { answerableJoint, type Changes, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const asMeasured = (diameter_mm: number, depth_mm?: number): Changes => ({
  holes: {
    existing: { known: 'as-measured', diameter_mm, ...(depth_mm === undefined ? {} : { depth_mm }) },
  },
});

/** One joint for each reason, with the numbers that are computed for it. */
const CASES: readonly (readonly [Rejection['code'], Changes, readonly RejectedFact[]])[] = [
  ['part-too-thin', { host: { thickness_mm: 7.1 } }, ['depth']],
  ['part-too-thin', { insertSide: 'far-side', host: { thickness_mm: 6.2 } }, ['depth']],
  ['boss-too-small', { host: { bossDiameter_mm: 5.7 } }, ['leastDiameter']],
  ['boss-too-small', { host: { bossDiameter_mm: 4.9 } }, ['leastDiameter']],
  ['hole-without-bite', asMeasured(4.97), ['bore', 'knurl']],
  ['hole-too-small', asMeasured(3.93), ['bore', 'pilot']],
  ['hole-too-shallow', asMeasured(4.43, 4.7), ['depthNeeded']],
  ['holds-too-little', { loads: { pull_N: 907 } }, ['holds', 'asked']],
  ['no-screw-length', { screw: { length_mm: 4.1 } }, ['least', 'greatest']],
  ['no-screw-length', { insertSide: 'far-side', screw: { length_mm: 4.1 } }, ['least', 'greatest']],
  ['no-screw-length', { ...asMeasured(4.43, 8.3), screw: { length_mm: 4.1 } }, ['least', 'greatest']],
  ['no-torque', { gap_mm: 0.4, loads: { pull_N: 173 } }, ['least', 'most']],
];

function theRejection(joint: AnswerableJoint, insert: Insert): Rejection {
  const found = recommend(joint, [insert]);
  const [first] = found.kind === 'answered' ? found.rejected : [];
  if (first === undefined) throw new Error('the insert is not out');
  return first.rejection;
}

describe('rejectionWay', () => {
  test.each(CASES)('gives the numbers of %s that recommend gave, for %j', (code, changes, facts) => {
    const [joint, insert] = [answerableJoint(changes), theInsert()];
    const rejection = theRejection(joint, insert);
    expect(rejection.code).toBe(code);
    for (const fact of facts) {
      const way = rejectionWay(joint, insert, rejection, fact);
      expectRelative(way.value, Number(Reflect.get(rejection, fact)));
      for (const step of derivationsWithin(way)) expect(meaningOf(step)).not.toBe(step.symbol);
    }
  });
  test('the ends of the screw’s length follow from their formulae', () => {
    for (const [, changes] of CASES.filter(([code]) => code === 'no-screw-length')) {
      const [joint, insert] = [answerableJoint(changes), theInsert()];
      const rejection: Rejection = { insertId: insert.id, code: 'no-screw-length', least: 0, greatest: 0 };
      for (const fact of ['least', 'greatest'] as const) {
        const way = rejectionWay(joint, insert, rejection, fact);
        expectRelative(evaluated(way) ?? 0, way.value);
      }
    }
  });
  test('has no way to a number that was given', () => {
    const rejection: Rejection = {
      insertId: 'a',
      code: 'other-thread',
      insertThread: 'M4',
      screwThread: 'M3',
    };
    expect(() => rejectionWay(answerableJoint(), theInsert(), rejection, 'bore')).toThrow('computes no bore');
  });
});
