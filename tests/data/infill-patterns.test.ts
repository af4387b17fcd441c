import { expect, test } from 'vitest';
import { INFILL_PATTERNS } from '../../src/data/infill-patterns.ts';

test('INFILL_PATTERNS take upright walls as prismatic, and cubic and gyroid as cellular', () => {
  const families = INFILL_PATTERNS.map(({ id, family }) => [id, family]);
  expect(families).toEqual([
    ['grid', 'prismatic'],
    ['triangles', 'prismatic'],
    ['honeycomb', 'prismatic'],
    ['rectilinear', 'prismatic'],
    ['cubic', 'cellular'],
    ['gyroid', 'cellular'],
  ]);
});
