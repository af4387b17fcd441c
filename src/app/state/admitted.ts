import type { JointDocument } from '../../storage/document.ts';
import type { Refusal } from '../../storage/refusal.ts';
import type { ResolvedDocument } from '../../storage/resolve.ts';

export type Admitted =
  | { readonly kind: 'admitted'; readonly document: JointDocument; readonly resolved: ResolvedDocument }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

/** The one door of the sheet, as a value: it is loaded after the answers stand there. */
export type Admit = (candidate: unknown) => Admitted;
