import type { JointDocument } from '../../storage/document.ts';

/** A value as text with its keys in order, whatever order they were written in. */
const canonical = (value: unknown): string =>
  JSON.stringify(value, (_key, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([one], [other]) => (one < other ? -1 : 1)))
      : inner,
  );

/** Whether two documents say the same. */
export const isSameDocument = (one: JointDocument, other: JointDocument): boolean =>
  one === other || canonical(one) === canonical(other);
