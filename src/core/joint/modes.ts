import { headBearing, seatBearing } from '../pull-out/bearing.ts';
import { bossSplit } from '../pull-out/boss-split.ts';
import { bossTear } from '../pull-out/boss-tear.ts';
import { knurlShear } from '../pull-out/knurl-shear.ts';
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
