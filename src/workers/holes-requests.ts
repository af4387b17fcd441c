import type { HolesFound } from '../core/hole-finding/find-holes.ts';
import type { ReadingNotice, ReadingRefusal, SolidFormat } from '../solids/reading.ts';

/** What a file that a person gave says: the holes of its part, or why it is not read. */
export type HolesOfFile =
  | {
      readonly kind: 'found';
      readonly found: HolesFound;
      readonly format: SolidFormat;
      /** Triangles of the part. */
      readonly triangles: number;
      /** Largest side of the box round the part, mm. */
      readonly extent: number;
      readonly notices: readonly ReadingNotice[];
    }
  | { readonly kind: 'refused'; readonly refusal: ReadingRefusal };

export interface HolesRequests {
  /** The file itself is handed over, not its bytes: the worker reads them. */
  readonly 'holes-of-file': { readonly input: Blob; readonly output: HolesOfFile };
}
