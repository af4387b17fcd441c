import type { Rejection } from '../core/recommend/recommendation.ts';
import type { RejectedFact } from '../core/recommend/rejection-way.ts';
import type { Derived } from '../core/sources/derived.ts';
import { forceText, lengthText, torqueText } from './amount.ts';
import { type Figure, figure, type Sentence, said } from './sentence.ts';

/** The way to a number of a rejection, worked out when it is opened. */
export type WayToFact = (fact: RejectedFact) => Derived;

const NAMES = {
  depth: 'Hole that the insert needs',
  leastDiameter: 'Boss that the insert needs',
  bore: 'Bore of the hole',
  knurl: 'Knurl diameter',
  pilot: 'Pilot diameter',
  depthNeeded: 'Depth that insert and melt need',
  holds: '19 of 20 hold',
  asked: 'What the joint asks the insert to hold',
  least: 'Least',
  greatest: 'Greatest',
  most: 'Most',
} as const satisfies Record<RejectedFact, string>;

/**
 * Why an insert of the drawer is out for this joint.
 *
 * @param wayTo - without it the numbers stand there and do not open
 */
export function sentenceOfRejection(rejection: Rejection, wayTo?: WayToFact): Sentence {
  const told = (fact: RejectedFact, text: string): string | Figure =>
    wayTo === undefined ? text : figure(() => wayTo(fact), text, NAMES[fact]);
  switch (rejection.code) {
    case 'other-thread':
      return said`${rejection.insertThread} thread; the joint’s screw is ${rejection.screwThread}.`;
    case 'part-too-thin':
      return said`Needs a hole of ${told('depth', lengthText(rejection.depth))} and ${lengthText(rejection.floor)} of floor under it; the part is ${lengthText(rejection.thickness)} high.`;
    case 'boss-too-small':
      return said`Needs a boss of ${told('leastDiameter', lengthText(rejection.leastDiameter))}; yours is ${lengthText(rejection.bossDiameter)}.`;
    case 'hole-without-bite':
      return said`Falls in: the hole is ${told('bore', lengthText(rejection.bore))} wide and its knurl ${told('knurl', lengthText(rejection.knurl))}.`;
    case 'hole-too-small':
      return said`Finds no way in: the hole is ${told('bore', lengthText(rejection.bore))} wide and its pilot ${told('pilot', lengthText(rejection.pilot))}.`;
    case 'hole-too-shallow':
      return said`Needs ${told('depthNeeded', lengthText(rejection.depthNeeded))} for itself and its melt; the hole is ${lengthText(rejection.depth)} deep.`;
    case 'holds-too-little':
      return said`Too weak: it holds ${told('holds', forceText(rejection.holds))}, and this joint asks for ${told('asked', forceText(rejection.asked))}.`;
    case 'no-screw-length':
      return said`No standard screw fits: it would have to be between ${told('least', lengthText(rejection.least))} and ${told('greatest', lengthText(rejection.greatest))} long.`;
    case 'no-torque':
      return said`No torque fits: the joint closes at ${told('least', torqueText(rejection.least))}, but gives way at ${told('most', torqueText(rejection.most))}.`;
  }
}
