import { CATALOGUE } from '../../data/catalogue.ts';
import type { JointDocument } from '../../storage/document.ts';
import { openDocument } from '../../storage/open-document.ts';
import type { Refusal } from '../../storage/refusal.ts';
import { type ResolvedDocument, resolveDocument } from '../../storage/resolve.ts';

export type Admitted =
  | { readonly kind: 'admitted'; readonly document: JointDocument; readonly resolved: ResolvedDocument }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

/** The one door of the sheet: format and ranges first, then the rows it names and how its parts fit. */
export function admit(candidate: unknown): Admitted {
  const opened = openDocument(candidate);
  if (opened.kind === 'refused') return opened;
  const resolved = resolveDocument(opened.document, CATALOGUE);
  return resolved.kind === 'refused'
    ? resolved
    : { kind: 'admitted', document: opened.document, resolved: resolved.value };
}
