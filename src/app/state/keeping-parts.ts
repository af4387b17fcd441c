import type { JointDocument } from '../../storage/document.ts';

type Members = Readonly<Record<string, unknown>>;

const isMembers = (value: unknown): value is Members =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function kept(before: unknown, after: unknown): unknown {
  if (Object.is(before, after)) return before;
  if (Array.isArray(before) && Array.isArray(after)) {
    const list: readonly unknown[] = after.map((item, index) => kept(before[index], item));
    const isSame = list.length === before.length && list.every((item, index) => item === before[index]);
    return isSame ? before : list;
  }
  if (!isMembers(before) || !isMembers(after)) return after;
  const names = Object.keys(after);
  const parts = names.map((name) => kept(before[name], after[name]));
  const isSame =
    names.length === Object.keys(before).length &&
    names.every((name, index) => Object.hasOwn(before, name) && parts[index] === before[name]);
  return isSame ? before : Object.fromEntries(names.map((name, index) => [name, parts[index]]));
}

/**
 * A document with each part that says the same as before kept as the very object it was, so that whoever shows that
 * part has nothing to draw anew; the document before itself where all of it says the same, in whatever order.
 */
export const keepingParts = (before: JointDocument, after: JointDocument): JointDocument =>
  kept(before, after) as JointDocument;
