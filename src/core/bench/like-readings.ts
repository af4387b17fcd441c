/** Readings near enough to be one size, from the least up. */
export interface LikeReadings<Item> {
  readonly least: number;
  readonly greatest: number;
  readonly items: readonly Item[];
}

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
  const groups: { least: number; greatest: number; items: Item[] }[] = [];
  for (const item of items.toSorted((one, other) => readingOf(one) - readingOf(other))) {
    const reading = readingOf(item);
    const last = groups.at(-1);
    // A hair of rounding is no difference: 4.40 and 4.45 are within 0.05.
    if (last !== undefined && reading - last.least <= span + ROUNDING) {
      last.greatest = reading;
      last.items.push(item);
    } else groups.push({ least: reading, greatest: reading, items: [item] });
  }
  return groups.map((group) => ({
    ...group,
    items: group.items.toSorted((one, other) => items.indexOf(one) - items.indexOf(other)),
  }));
}

const ROUNDING = 1e-9;
