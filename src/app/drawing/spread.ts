export interface Spreadable {
  /** Middle where it would like to be. */
  readonly ideal: number;
  readonly size: number;
}

export interface SpreadRange {
  readonly from: number;
  readonly to: number;
  readonly gap: number;
}

interface Block {
  readonly members: readonly Spreadable[];
  readonly size: number;
  readonly start: number;
}

/**
 * Middles of things in a row that must not overlap, each as near as possible to where it would like to be
 * (least squares), in the order given and inside the range as long as they fit in it.
 */
export function spread(items: readonly Spreadable[], range: SpreadRange): readonly number[] {
  let blocks: readonly Block[] = [];
  for (const item of items) blocks = settle([...blocks, block([item], range)], range);
  return blocks.flatMap((each) => memberMiddles(each, range.gap));
}

function block(members: readonly Spreadable[], { from, to, gap }: SpreadRange): Block {
  const offsets = members.map((_, index) =>
    members.slice(0, index).reduce((sum, { size }) => sum + size + gap, 0),
  );
  const size = members.reduce((sum, member) => sum + member.size, 0) + gap * (members.length - 1);
  const wishes = members.map(({ ideal, size: own }, index) => ideal - own / 2 - (offsets[index] ?? 0));
  const wish = wishes.reduce((sum, each) => sum + each, 0) / members.length;
  return { members, size, start: Math.max(from, Math.min(wish, to - size)) };
}

/** Joins the last blocks as long as they overlap. */
function settle(blocks: readonly Block[], range: SpreadRange): readonly Block[] {
  const last = blocks.at(-1);
  const before = blocks.at(-2);
  if (!last || !before || before.start + before.size + range.gap <= last.start) return blocks;
  return settle([...blocks.slice(0, -2), block([...before.members, ...last.members], range)], range);
}

function memberMiddles({ members, start }: Block, gap: number): readonly number[] {
  let top = start;
  return members.map(({ size }) => {
    const middle = top + size / 2;
    top += size + gap;
    return middle;
  });
}
