import type { JointAssessment, Limit, Notice, TorqueWindow } from '../../core/joint/assessment.ts';
import { dialMargin } from '../../core/joint/dial-margin.ts';
import type { Joint } from '../../core/joint/joint.ts';
import { screwLengthWays } from '../../core/joint/screw-length-ways.ts';
import type { FailureMode } from '../../core/pull-out/limit.ts';
import type { Hold } from '../../core/service/hold.ts';
import { smallestMargin } from '../../core/service/margins.ts';
import type { Loosening, ServiceState } from '../../core/service/service-state.ts';
import type { Derived } from '../../core/sources/derived.ts';
import { derivationsWithin } from '../../wording/symbols.ts';

/** What the sheet is made of. */
export interface Calculation {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
  readonly notices: readonly Notice[];
  /** How the joint holds through its life; absent where no torque fits. */
  readonly hold?: Hold;
}

/** What a part of the sheet is about. */
export type PartId =
  | {
      readonly kind:
        | 'insert'
        | 'hole'
        | 'host'
        | 'seat'
        | 'torque'
        | 'dial'
        | 'preload'
        | 'loads'
        | 'remarks';
    }
  /** What a mode bears, and the torque that it allows. */
  | { readonly kind: 'mode' | 'allowed'; readonly mode: FailureMode }
  | { readonly kind: 'state'; readonly state: ServiceState };

/** What a part of the joint bears, or what is left, against what is asked of it. */
export interface Check {
  readonly of: FailureMode | Loosening;
  readonly bears: Derived;
  readonly asked: Derived;
  /** One over the other; absent where nothing is asked. */
  readonly times?: number;
  readonly governs: boolean;
}

/** A part of the sheet, the numbers it comes to, and what they are held against. */
export interface Part {
  readonly id: PartId;
  readonly results: readonly Derived[];
  readonly checks: readonly Check[];
}

/** Strengths of the printed part, which the modes share. */
const HOST_SYMBOLS: ReadonlySet<string> = new Set(['θ', 'τ', 'τ_p', 'σ_a', 'σ_h', 'σ_c', 'φ', 't']);

/** The parts of the calculation in the order in which one is built upon the other. */
export function partsOf({ joint, assessment, notices, hold }: Calculation): readonly Part[] {
  const { limits } = assessment;
  const remarks = remarkNumbers(notices);
  return [
    part({ kind: 'insert' }, insertNumbers(assessment)),
    part({ kind: 'hole' }, holeNumbers(assessment)),
    part({ kind: 'host' }, hostNumbers(limits)),
    part({ kind: 'seat' }, seatNumbers(joint, assessment)),
    ...limits.map(({ mode, capacity }) =>
      part({ kind: 'mode', mode }, [capacity.median, capacity.characteristic]),
    ),
    part({ kind: 'preload' }, [assessment.preloadLeft]),
    part({ kind: 'torque' }, [assessment.torque.least]),
    ...limits.flatMap(({ mode, allows }) => (allows ? [part({ kind: 'allowed', mode }, [allows])] : [])),
    part({ kind: 'dial' }, dialNumbers(assessment)),
    part({ kind: 'loads' }, [], limits.map(checkOf)),
    ...(hold?.states ?? []).map((state) =>
      part(
        { kind: 'state', state },
        [state.preloadLeft, smallestMargin(state, joint.factors)],
        checksOf(state),
      ),
    ),
    ...(remarks.length === 0 ? [] : [part({ kind: 'remarks' }, remarks)]),
  ];
}

const part = (id: PartId, results: readonly Derived[], checks: readonly Check[] = []): Part => ({
  id,
  results,
  checks,
});

const checkOf = ({ mode, capacity, demand, factor, governs }: Limit): Check => ({
  of: mode,
  bears: capacity.characteristic,
  asked: demand,
  ...(factor === undefined ? {} : { times: factor }),
  governs,
});

const checksOf = ({ limits, closed, by }: ServiceState): readonly Check[] => [
  ...limits.map((limit) => ({ ...checkOf(limit), governs: limit.mode === by })),
  ...closed.map((check) => ({
    of: check.by,
    bears: check.left,
    asked: check.needed,
    times: check.margin,
    governs: check.by === by,
  })),
];

function insertNumbers({ dimensions }: JointAssessment): readonly Derived[] {
  const { knurlDiameter, pilotDiameter, length, knurledLength } = dimensions;
  return [knurlDiameter, pilotDiameter, length, knurledLength].flatMap(
    ({ estimate, standardUncertainty }) => [estimate, standardUncertainty],
  );
}

function holeNumbers({ hole }: JointAssessment): readonly Derived[] {
  const { window } = hole;
  return [
    hole.boreAsPrinted,
    hole.drawn,
    hole.printError,
    hole.bite,
    hole.biteFactor,
    window.smallest,
    window.largest,
    window.chance,
    hole.meltVolume,
    hole.meltHeight,
    hole.depth,
    hole.well,
    hole.floor,
    hole.chamfer,
    hole.bossDiameter,
    hole.wall,
    hole.wallLines,
  ];
}

const hostNumbers = (limits: readonly Limit[]): readonly Derived[] =>
  limits.flatMap(({ capacity }) =>
    [...derivationsWithin(capacity.median)].filter(({ symbol }) => HOST_SYMBOLS.has(symbol)),
  );

/** Where no length of screw fits, between what lengths it would have to be. */
function seatNumbers(joint: Joint, { screw, dimensions, hole }: JointAssessment): readonly Derived[] {
  if (screw.kind === 'chosen') return [screw.grip, screw.length, screw.overrun, screw.engagement];
  const { least, greatest } = screwLengthWays(joint, dimensions, hole.meltHeight);
  return [screw.grip, least, greatest];
}

function dialNumbers({ torque, loadReserve }: JointAssessment): readonly Derived[] {
  return [
    torque.most,
    ...(torque.kind === 'window' ? settingNumbers(torque) : []),
    ...(loadReserve === undefined ? [] : [loadReserve]),
  ];
}

function settingNumbers(torque: Extract<TorqueWindow, { readonly kind: 'window' }>): readonly Derived[] {
  const margin = dialMargin(torque);
  const placed = margin.kind === 'narrow' ? margin.width : margin.share;
  return [torque.dial, placed, torque.clampForceLow, torque.clampForceHigh];
}

/** What the sentences at the end say that was computed. */
const remarkNumbers = (notices: readonly Notice[]): readonly Derived[] =>
  notices.flatMap(({ facts }) => Object.values(facts).filter((fact) => typeof fact === 'object'));
