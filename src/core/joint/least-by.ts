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
  const [first, ...others] = ones;
  if (first === undefined) throw new Error('the least of nothing was asked');
  let one: One = first;
  let size = sizeOf(first);
  for (const other of others) {
    const found = sizeOf(other);
    if (found >= size) continue;
    one = other;
    size = found;
  }
  return { one, size };
}
