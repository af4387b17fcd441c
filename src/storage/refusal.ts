/** Why a document or one value of it was not taken: where, what kind of fault, and the facts of the sentence. */
export interface Refusal {
  /** Path of the key, as joint.host.wall.count or drawer.2.length_mm; empty for the whole document. */
  readonly path: string;
  readonly code: RefusalCode;
  readonly facts: Readonly<Record<string, number | string>>;
}

export type RefusalCode =
  | 'not-json'
  | 'too-large'
  | 'not-ours'
  | 'newer-version'
  | 'missing'
  | 'unknown-key'
  | 'wrong-kind'
  | 'not-a-choice'
  | 'below-limit'
  | 'above-limit'
  | 'too-few'
  | 'too-many'
  | 'not-whole'
  | 'unknown-row'
  | 'no-such-head'
  | 'no-such-washer'
  | 'clearance-below-screw'
  | 'clearance-above-head'
  | 'layer-above-line'
  | 'hole-prints-shut'
  | 'hole-beyond-boss'
  | 'hole-beyond-part'
  | 'duplicate-id'
  | 'no-such-insert'
  | 'no-such-printer'
  | 'hole-looks-like-inches'
  | 'hole-looks-like-radius'
  | 'hole-swapped'
  | 'hole-error-implausible'
  | 'seat-contradicts-side'
  | 'sleeve-not-wider'
  | 'sleeve-under-countersunk'
  | 'twist-on-one-point'
  | 'tilt-without-arm'
  | 'screw-beyond-edge'
  | 'looks-like-inches'
  | 'pilot-not-below-knurl'
  | 'length-and-knurl-swapped'
  | 'no-brass-left'
  | 'knurl-too-wide'
  | 'pilot-below-thread'
  | 'no-bite'
  | 'too-long'
  | 'too-short'
  | 'knurled-longer-than-insert';
