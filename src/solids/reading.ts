import type { Mesh } from './mesh.ts';

/** Bounds of what is read: far above a part for a printer, far below what would stop a page. */
export const READING_LIMITS = {
  /** Of the file, bytes. */
  fileBytes: 100_000_000,
  /** Of one unpacked model of a 3MF file, bytes. */
  unpackedBytes: 400_000_000,
  triangles: 3_000_000,
  /** Farthest coordinate, mm. */
  coordinate: 1e7,
} as const;

/** Why a file is not read. */
export type ReadingRefusal =
  | { readonly code: 'empty-file' }
  | { readonly code: 'not-a-solid' }
  | { readonly code: 'file-too-large'; readonly bytes: number; readonly limit: number }
  | { readonly code: 'unpacks-too-large'; readonly bytes: number; readonly limit: number }
  | { readonly code: 'too-many-triangles'; readonly triangles: number; readonly limit: number }
  /** An STL that is shorter than its count of triangles says, or whose text stops in the middle. */
  | { readonly code: 'truncated'; readonly bytes: number; readonly expected?: number }
  /** An STL that is longer than its count of triangles says. */
  | { readonly code: 'wrong-length'; readonly bytes: number; readonly expected: number }
  | { readonly code: 'damaged-text'; readonly line: number }
  | { readonly code: 'not-a-number'; readonly triangle: number }
  | { readonly code: 'out-of-range'; readonly coordinate: number; readonly limit: number }
  | { readonly code: 'no-triangles' }
  | { readonly code: 'damaged-zip' }
  | { readonly code: 'encrypted' }
  | { readonly code: 'packed-otherwise'; readonly method: number }
  | { readonly code: 'no-model' }
  | { readonly code: 'several-models'; readonly models: number }
  | { readonly code: 'damaged-model'; readonly part: string; readonly line?: number }
  | { readonly code: 'unknown-unit'; readonly unit: string }
  | { readonly code: 'needs-extension'; readonly extension: string }
  /** An item or a component asks for an object that is not there, or for itself. */
  | { readonly code: 'missing-object'; readonly object: string }
  | { readonly code: 'circular-object'; readonly object: string };

/** What to look at before the holes are believed. */
export type ReadingNotice =
  /** An STL has no unit: a part this small may have been drawn in metres or inches. */
  | { readonly code: 'very-small'; readonly extent: number }
  /** An STL has no unit: a part this large may have been drawn in micrometres. */
  | { readonly code: 'very-large'; readonly extent: number }
  /** The file holds several parts; all are read, each where it stands. */
  | { readonly code: 'several-parts'; readonly parts: number }
  /** Triangles without area that were left out. */
  | { readonly code: 'left-out'; readonly triangles: number };

export type SolidFormat = 'stl-binary' | 'stl-text' | 'three-mf';

export interface Solid {
  readonly mesh: Mesh;
  readonly format: SolidFormat;
  /** Largest side of the box round the part, mm. */
  readonly extent: number;
  readonly notices: readonly ReadingNotice[];
}

export interface Refused {
  readonly kind: 'refused';
  readonly refusal: ReadingRefusal;
}

export type Reading = { readonly kind: 'read'; readonly solid: Solid } | Refused;

/** What a reader found before it is checked. */
export interface Corners {
  readonly kind: 'corners';
  /** x, y and z of each corner, three corners a triangle. */
  readonly corners: Float64Array;
  readonly parts: number;
}

/** Something in steps: yields the share done, 0 to 1, whenever whoever waits may want to stop. */
export type InSteps<Result> =
  | Generator<number, Result, undefined>
  | AsyncGenerator<number, Result, undefined>;

export const refused = (refusal: ReadingRefusal): Refused => ({ kind: 'refused', refusal });

/** Goes through all steps at once. */
export async function atOnce<Result>(steps: InSteps<Result>): Promise<Result> {
  for (;;) {
    const step = await steps.next();
    if (step.done === true) return step.value;
  }
}

/** Steps as a stretch of a longer way, from one share done to another. */
export async function* stretch<Result>(
  steps: InSteps<Result>,
  { from, to }: { readonly from: number; readonly to: number },
): AsyncGenerator<number, Result, undefined> {
  for (;;) {
    const step = await steps.next();
    if (step.done === true) return step.value;
    yield from + (to - from) * step.value;
  }
}
