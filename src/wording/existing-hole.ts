import type { HoleVerdict } from '../core/holes/hole-verdict.ts';
import type { ExistingFinding } from '../core/joint/existing-finding.ts';
import type { Impossible, Rescue, RescueCode } from '../core/recommend/rescue.ts';
import { amountText, decimalText, diameterNumber, lengthNumber, lengthText, percentText } from './amount.ts';

/** What the hole is to the insert, in one word or two. */
export const VERDICT_NAMES = {
  fits: 'Fits',
  loose: 'Loose',
  tight: 'Tight',
  'too-small': 'Too small',
  'too-shallow': 'Too shallow',
  'no-bite': 'No bite',
} as const satisfies Record<HoleVerdict, string>;

const VERDICTS = {
  fits: ({ limits }) =>
    `The pilot of ${lengthText(limits.pilot.value)} drops in, and up to ${lengthText(limits.largest.value)} the knurl bites enough.`,
  loose: ({ biteFactor, limits }) =>
    `Above ${lengthText(limits.largest.value)} the knurl bites too little: it keeps ${percentText(biteFactor.value)} of its hold.`,
  tight: ({ limits }) =>
    `The pilot of ${lengthText(limits.pilot.value)} does not drop in. A hot insert still melts its way; start it square and slowly.`,
  'too-small': ({ limits, meltVolume, meltVolumeWanted }) =>
    `The pilot of ${lengthText(limits.pilot.value)} finds no way in. The insert would push ${amountText(meltVolume.value, 'mm³')} of plastic ahead of it in place of ${amountText(meltVolumeWanted.value, 'mm³')}: it tilts, and the part bulges.`,
  'too-shallow': ({ depthNeeded, given }) =>
    `Insert and melt need ${lengthText(depthNeeded.value)}, and the hole is ${lengthText(given?.depth.value ?? 0)} deep: the insert stands proud, or the floor gives way.`,
  'no-bite': ({ limits }) =>
    `The knurl is ${lengthText(limits.knurl.value)} wide and does not touch the wall: the insert falls in.`,
} as const satisfies Record<HoleVerdict, (finding: ExistingFinding) => string>;

/** What the hole that is there is to the insert, and why. */
export const sentenceOfVerdict = (finding: ExistingFinding): string => VERDICTS[finding.verdict](finding);

/** How the bore is known. */
export function sentenceOfBore({ existing, bore }: Pick<ExistingFinding, 'existing' | 'bore'>): string {
  return existing.known === 'as-measured'
    ? `A bore of ${diameterNumber(bore.value)} mm, as measured.`
    : `Drawn at ${diameterNumber(existing.diameter)} mm, it is expected to come out at ${diameterNumber(bore.value)} mm.`;
}

/** What is known of the depth. */
export function sentenceOfDepth({ given, depthNeeded }: ExistingFinding): string {
  const needed = lengthText(depthNeeded.value);
  if (!given)
    return `Its depth is not given. Insert and melt need ${needed}; measure it before you set anything.`;
  return given.goesThrough
    ? `It goes through: the melt comes out behind and wants to be cut off.`
    : `Of its ${lengthText(given.depth.value)} insert and melt need ${needed}.`;
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

const POSSIBLE: { readonly [Code in RescueCode]: (rescue: Possible<Code>) => string } = {
  'another-insert': ({ verdict }) =>
    verdict === 'tight' ? 'Its pilot melts its way into this hole.' : 'It fits this hole as it is.',
  'open-up': ({ drill, wallLeft }) =>
    `Ream or drill to ${lengthText(drill.value)}, straight and slowly. Of the printed wall ${lengthText(wallLeft.value)} is left. Drill a scrap part first and measure what the drill makes of it.`,
  'drill-deeper': ({ depth }) => `Drill to a depth of ${lengthText(depth.value)} at the same diameter.`,
  'nut-behind': ({ nut, washer, screwLength }) =>
    `${nut.standard}${washer ? ` on a washer ${washer.standard}` : ''}, with a screw of ${lengthNumber(screwLength).replace(/\.0$/, '')} mm, where you can reach the far side. The whole part is then pressed, so tighten it again later.`,
  'self-tapping-insert': ({ room, wallShare }) =>
    `Cuts its way in without heat, and stretches the boss. It wants the hole that its maker names, ${room.least} to ${room.most} mm of room for chips below it and a wall of ${wallShare.least} to ${wallShare.most} of its diameter. No force is known for printed parts.`,
  reprint: ({ drawn, depth }) =>
    `Draw ⌀ ${diameterNumber(drawn.value)}, ${lengthText(depth.value)} deep: the hole that this insert wants.`,
};

const IMPOSSIBLE: {
  readonly [Why in Impossible['why']]: (rescue: Extract<Impossible, { readonly why: Why }>) => string;
} = {
  'none-in-drawer': () => 'No other insert of the drawer fits this hole and this joint.',
  'not-too-small': ({ bore }) => `At ${lengthText(bore)} it is wide enough already.`,
  'no-drill': ({ least, greatest }) =>
    `No drill in steps of 0.1 mm lies between ${lengthText(least)} and ${lengthText(greatest)}.`,
  'wall-drilled-away': ({ drill, wallLeft, least }) =>
    `A drill of ${lengthText(drill)} would leave ${lengthText(wallLeft)} of wall, less than one line of ${lengthText(least)}.`,
  'no-floor-left': ({ depth, thickness, floor }) =>
    `A hole of ${lengthText(depth)} in a part of ${lengthText(thickness)} would leave less than ${lengthText(floor)} of floor.`,
  'still-does-not-fit': () => 'Even then the hole would not take this insert.',
  'no-nut-known': ({ thread }) => `No nut is known for ${thread}.`,
  'falls-through': ({ outside, hole }) =>
    `What it bears on is ${lengthText(outside)} wide and falls through a hole of ${lengthText(hole)}.`,
  'no-screw-length': ({ least, longest }) =>
    `The screw would have to be ${decimalText(least, 1)} mm long; the longest standard one is ${decimalText(longest, 0)} mm.`,
  'no-room': () => 'The part has no room for the hole of this insert.',
};

/** What to do, or why it is no way out here. */
export function sentenceOfRescue(rescue: Rescue): string {
  // Each table holds the words of its own code, which the compiler does not follow through the union.
  return rescue.kind === 'possible'
    ? (POSSIBLE[rescue.code] as (one: Rescue) => string)(rescue)
    : (IMPOSSIBLE[rescue.why] as (one: Impossible) => string)(rescue);
}
