import type { Rejection } from '../core/recommend/recommendation.ts';
import { forceText, lengthText, torqueText } from './amount.ts';

/** Why an insert of the drawer is out for this joint. */
export function sentenceOfRejection(rejection: Rejection): string {
  switch (rejection.code) {
    case 'other-thread':
      return `${rejection.insertThread} thread; the joint’s screw is ${rejection.screwThread}.`;
    case 'part-too-thin':
      return `Needs a hole of ${lengthText(rejection.depth)} and ${lengthText(rejection.floor)} of floor under it; the part is ${lengthText(rejection.thickness)} high.`;
    case 'boss-too-small':
      return `Needs a boss of ${lengthText(rejection.leastDiameter)}; yours is ${lengthText(rejection.bossDiameter)}.`;
    case 'hole-without-bite':
      return `Falls in: the hole is ${lengthText(rejection.bore)} wide and its knurl ${lengthText(rejection.knurl)}.`;
    case 'hole-too-small':
      return `Finds no way in: the hole is ${lengthText(rejection.bore)} wide and its pilot ${lengthText(rejection.pilot)}.`;
    case 'hole-too-shallow':
      return `Needs ${lengthText(rejection.depthNeeded)} for itself and its melt; the hole is ${lengthText(rejection.depth)} deep.`;
    case 'holds-too-little':
      return `Too weak: it holds ${forceText(rejection.holds)}, and this joint asks for ${forceText(rejection.asked)}.`;
    case 'no-screw-length':
      return `No standard screw fits: it would have to be between ${lengthText(rejection.least)} and ${lengthText(rejection.greatest)} long.`;
    case 'no-torque':
      return `No torque fits: the joint closes at ${torqueText(rejection.least)}, but gives way at ${torqueText(rejection.most)}.`;
  }
}
