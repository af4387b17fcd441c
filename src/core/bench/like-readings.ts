/** Readings near enough to be one size, from the least up. */
export interface LikeReadings<Item> {
  readonly least: number;
  readonly greatest: number;
  readonly items: readonly Item[];
}

/** A hair of rounding is no difference: 4.40 and 4.45 are within 0.05. */
const ROUNDING = 1e-9;

/**
 * Items put together by a reading: those within a span of the least of their group.
 *
 *     group: x ≤ x_least + span
 *
 * Several readings of one hole differ; holes that somebody meant to differ do so by more.
 *
 * @param items - anything that has a reading
 * @param readingOf - its reading, in the unit of the span
 * @param span - widest group, ≥ 0
 * @returns groups from the least reading up, each with its items in their order
 */
export function likeReadings<Item>(
  items: readonly Item[],
  readingOf: (item: Item) => number,
  span: number,
): readonly LikeReadings<Item>[] {
  const placed = items.map((item, place) => ({ item, place, reading: readingOf(item) }));
  const groups: (typeof placed)[] = [];
  for (const one of placed.toSorted((first, second) => first.reading - second.reading)) {
    const last = groups.at(-1);
    if (last?.[0] !== undefined && one.reading - last[0].reading <= span + ROUNDING) last.push(one);
    else groups.push([one]);
  }
  return groups.map((group) => ({
    least: group[0]?.reading ?? 0,
    greatest: group.at(-1)?.reading ?? 0,
    items: group.toSorted((first, second) => first.place - second.place).map(({ item }) => item),
  }));
}
