import { describe, expect, test } from 'vitest';
import { insertDimensions } from '../../../src/core/inserts/insert-dimensions.ts';
import { boreScatter, expectedBore } from '../../../src/core/joint/bore-steps.ts';
import { boreDeviationIn, boreOf } from '../../../src/core/joint/joint-bore.ts';
import { entry, entryFrom } from '../../../src/core/sources/derived.ts';
import { answerableJoint, type Changes, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const HOLES: readonly (readonly [string, Changes])[] = [
  ['drawn as a circle', {}],
  ['drawn as a polygon', { holes: { facets: 14 } }],
  ['compensated in the slicer', { holes: { compensation: 'in-slicer' } }],
  ['there, as drawn', { holes: { existing: { diameter_mm: 4.7, known: 'as-drawn' } } }],
  ['there, as measured', { holes: { existing: { diameter_mm: 4.37, known: 'as-measured' } } }],
];
const insert = insertDimensions(theInsert());

describe.each(HOLES)('of a hole %s', (_name, changes) => {
  const joint = answerableJoint(changes);
  const bore = boreOf(joint, insert);
  test('expectedBore is the plain number, and what its formula comes to', () => {
    const derived = expectedBore(joint, bore);
    expect(derived.symbol).toBe('D');
    expectRelative(derived.value, bore.expected);
    expectWays([derived]);
  });
  test('boreScatter is the plain number, and what its formula comes to', () => {
    const pilotUncertainty = entry('u(D_p)', 0.021, 'mm');
    const derived = boreScatter(joint, { drawn: entryFrom(bore.drawn), pilotUncertainty });
    expectRelative(derived.value, boreDeviationIn(joint, bore.drawn.value, 0.021));
    expectWays([derived]);
  });
});
