/** One value of a document replaced; undefined takes an optional key out. */
export interface Edit {
  /** Path of the key, as joint.host.wall.count or drawer.2.length_mm. */
  readonly path: string;
  readonly value: unknown;
}

function replaced(root: unknown, [key, ...rest]: readonly string[], value: unknown): unknown {
  if (key === undefined) return value;
  if (Array.isArray(root)) {
    const list: readonly unknown[] = root;
    return list.map((item, index) => (String(index) === key ? replaced(item, rest, value) : item));
  }
  const entries = typeof root === 'object' && root !== null ? Object.entries(root) : [];
  const before: unknown = entries.find(([name]) => name === key)?.[1];
  const after = replaced(before, rest, value);
  const others = entries.filter(([name]) => name !== key);
  if (after === undefined) return Object.fromEntries(others);
  return before === undefined
    ? Object.fromEntries([...entries, [key, after]])
    : Object.fromEntries(entries.map(([name, old]) => [name, name === key ? after : old]));
}

/**
 * The document with the edits in it, not yet through the door. Nothing that was is changed; untouched branches are
 * shared.
 */
export function withEdits(document: unknown, edits: readonly Edit[]): unknown {
  return edits.reduce<unknown>((root, { path, value }) => replaced(root, path.split('.'), value), document);
}
