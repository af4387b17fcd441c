import type { JointDocument } from '../../storage/document.ts';
import { openDocumentText } from '../../storage/open-document.ts';
import type { Refusal } from '../../storage/refusal.ts';
import { admit } from './admit.ts';
import { KEPT_KEY } from './keep-joint.ts';

const ASIDE = 'knurlwright joint set aside';
/** Copies set aside before the page stops keeping anything. */
const GREATEST_ASIDE = 20;

export type Kept =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'read'; readonly document: JointDocument }
  /** What was kept cannot be used; its text is whole, here and under another key. */
  | {
      readonly kind: 'set-aside';
      readonly text: string;
      readonly refusals: readonly Refusal[];
      /** False: it still stands in its old place, and nothing may be kept over it. */
      readonly moved: boolean;
    };

/** The text of a document as a file or a kept copy: through the format, its ranges, and the tables. */
export function readDocumentText(text: string) {
  const opened = openDocumentText(text);
  return opened.kind === 'refused' ? opened : admit(opened.document);
}

/** The joint that was on the sheet when this device last had it open. */
export function keptJoint(storage: () => Storage): Kept {
  let text: string | null;
  try {
    text = storage().getItem(KEPT_KEY);
  } catch {
    return { kind: 'nothing' };
  }
  if (text === null) return { kind: 'nothing' };
  const read = readDocumentText(text);
  if (read.kind === 'admitted') return { kind: 'read', document: read.document };
  return { kind: 'set-aside', text, refusals: read.refusals, moved: setAside(text, storage) };
}

function setAside(text: string, storage: () => Storage): boolean {
  try {
    const free = Array.from({ length: GREATEST_ASIDE }, (_, index) => `${ASIDE} ${index + 1}`).find((key) => {
      const there = storage().getItem(key);
      return there === null || there === text;
    });
    if (free === undefined) return false;
    storage().setItem(free, text);
    if (storage().getItem(free) !== text) return false;
    storage().removeItem(KEPT_KEY);
    return true;
  } catch {
    return false;
  }
}
