import { loadFactorOf, screwLoadOf } from '../../../core/service/margins.ts';
import type { ServiceState } from '../../../core/service/service-state.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { amountText, forceText, percentText } from '../../../wording/amount.ts';

/** A figure that the margins rest on. */
export interface Figure {
  readonly name: string;
  readonly derivedIn: (state: ServiceState) => Derived | undefined;
  readonly textOf: (derived: Derived) => string;
}

/** What the margins rest on, in the order in which it is found. */
export const FIGURES: readonly Figure[] = [
  {
    name: 'Clamp force left',
    derivedIn: ({ preloadLeft }) => preloadLeft,
    textOf: ({ value }) => percentText(value),
  },
  {
    name: 'Load factor: share of a pull in the screw',
    derivedIn: loadFactorOf,
    textOf: ({ value }) => amountText(value, '-'),
  },
  { name: 'Force in the screw, at most', derivedIn: screwLoadOf, textOf: ({ value }) => forceText(value) },
];
