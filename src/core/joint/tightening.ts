import type { Insert } from '../inserts/insert.ts';
import { insertDimensions } from '../inserts/insert-dimensions.ts';
import { type Bond, testedBond, untestedBond } from '../pull-out/bond.ts';
import type { Capacity, FailureMode } from '../pull-out/limit.ts';
import type { Surroundings } from '../pull-out/situation.ts';
import { type Derived, entryFrom, entryLater, type LateEntry } from '../sources/derived.ts';
import { type CreepingLoop, creepingLoop, creepOf, type JointCreep } from './clamp-loop.ts';
import { slipFriction, type TorqueToForce, torqueToForce } from './demand.ts';
import { seatedHole } from './hole-design.ts';
import type { Joint } from './joint.ts';
import { type Bore, boreOf } from './joint-bore.ts';
import { leastBy } from './least-by.ts';
import { FAILURE_MODES, MODES_AT } from './modes.ts';
import {
  type Life,
  lifeOf,
  preloadLeft,
  preloadLeftOf,
  preloadOnCreptHost,
  preloadOnCreptHostOf,
} from './preload-left.ts';
import { chooseScrew } from './screw-choice.ts';
import { findSeat } from './seat.ts';
import { type Found, situationOf, surroundingsOf } from './situation-of.ts';
import type { AnswerableJoint } from './stop.ts';
import { isWorn, type Wear } from './sustained.ts';
import {
  type ActiveMode,
  dialInside,
  forceToStayClosed,
  leastTorque,
  type ModeTorque,
  torqueAllowedBy,
  torqueAllowedByOf,
} from './torque-window.ts';

/** What the torque question comes to before it is asked what would open a closed window. */
export interface Tightening {
  readonly found: Found;
  readonly bore: Bore;
  /** Stretched length of the screw, mm. */
  readonly grip: Derived;
  readonly actives: readonly ActiveMode[];
  readonly conversion: TorqueToForce;
  /** The loop that the preload closes in. */
  readonly loop: CreepingLoop;
  /** What the time under load does to its plastics. */
  readonly life: Life;
  /** Smallest share of the preload that is left, R_F [-]. */
  readonly left: LateEntry;
  readonly least: Derived;
  readonly most: ModeTorque;
  readonly dial?: number;
}

/** A loop without plastic, whose preload lasts whatever its screw. */
const METAL_LOOP = { elasticCompliance: 1, links: [] } as const;

/** What holds for every insert of a joint, worked out once for a whole drawer. */
export interface Frame {
  readonly surroundings: Surroundings;
  readonly conversion: TorqueToForce;
  /** Capacities of the modes that do not depend on the insert. */
  readonly shared: ReadonlyMap<FailureMode, Capacity>;
  readonly bonds: Bonds;
  readonly creep: JointCreep;
  readonly life: Life;
  /** What lasts of a preload that no plastic is in the way of. */
  readonly metalLasting: Lasting;
}

/** Share of the preload that is left, and what the time under load does to the printed part; nothing where there is none. */
interface Lasting {
  readonly left: LateEntry;
  readonly wear?: Wear;
}

/** Bonds of the inserts that were pulled in this set-up, by their ids, and of every other one. */
interface Bonds {
  readonly ofOthers: Bond;
  readonly bySize: ReadonlyMap<string, Bond>;
}

function bondsOf({ tested, setting }: Joint): Bonds {
  if (tested === undefined) return { ofOthers: untestedBond(setting), bySize: new Map() };
  return {
    ofOthers: testedBond(tested.unpulled),
    bySize: new Map([...tested.bySize].map(([id, one]) => [id, testedBond(one)])),
  };
}

/** What holds for every insert of a joint. */
export function frameOf(joint: AnswerableJoint): Frame {
  const surroundings = surroundingsOf(joint);
  const shared = new Map<FailureMode, Capacity>();
  for (const rule of FAILURE_MODES) {
    if (rule.of === 'joint') shared.set(rule.mode, rule.capacity(surroundings));
  }
  const creep = creepOf(joint);
  const life = lifeOf(creep, joint.loads);
  return {
    surroundings,
    conversion: torqueToForce(joint, surroundings),
    shared,
    bonds: bondsOf(joint),
    creep,
    life,
    metalLasting: lastingOf(joint, { ...METAL_LOOP, creep }, life),
  };
}

/**
 * Hole, seat, screw, failure modes and both ends of the torque of one joint with one insert.
 *
 * @param joint - a joint that may be answered
 * @param insert - an insert with the screw's thread
 * @param frame - what holds for every insert of this joint
 * @returns what was found; `dial` [N·mm] is absent where no setting fits
 * @source own-model order of the steps
 */
export function tighten(joint: AnswerableJoint, insert: Insert, frame: Frame = frameOf(joint)): Tightening {
  const { surroundings, conversion, shared, bonds, creep, life, metalLasting } = frame;
  const dimensions = insertDimensions(insert);
  const bore = boreOf(joint, dimensions);
  const seat = findSeat(joint, dimensions);
  const screw = chooseScrew(joint, dimensions, bore.meltHeight);
  const tip = screw.kind === 'chosen' && screw.overrun.value > 0 ? screw.overrun : undefined;
  const hole = seatedHole(joint, dimensions, bore, tip);
  const found: Found = {
    insert: dimensions,
    hole,
    seat,
    screw,
    engagement: screw.kind === 'chosen' ? screw.engagement : wholeInsertEngaged(dimensions.length.estimate),
    bond: bonds.bySize.get(insert.id) ?? bonds.ofOthers,
  };
  const situation = situationOf(surroundings, found);
  const { grip } = screw;
  const loop = creepingLoop(joint, situation, grip, creep);
  const { left, wear } = loop.links.length === 0 ? metalLasting : lastingOf(joint, loop, life);
  const actives: ActiveMode[] = [];
  for (const { rule, path } of MODES_AT[seat.kind]) {
    const capacity = shared.get(rule.mode) ?? rule.capacity(situation);
    if (capacity === undefined) continue;
    const { mode } = rule;
    actives.push(wear && isWorn(mode, path) ? { mode, path, capacity, wear } : { mode, path, capacity });
  }
  const force = forceToStayClosed(joint, slipFriction(joint, situation));
  const least = leastTorque({ force, left }, conversion, joint.tool);
  const tightened = actives.filter(({ path }) => path !== 'pull');
  const strictest = leastBy(tightened, (active) => torqueAllowedByOf(active, joint, conversion));
  const most = torqueAllowedBy(strictest.one, joint, conversion);
  const dial = dialInside(joint.tool, least.value, most.torque.value);
  return {
    found,
    bore,
    grip,
    actives,
    conversion,
    loop,
    life,
    left,
    least,
    most,
    ...(dial === undefined ? {} : { dial }),
  };
}

function lastingOf({ loads }: Joint, loop: CreepingLoop, life: Life): Lasting {
  const left = entryLater('R_F', preloadLeftOf(loop, life), '-', () => preloadLeft(loop, life));
  const hours = loads.duration;
  if (hours === 0) return { left };
  const onHost = entryLater('R_F', preloadOnCreptHostOf(loop, life), '-', () =>
    preloadOnCreptHost(loop, life),
  );
  return { left, wear: { creep: loop.creep.host, hours, factor: life.atEnd.atLast.host.low, left: onHost } };
}

/** No screw fits: limits are still shown for a screw that would fill the insert. */
const wholeInsertEngaged = (length: Derived): Derived => ({
  symbol: 'L_E',
  value: length.value,
  unit: 'mm',
  formula: 'L',
  entries: [entryFrom(length)],
  source: 'own-model',
  standing: 'estimate',
});
