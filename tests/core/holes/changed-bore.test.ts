import { describe, test } from 'vitest';
import { biteFactor } from '../../../src/core/holes/bore.ts';
import { changedBore } from '../../../src/core/holes/changed-bore.ts';
import { insertDimensions } from '../../../src/core/inserts/insert-dimensions.ts';
import { entryFrom } from '../../../src/core/sources/derived.ts';
import { given, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { expectWays } from '../../support/ways.ts';

const insert = insertDimensions(theInsert({ knurlDiameter_mm: [5], pilotDiameter_mm: [4.25] }));
const bore = (value: number) => given('D_t', value, 'mm');

describe('changedBore', () => {
  test('of 4.31 mm expected that comes out 0.07 mm tighter is 4.24 mm, and leads to both (hand calculation)', () => {
    const changed = changedBore(entryFrom(bore(4.31)), -0.07);
    expectRelative(changed.value, 4.24);
    expectWays([changed, biteFactor(insert, bore(4.31), entryFrom(changed))]);
  });
});
