import type { CalibrationNotice } from '../core/holes/calibration-notices.ts';
import type { HoleAxis, HoleInstrument } from '../core/holes/hole-reading.ts';
import type { CompensationRule } from '../core/holes/slicer-compensation.ts';
import type { Derived } from '../core/sources/derived.ts';
import { capitalised, countWord, decimalText, diameterNumber, lengthText } from './amount.ts';
import { figure, type Sentence, said } from './sentence.ts';

export const INSTRUMENT_NAMES = {
  'caliper-jaws': 'inside jaws',
  'pin-gauge': 'largest pin',
  'drill-shank': 'largest drill shank',
} as const satisfies Record<HoleInstrument, string>;

export const HOLE_AXIS_NAMES = { vertical: 'vertical', horizontal: 'horizontal' } as const satisfies Record<
  HoleAxis,
  string
>;

const RULE_SENTENCES = {
  'drawn-in-cad':
    'The hole is drawn larger in CAD. Leave the slicer’s own hole compensation at 0: with both the hole would be enlarged twice.',
  'slicer-takes-error':
    'The slicer enlarges the holes, so the hole is drawn as wide as it shall come out. Do not draw it larger as well.',
  'slicer-leaves-rest':
    'Leave the slicer’s compensation as it was when the gauge was printed. The readings show what it leaves, and that is drawn for.',
  'gauge-was-compensated':
    'The gauge was printed with the slicer’s compensation, and this joint is to be printed without. What was read does not apply: print a gauge without it, or let the slicer compensate this joint too.',
} as const satisfies Record<CompensationRule['code'], string>;

/** Where a joint's hole is corrected, and what must not be done besides. */
export const sentenceOfRule = (code: CompensationRule['code']): string => RULE_SENTENCES[code];

/** What to know of a printer's readings; drawn is the hole of the joint, where it was computed. */
export function sentenceOfCalibrationNotice(notice: CalibrationNotice, drawn?: Derived): Sentence {
  switch (notice.code) {
    case 'diameter-extrapolated':
      return said`A hole of ⌀ ${drawnText(notice.drawn, drawn)} lies outside of what was ${notice.of === 'readings' ? 'read here' : 'published'}, ⌀ ${diameterNumber(notice.least)} to ${diameterNumber(notice.greatest)}: the curve is extended to it.`;
    case 'one-diameter':
      return said`All holes have one diameter, ⌀ ${diameterNumber(notice.diameter)}. How the error changes with the diameter is still ours, not your printer’s.`;
    case 'few-readings':
      return notice.count === 0
        ? said`No hole of this printer has been read along this axis. The curve is that of an unknown printer.`
        : said`${capitalised(countWord(notice.count))} ${notice.count === 1 ? 'hole was' : 'holes were'} read; from ${countWord(notice.enough)} on the curve is more your printer’s than ours.`;
    case 'outliers-named':
      return said`${capitalised(countWord(notice.outliers))} of ${countWord(notice.count)} ${notice.outliers === 1 ? 'lies' : 'lie'} far from the others; the table names ${notice.outliers === 1 ? 'it, and it counts' : 'them, and they count'} all the same. Read again before you trust the curve.`;
  }
}

const drawnText = (diameter: number, drawn: Derived | undefined) =>
  drawn?.value === diameter ? figure(drawn, diameterNumber(diameter)) : diameterNumber(diameter);

export const ASSUMED_FROM_VERTICAL =
  'What is assumed comes from vertical holes. Horizontal ones may come out otherwise: read one.';

/** How far a hole comes out of its drawing, in words. */
export function closingWords(error: number): string {
  const size = lengthText(Math.abs(error));
  return error < 0 ? `${size} smaller than drawn` : `${size} larger than drawn`;
}

export const NEXT_HOLE_GAINS_LITTLE =
  'What is left is the scatter from hole to hole, which no coupon takes away.';

const count = (holes: number): string => decimalText(holes, 0);

/** Why more holes were pasted than there is room for. */
export const tooManyHoles = (
  holes: number,
  limits: { readonly room: number; readonly most: number },
): string =>
  `The lines hold ${count(holes)} holes. A printer keeps up to ${limits.most}, and there is room for ${limits.room} more. Nothing is lost: what is not taken stays in the field.`;

/** Why a text is not even looked through. */
export const HOLES_TOO_LARGE = (lines: number): string =>
  `The text has ${count(lines)} lines, more than any gauge has holes. It stays in the field; take out what does not belong to it.`;

export const PERHAPS_SWAPPED =
  'Most of these holes print larger than drawn, which is rare. Are the columns the other way round?';

/** What becomes of pasted lines. */
export function pastedHolesWords(sound: number, faults: number): string {
  const taken =
    sound === 0
      ? 'No line is a hole'
      : sound === 1
        ? 'One line is a hole'
        : `${count(sound)} lines are holes`;
  if (faults === 0) return `${taken}.`;
  return `${taken}; ${faults === 1 ? 'one is' : `${count(faults)} are`} not taken and ${faults === 1 ? 'stays' : 'stay'} in the field:`;
}
