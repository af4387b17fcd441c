import type { EndKind, FoundHole } from '../core/hole-finding/hole.ts';
import type { ReadingNotice, ReadingRefusal, SolidFormat } from '../solids/reading.ts';
import { countWord, decimalText, lengthText } from './amount.ts';

const BYTES_PER_MEGABYTE = 1_000_000;
const megabytes = (bytes: number): string => `${decimalText(bytes / BYTES_PER_MEGABYTE, 1)}\u00a0MB`;
const whole = (value: number): string => decimalText(value, 0);

export const SOLID_FORMATS = {
  'stl-binary': 'binary STL',
  'stl-text': 'STL as text',
  'three-mf': '3MF',
} as const satisfies Record<SolidFormat, string>;

/** How the axis of a hole lies when the part is printed as it stands in the file. */
export const LIE_NAMES = {
  vertical: 'upright',
  horizontal: 'lying',
  oblique: 'oblique',
} as const satisfies Record<FoundHole['lie'], string>;

const DEGREES_PER_RADIAN = 180 / Math.PI;

/** The angle between the axis and z: "32°". */
export const leanText = ({ tilt }: Pick<FoundHole, 'tilt'>): string => `${whole(tilt * DEGREES_PER_RADIAN)}°`;

const MOUTHS = {
  open: '',
  closed: 'closed mouth, ',
  narrower: 'narrower mouth, ',
  wider: 'wider mouth, ',
} as const satisfies Record<EndKind, string>;
const FAR_ENDS = {
  open: 'through',
  closed: 'blind',
  narrower: 'narrower below',
  wider: 'wider below',
} as const satisfies Record<EndKind, string>;

/** What stands at the ends of a hole: "blind", "wider mouth, through". */
export const endsText = ({ ends }: Pick<FoundHole, 'ends'>): string =>
  `${MOUTHS[ends.mouth]}${FAR_ENDS[ends.far]}`;

/** Why a file of a part is not read, and what to do. */
export function sentenceOfReading(refusal: ReadingRefusal): string {
  switch (refusal.code) {
    case 'empty-file':
      return 'The file is empty.';
    case 'not-a-solid':
      return 'This is neither an STL nor a 3MF file. Export the part as one of them.';
    case 'file-too-large':
      return `The file has ${megabytes(refusal.bytes)}; up to ${megabytes(refusal.limit)} are read. Export it more coarsely.`;
    case 'unpacks-too-large':
      return `The file unpacks to more than ${megabytes(refusal.limit)} and is left alone.`;
    case 'too-many-triangles':
      return `The part has ${whole(refusal.triangles)} triangles; up to ${whole(refusal.limit)} are read. Export it more coarsely.`;
    case 'truncated':
      return 'The file ends too early. Was it copied to its end?';
    case 'wrong-length':
      return 'The file is longer than its count of triangles says. Export it again.';
    case 'damaged-text':
      return `The text of the STL cannot be read from line ${whole(refusal.line)} on.`;
    case 'not-a-number':
      return `Triangle ${whole(refusal.triangle)} has a corner that is no number. Export it again.`;
    case 'out-of-range':
      return 'A corner lies kilometres away. Export the part in millimetres.';
    case 'no-triangles':
      return 'There is no surface in it.';
    case 'damaged-zip':
      return 'The 3MF file is damaged: its packing cannot be read.';
    case 'encrypted':
      return 'The 3MF file is locked. Export it without protection.';
    case 'packed-otherwise':
      return 'The 3MF file is packed in a way that its standard does not know.';
    case 'no-model':
      return 'There is no model in the 3MF file.';
    case 'several-models':
      return `The 3MF file holds ${countWord(refusal.models)} models. Export the one with the hole.`;
    case 'damaged-model':
      return `The model of the 3MF file cannot be read: ${refusal.part}${refusal.line === undefined ? '' : `, line ${whole(refusal.line)}`}.`;
    case 'unknown-unit':
      return `The 3MF file is in “${refusal.unit}”, which its standard does not know.`;
    case 'needs-extension':
      return `The 3MF file asks for “${refusal.extension}”, which is not read here. Export a plain one.`;
    case 'missing-object':
      return `The 3MF file asks for object ${refusal.object}, which is not in it.`;
    case 'circular-object':
      return `Object ${refusal.object} of the 3MF file is a part of itself.`;
  }
}

/** What to look at before the holes of a file are believed. */
export function sentenceOfReadingNotice(notice: ReadingNotice): string {
  switch (notice.code) {
    case 'very-small':
      return `The part is only ${lengthText(notice.extent)} long. An STL has no unit: was it drawn in inches or metres?`;
    case 'very-large':
      return `The part is ${lengthText(notice.extent)} long. An STL has no unit: was it drawn in another one?`;
    case 'several-parts':
      return `The file holds ${countWord(notice.parts)} parts; the holes of all are listed.`;
    case 'left-out':
      return `${whole(notice.triangles)} triangles without area were left out.`;
  }
}
