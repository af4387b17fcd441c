import { describe, expect, test } from 'vitest';
import { NumberList } from '../../src/solids/number-list.ts';

const listOf = (threes: number) => {
  const list = new NumberList();
  for (let at = 0; at < threes; at += 1) list.add(at, at + 0.25, -at);
  return list;
};

describe('NumberList', () => {
  test.each([0, 1, 64, 65, 192, 200_000])('keeps the order of %i threes', (threes) => {
    const list = listOf(threes);
    let next = 0;
    let inOrder = true;
    for (const block of list.blocks()) {
      for (let at = 0; at < block.length; at += 3, next += 1)
        inOrder &&= block[at] === next && block[at + 1] === next + 0.25 && block[at + 2] === 0 - next;
    }
    expect({ next, inOrder, length: list.length }).toEqual({
      next: threes,
      inOrder: true,
      length: 3 * threes,
    });
  });
  test('has blocks of whole threes', () => {
    expect(
      listOf(70_000)
        .blocks()
        .every(({ length }) => length % 3 === 0),
    ).toBe(true);
  });
});
