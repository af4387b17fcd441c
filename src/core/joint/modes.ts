import { headBearing, seatBearing } from '../pull-out/bearing.ts';
import { bossSplit } from '../pull-out/boss-split.ts';
import { bossTear } from '../pull-out/boss-tear.ts';
import { knurlShear } from '../pull-out/knurl-shear.ts';
import type { LoadPath, SeatKind } from '../pull-out/limit.ts';
import { screwYields } from '../pull-out/screw-yield.ts';
import { shoulderPunch, shoulderYield } from '../pull-out/shoulder.ts';
import type { ModeRule } from '../pull-out/situation.ts';
import { insertThreadStrips, screwThreadStrips } from '../pull-out/thread-strip.ts';
import { insertTurns } from '../pull-out/torque-out.ts';
import { wallPlug } from '../pull-out/wall-plug.ts';

/** Every way to fail that the joint is checked against; a new one is one file in pull-out and one line here. */
export const FAILURE_MODES: readonly ModeRule[] = [
  knurlShear,
  wallPlug,
  bossTear,
  bossSplit,
  shoulderYield,
  shoulderPunch,
  insertThreadStrips,
  screwThreadStrips,
  screwYields,
  headBearing,
  seatBearing,
  insertTurns,
];

/** A mode that can happen at a seat, and what loads it there. */
export interface LoadedMode {
  readonly rule: ModeRule;
  readonly path: LoadPath;
}

const loadedAt = (seat: SeatKind): readonly LoadedMode[] =>
  FAILURE_MODES.flatMap((rule) => {
    const path = rule.path(seat);
    return path === 'none' ? [] : [{ rule, path }];
  });

/** The modes that can happen at each seat, in their order. */
export const MODES_AT: Readonly<Record<SeatKind, readonly LoadedMode[]>> = {
  'on-insert': loadedAt('on-insert'),
  'on-plastic': loadedAt('on-plastic'),
  'over-gap': loadedAt('over-gap'),
  'far-side': loadedAt('far-side'),
};
