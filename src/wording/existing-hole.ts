import type { HoleVerdict } from '../core/holes/hole-verdict.ts';
import type { ExistingFinding } from '../core/joint/existing-finding.ts';
import type { Impossible, Rescue, RescueCode } from '../core/recommend/rescue.ts';
import type { Derived } from '../core/sources/derived.ts';
import {
  decimalText,
  derivedText,
  diameterNumber,
  lengthNumber,
  lengthText,
  NO_BREAK_SPACE,
  percentText,
} from './amount.ts';
import { type Figure, figure, type Sentence, said } from './sentence.ts';

/** What the hole is to the insert, in one word or two. */
export const VERDICT_NAMES = {
  fits: 'Fits',
  loose: 'Loose',
  tight: 'Tight',
  'too-small': 'Too small',
  'too-shallow': 'Too shallow',
  'no-bite': 'No bite',
} as const satisfies Record<HoleVerdict, string>;

const shown = (derived: Derived): Figure => figure(derived, derivedText(derived));
const length = (derived: Derived): Figure => figure(derived, lengthText(derived.value));
const MM = `${NO_BREAK_SPACE}mm`;
const bore = (derived: Derived): Figure => figure(derived, `${diameterNumber(derived.value)}${MM}`);

const VERDICTS = {
  fits: ({ limits }) =>
    said`The pilot of ${length(limits.pilot)} drops in, and up to ${length(limits.largest)} the knurl bites enough.`,
  loose: ({ biteFactor, limits }) =>
    said`Above ${length(limits.largest)} the knurl bites too little: it keeps ${figure(biteFactor, percentText(biteFactor.value))} of its hold.`,
  tight: ({ limits }) =>
    said`The pilot of ${length(limits.pilot)} does not drop in. A hot insert still melts its way; start it square and slowly.`,
  'too-small': ({ limits, meltVolume, meltVolumeWanted }) =>
    said`The pilot of ${length(limits.pilot)} finds no way in. The insert would push ${shown(meltVolume)} of plastic ahead of it in place of ${shown(meltVolumeWanted)}: it tilts, and the part bulges.`,
  'too-shallow': ({ depthNeeded, given }) =>
    said`Insert and melt need ${length(depthNeeded)}, and the hole is ${lengthText(given?.depth.value ?? 0)} deep: the insert stands proud, or the floor gives way.`,
  'no-bite': ({ limits }) =>
    said`The knurl is ${length(limits.knurl)} wide and does not touch the wall: the insert falls in.`,
} as const satisfies Record<HoleVerdict, (finding: ExistingFinding) => Sentence>;

/** What the hole that is there is to the insert, and why. */
export const sentenceOfVerdict = (finding: ExistingFinding): Sentence => VERDICTS[finding.verdict](finding);

/** How the bore is known. */
export const sentenceOfBore = ({
  existing,
  bore: found,
}: Pick<ExistingFinding, 'existing' | 'bore'>): Sentence =>
  existing.known === 'as-measured'
    ? said`A bore of ${bore(found)}, as measured.`
    : said`Drawn at ${diameterNumber(existing.diameter)} mm, it is expected to come out at ${bore(found)}.`;

/** What is known of the depth. */
export function sentenceOfDepth({ given, depthNeeded }: ExistingFinding): Sentence {
  const needed = length(depthNeeded);
  if (!given)
    return said`Its depth is not given. Insert and melt need ${needed}; measure it before you set anything.`;
  return given.goesThrough
    ? said`It goes through: the melt comes out behind and wants to be cut off.`
    : said`Of its ${lengthText(given.depth.value)} insert and melt need ${needed}.`;
}

const RESCUE_NAMES = {
  'another-insert': 'Another insert',
  'open-up': 'Open the hole up',
  'drill-deeper': 'Drill it deeper',
  'nut-behind': 'A nut behind',
  'self-tapping-insert': 'A self-tapping insert',
  reprint: 'Print anew',
} as const satisfies Record<RescueCode, string>;

export const nameOfRescue = (code: RescueCode): string => RESCUE_NAMES[code];

type Possible<Code extends RescueCode> = Extract<Rescue, { readonly kind: 'possible'; readonly code: Code }>;

const POSSIBLE: { readonly [Code in RescueCode]: (rescue: Possible<Code>) => Sentence } = {
  'another-insert': ({ verdict }) =>
    verdict === 'tight' ? said`Its pilot melts its way into this hole.` : said`It fits this hole as it is.`,
  'open-up': ({ drill, wallLeft }) =>
    said`Ream or drill to ${length(drill)}, straight and slowly. Of the printed wall ${length(wallLeft)} is left. Drill a scrap part first and measure what the drill makes of it.`,
  'drill-deeper': ({ depth }) => said`Drill to a depth of ${length(depth)} at the same diameter.`,
  'nut-behind': ({ nut, washer, screwLength }) =>
    said`${nut.standard}${washer ? ` on a washer ${washer.standard}` : ''}, with a screw of ${figure(screwLength, `${lengthNumber(screwLength.value).replace(/\.0$/, '')}${MM}`)}, where you can reach the far side. The whole part is then pressed, so tighten it again later.`,
  'self-tapping-insert': ({ room, wallShare }) =>
    said`Cuts its way in without heat, and stretches the boss. It wants the hole that its maker names, ${`${room.least} to ${room.most}`} mm of room for chips below it and a wall of ${`${wallShare.least} to ${wallShare.most}`} of its diameter. No force is known for printed parts.`,
  reprint: ({ drawn, depth }) =>
    said`Draw ⌀ ${bore(drawn)}, ${length(depth)} deep: the hole that this insert wants.`,
};

const IMPOSSIBLE: {
  readonly [Why in Impossible['why']]: (rescue: Extract<Impossible, { readonly why: Why }>) => Sentence;
} = {
  'none-in-drawer': () => said`No other insert of the drawer fits this hole and this joint.`,
  'not-too-small': ({ bore: found }) => said`At ${length(found)} it is wide enough already.`,
  'no-drill': ({ least, greatest }) =>
    said`No drill in steps of 0.1 mm lies between ${length(least)} and ${length(greatest)}.`,
  'wall-drilled-away': ({ drill, wallLeft, least }) =>
    said`A drill of ${length(drill)} would leave ${length(wallLeft)} of wall, less than one line of ${lengthText(least)}.`,
  'no-floor-left': ({ depth, thickness, floor }) =>
    said`A hole of ${length(depth)} in a part of ${lengthText(thickness)} would leave less than ${lengthText(floor)} of floor.`,
  'still-does-not-fit': () => said`Even then the hole would not take this insert.`,
  'no-nut-known': ({ thread }) => said`No nut is known for ${thread}.`,
  'falls-through': ({ outside, hole }) =>
    said`What it bears on is ${lengthText(outside)} wide and falls through a hole of ${length(hole)}.`,
  'no-screw-length': ({ least, longest }) =>
    said`The screw would have to be ${figure(least, `${decimalText(least.value, 1)}${MM}`)} long; the longest standard one is ${decimalText(longest, 0)} mm.`,
  'no-room': () => said`The part has no room for the hole of this insert.`,
};

/** What to do, or why it is no way out here. */
export function sentenceOfRescue(rescue: Rescue): Sentence {
  // Each table holds the words of its own code, which the compiler does not follow through the union.
  return rescue.kind === 'possible'
    ? (POSSIBLE[rescue.code] as (one: Rescue) => Sentence)(rescue)
    : (IMPOSSIBLE[rescue.why] as (one: Impossible) => Sentence)(rescue);
}
