/**
 * The one of a list with the smallest size.
 *
 * @param ones - at least one
 * @param sizeOf - size of each, asked once
 * @returns the first of the smallest, with its size
 */
export function leastBy<One>(
  ones: readonly One[],
  sizeOf: (one: One) => number,
): { readonly one: One; readonly size: number } {
  let least: { readonly one: One; readonly size: number } | undefined;
  for (const one of ones) {
    const size = sizeOf(one);
    if (least === undefined || size < least.size) least = { one, size };
  }
  if (least === undefined) throw new Error('the least of nothing was asked');
  return least;
}
