/** Ladders of ratios that read as round, from the finest to the widest; each has 1 in it. */
const LADDERS: readonly (readonly number[])[] = [
  [0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.4, 1.6, 1.8, 2],
  [0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.2, 1.5, 2, 2.5, 3],
  [0.1, 0.2, 0.3, 0.5, 0.7, 1, 1.5, 2, 3, 5, 10],
];
const MOST_TICKS = 8;

/**
 * Ticks of an axis of ratios that holds both ends and 1, with a tick beyond each where the widest ladder has one; a ratio
 * beyond that is drawn at the end of the axis.
 */
export function ratioTicks(low: number, high: number): readonly number[] {
  const runs = LADDERS.map((ladder) => {
    const from = ladder.findLastIndex((tick) => tick <= Math.min(low, 0.99));
    const to = ladder.findIndex((tick) => tick >= Math.max(high, 1.01));
    return {
      ticks: ladder.slice(Math.max(0, from), to < 0 ? ladder.length : to + 1),
      isWide: from >= 0 && to >= 0,
    };
  });
  const fitting = runs.find(({ ticks, isWide }) => isWide && ticks.length <= MOST_TICKS);
  return (fitting ?? runs.at(-1))?.ticks ?? [];
}
