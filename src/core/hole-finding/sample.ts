/** The golden section: its multiples spread evenly and keep step with no pattern of whole numbers. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** About so many of the items at most, spread over all of them without a step that a pattern could share. */
export function sampleOf<Item>(items: readonly Item[], most: number): readonly Item[] {
  if (items.length <= most) return items;
  const share = most / items.length;
  return items.filter((_, place) => place * GOLDEN - Math.floor(place * GOLDEN) < share);
}
