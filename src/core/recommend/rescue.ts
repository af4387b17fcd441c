import type { HoleVerdict } from '../holes/hole-verdict.ts';
import type { HexNut, Washer } from '../screws/screw.ts';
import type { Derived } from '../sources/derived.ts';

/** What helps where a hole that is there does not serve, the least work first. */
export type RescueCode =
  | 'another-insert'
  | 'open-up'
  | 'drill-deeper'
  | 'nut-behind'
  | 'self-tapping-insert'
  | 'reprint';

/** What a rescue gives, where it can be computed. */
export interface Gain {
  /** Characteristic force: 19 of 20 hold it. */
  readonly holds: Derived;
  /** Whether that is what the joint asks, and some torque goes with it. */
  readonly isEnough: boolean;
}

export type Rescue =
  | (Gain & {
      readonly kind: 'possible';
      readonly code: 'another-insert';
      readonly insertId: string;
      readonly verdict: HoleVerdict;
    })
  | (Gain & {
      readonly kind: 'possible';
      readonly code: 'open-up';
      /** Diameter of the drill or reamer. */
      readonly drill: Derived;
      /** Wall that is left of the printed one. */
      readonly wallLeft: Derived;
      readonly verdict: HoleVerdict;
    })
  | (Gain & {
      readonly kind: 'possible';
      readonly code: 'drill-deeper';
      readonly depth: Derived;
      readonly verdict: HoleVerdict;
    })
  | (Gain & {
      readonly kind: 'possible';
      readonly code: 'nut-behind';
      readonly nut: HexNut;
      readonly washer?: Washer;
      readonly area: Derived;
      /** Shortest standard screw that fills the nut. */
      readonly screwLength: Derived;
    })
  | {
      readonly kind: 'possible';
      readonly code: 'self-tapping-insert';
      /** Room below it, and wall over its diameter, as makers ask (common practice). */
      readonly room: { readonly least: number; readonly most: number };
      readonly wallShare: { readonly least: number; readonly most: number };
    }
  | (Gain & {
      readonly kind: 'possible';
      readonly code: 'reprint';
      readonly drawn: Derived;
      readonly depth: Derived;
    })
  | ({ readonly kind: 'impossible' } & Impossible);

/** Why a rescue is none here; lengths in mm. */
export type Impossible =
  | { readonly code: 'another-insert'; readonly why: 'none-in-drawer' }
  | { readonly code: 'open-up'; readonly why: 'not-too-small'; readonly bore: Derived }
  | {
      readonly code: 'open-up';
      readonly why: 'no-drill';
      readonly least: Derived;
      readonly greatest: Derived;
    }
  | {
      readonly code: 'open-up';
      readonly why: 'wall-drilled-away';
      readonly drill: Derived;
      readonly wallLeft: Derived;
      /** One line of the printed wall. */
      readonly least: number;
    }
  | {
      readonly code: 'drill-deeper';
      readonly why: 'no-floor-left';
      readonly depth: Derived;
      readonly thickness: number;
      readonly floor: number;
    }
  | { readonly code: 'open-up' | 'drill-deeper'; readonly why: 'still-does-not-fit' }
  | { readonly code: 'nut-behind'; readonly why: 'no-nut-known'; readonly thread: string }
  | {
      readonly code: 'nut-behind';
      readonly why: 'falls-through';
      readonly outside: number;
      readonly hole: Derived;
    }
  | {
      readonly code: 'nut-behind';
      readonly why: 'no-screw-length';
      readonly least: Derived;
      readonly longest: number;
    }
  | { readonly code: 'reprint'; readonly why: 'no-room' };
