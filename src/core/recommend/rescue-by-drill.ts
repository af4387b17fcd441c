import { type ExistingHole, givenDepth } from '../holes/existing-hole.ts';
import { wallThickness } from '../host/wall-thickness.ts';
import type { Insert } from '../inserts/insert.ts';
import type { ExistingFinding } from '../joint/existing-finding.ts';
import { LEAST_FLOOR } from '../joint/screw-choice.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { withoutDust } from '../numerics/binary-dust.ts';
import { type Derived, entryFrom } from '../sources/derived.ts';
import type { Rescue } from './rescue.ts';
import { isHopelessVerdict, tryInsert } from './tried-insert.ts';

/** Step of a usual set of metric twist drills, mm. */
const DRILL_STEP = 0.1;
/** Guards whole steps against binary dust, steps. */
const DUST = 1e-9;

/**
 * Diameter of the drill or reamer that opens a hole up to the wanted bore.
 *
 *     Dr = step nearest to the wanted bore, from the pilot to the largest bore that still bites
 *
 * How far a drill cuts oversize in plastic, or the plastic closes behind it, is not in it: drill a scrap part first.
 *
 * @param finding - pilot, wanted bore Df and largest bore [mm]
 * @param wanted - Df [mm]
 * @returns Dr [mm], or undefined where no step lies between
 * @source trade-practice drills in steps of 0.1 mm
 * @example pilot 4.21, wanted 4.26, largest 4.46 mm gives 4.3 mm
 */
export function drillFor({ limits }: Pick<ExistingFinding, 'limits'>, wanted: Derived): Derived | undefined {
  const { pilot, largest } = limits;
  const first = Math.ceil(pilot.value / DRILL_STEP - DUST);
  const last = Math.floor(largest.value / DRILL_STEP + DUST);
  if (first > last) return undefined;
  const nearest = Math.min(last, Math.max(first, Math.round(wanted.value / DRILL_STEP)));
  return {
    symbol: 'D_dr',
    value: withoutDust(nearest * DRILL_STEP),
    unit: 'mm',
    formula: 'drill in steps of 0.1 mm nearest to D_f',
    entries: [entryFrom(wanted), entryFrom(pilot), entryFrom(largest)],
    source: 'trade-practice',
    standing: 'common-practice',
  };
}

/**
 * Wall that a drill leaves of the printed one.
 *
 *     t' = max(0, t − (Dr − Dt)/2)
 *
 * @param wall - t [mm]
 * @param drill - Dr [mm]
 * @param bore - Dt [mm]
 * @returns t' [mm]
 * @source own-model walls are laid from the printed bore
 * @example 2.0 mm of wall round 4.0 mm drilled to 4.3 mm leave 1.85 mm
 */
export const wallLeftBy = (wall: Derived, drill: Derived, bore: Derived): Derived => ({
  symbol: 't_r',
  value: Math.max(0, wall.value - (drill.value - bore.value) / 2),
  unit: 'mm',
  formula: 'max(0, t − (D_dr − D_t)/2)',
  entries: [entryFrom(wall), entryFrom(drill), entryFrom(bore)],
  source: 'own-model',
  standing: 'estimate',
});

/** The joint with its hole opened up: measured with the drill, its wall what the drill leaves. */
export function openedUp(
  joint: AnswerableJoint,
  existing: ExistingHole,
  { drill, wallLeft }: { readonly drill: Derived; readonly wallLeft: Derived },
): AnswerableJoint {
  const { host, holes } = joint;
  return {
    ...joint,
    host: {
      ...host,
      wall: { kind: 'measured', thickness: wallLeft.value, lineWidth: host.wall.lineWidth },
    },
    holes: { ...holes, existing: { ...existing, diameter: drill.value, known: 'as-measured' } },
  };
}

/** Ream or drill a hole that is too small; the printed walls get thinner by it. */
export function rescueByOpening(joint: AnswerableJoint, insert: Insert, finding: ExistingFinding): Rescue {
  const code = 'open-up';
  const { bore, limits, existing, wanted } = finding;
  if (bore.value >= limits.pilot.value) {
    return { kind: 'impossible', code, why: 'not-too-small', bore };
  }
  const drill = drillFor(finding, wanted);
  if (!drill) {
    return { kind: 'impossible', code, why: 'no-drill', least: limits.pilot, greatest: limits.largest };
  }
  const wallLeft = wallLeftBy(wallThickness(joint.host), drill, bore);
  const line = joint.host.wall.lineWidth;
  if (wallLeft.value < line) {
    return { kind: 'impossible', code, why: 'wall-drilled-away', drill, wallLeft, least: line };
  }
  const tried = tryInsert(openedUp(joint, existing, { drill, wallLeft }), insert);
  return !tried || isHopelessVerdict(tried.verdict)
    ? { kind: 'impossible', code, why: 'still-does-not-fit' }
    : { kind: 'possible', code, drill, wallLeft, verdict: tried.verdict, ...tried.gain };
}

/** Drill a hole deeper that is too shallow; undefined where depth is not what it lacks. */
export function rescueByDepth(
  joint: AnswerableJoint,
  insert: Insert,
  { existing, given, depthNeeded }: ExistingFinding,
): Rescue | undefined {
  if (!given || given.depth.value >= depthNeeded.value - DUST || joint.insertSide === 'far-side') {
    return undefined;
  }
  const code = 'drill-deeper';
  const depth = deepened(depthNeeded);
  const { thickness } = joint.host;
  if (thickness - depth.value < LEAST_FLOOR) {
    return { kind: 'impossible', code, why: 'no-floor-left', depth, thickness, floor: LEAST_FLOOR };
  }
  const deeper = { ...joint, holes: { ...joint.holes, existing: { ...existing, depth: depth.value } } };
  const tried = tryInsert(deeper, insert);
  return !tried || isHopelessVerdict(tried.verdict)
    ? { kind: 'impossible', code, why: 'still-does-not-fit' }
    : { kind: 'possible', code, depth, verdict: tried.verdict, ...tried.gain };
}

const deepened = (needed: Derived): Derived => ({
  ...givenDepth(withoutDust(Math.ceil(needed.value / DRILL_STEP - DUST) * DRILL_STEP)),
  formula: '⌈T_n/(0.1 mm)⌉ · 0.1 mm',
  entries: [entryFrom(needed)],
  source: 'own-model',
  standing: 'estimate',
});
