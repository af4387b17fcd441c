import { type End, polymerAt } from '../host/little-known.ts';
import type { PrintedMaterial } from '../host/material.ts';
import { screwComplianceOf } from '../joint/clamp-loop.ts';
import { hostComplianceOf } from '../joint/host-compliance.ts';
import { leastBy } from '../joint/least-by.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import type { Situation } from '../pull-out/situation.ts';
import { loadFactor } from '../screws/load-sharing.ts';
import { coneEndDiameter, frustumStiffness } from '../screws/stiffness.ts';
import { type Derived, entry, rangeOfCareful } from '../sources/derived.ts';

/**
 * Share of an outside pull that the screw feels while the joint is still closed.
 *
 *     Φ = kb/(kb + km)
 *
 * Screw side: the screw, and the plastic round the insert where the part bears beside it. Member side: the pressure cone
 * in the clamped part or its spacer, and the cone in the printed part where the part bears on it or the insert on its
 * shoulder. Over a gap nothing is clamped against the plastic at the insert: the screw feels all of it, Φ = 1.
 *
 * @param joint - clamped part, printed part
 * @param situation - seat, insert, engagement
 * @param gripLength - stretched length of the screw [mm]
 * @returns Φ [-], 0 … 1
 * @source shigley ch. 8, load factor C and pressure cones
 * @source own-model what lies on which side
 */
export function pullShare(joint: AnswerableJoint, situation: Situation, gripLength: number): Derived {
  if (situation.seat === 'over-gap') {
    return {
      symbol: 'Φ',
      value: 1,
      unit: '-',
      formula: '1, nothing is clamped under the part',
      entries: [entry('gap', joint.gap, 'mm')],
      source: 'own-model',
      standing: 'estimate',
    };
  }
  const below = memberBelow(joint, situation);
  const memberCompliance = lidCompliance(joint, situation) + (below === undefined ? 0 : 1 / below);
  const besideTheInsert = situation.seat === 'on-plastic' ? hostComplianceOf(situation) : 0;
  const screwSide = screwComplianceOf(joint, situation, gripLength) + besideTheInsert;
  return {
    ...loadFactor({ screw: 1 / screwSide, members: 1 / memberCompliance }),
    symbol: 'Φ',
    standing: 'estimate',
  };
}

/** The share at both careful ends: the most is asked of what holds, the least keeps the joint closed. */
export interface PullShares {
  readonly most: Derived;
  readonly least: Derived;
}

/**
 * Share of an outside pull that the screw feels, where little is known of a modulus at both of its ends.
 *
 * The share is a quotient of sums, each of the first power in every 1/E: its least and most lie at ends.
 *
 * @param joint - clamped part, printed part
 * @param situation - seat, insert, engagement
 * @param gripLength - stretched length of the screw [mm]
 * @returns least and most Φ [-], the same where the moduli are known; see pullShare
 * @source own-model the ends of a little known modulus
 */
export function pullShares(joint: AnswerableJoint, situation: Situation, gripLength: number): PullShares {
  const middle = pullShare(joint, situation, gripLength);
  const { material } = joint.clamped;
  const hosts = endsOf(situation.material);
  const lids = material.kind === 'printed' ? endsOf(material.polymer) : KNOWN;
  if (hosts === KNOWN && lids === KNOWN) return { most: middle, least: middle };
  const ends = hosts.flatMap((host) =>
    lids.map((lid) => pullShare(withLidAt(joint, lid), withHostAt(situation, host), gripLength)),
  );
  const least = leastBy(ends, ({ value }) => value).one;
  const most = leastBy(ends, ({ value }) => -value).one;
  const range = rangeOfCareful({ low: least.value, middle: middle.value, high: most.value });
  return { most: { ...most, ...range }, least: { ...least, ...range } };
}

const KNOWN: readonly End[] = ['middle'];
const BOTH: readonly End[] = ['low', 'high'];
const endsOf = ({ modulusInPlane }: PrintedMaterial): readonly End[] =>
  modulusInPlane.lowConfidence === true ? BOTH : KNOWN;

const withHostAt = (situation: Situation, end: End): Situation => ({
  ...situation,
  material: polymerAt(situation.material, end),
});

function withLidAt(joint: AnswerableJoint, end: End): AnswerableJoint {
  const { material } = joint.clamped;
  if (material.kind !== 'printed') return joint;
  const polymer = polymerAt(material.polymer, end);
  return { ...joint, clamped: { ...joint.clamped, material: { ...material, polymer } } };
}

/** Compliance of the clamped part, mm/N: its pressure cone, or its spacer as a tube. */
function lidCompliance(joint: AnswerableJoint, situation: Situation): number {
  const { material, sleeve, thickness, clearanceHole } = joint.clamped;
  if (sleeve) {
    const area = (Math.PI / 4) * (sleeve.outsideDiameter ** 2 - clearanceHole ** 2);
    return thickness / (sleeve.material.modulus * area);
  }
  const { outerDiameter, holeDiameter } = situation.bearingFace;
  const cone = frustumStiffness({
    thickness,
    faceDiameter: outerDiameter,
    holeDiameter,
    modulus: material.kind === 'metal' ? material.modulus : material.polymer.modulusInPlane.value,
  });
  return 1 / cone.value;
}

/** Stiffness of the printed part between the face and the insert, N/mm; undefined where the part bears on brass. */
function memberBelow(joint: AnswerableJoint, situation: Situation): number | undefined {
  const knurl = situation.insert.knurlDiameter.estimate.value;
  const { outerDiameter, holeDiameter } = situation.bearingFace;
  const spread = coneEndDiameter({ faceDiameter: outerDiameter, thickness: joint.clamped.thickness });
  const modulus = situation.material.modulusInPlane.value;
  switch (situation.seat) {
    case 'on-insert':
    case 'over-gap':
      return undefined;
    case 'on-plastic':
      return frustumStiffness({
        thickness: situation.insert.knurledLength.estimate.value,
        faceDiameter: Math.max(spread, WIDER_THAN_HOLE * knurl),
        holeDiameter: knurl,
        modulus,
      }).value;
    case 'far-side':
      return frustumStiffness({
        thickness: situation.floor.value,
        faceDiameter: Math.max(spread, WIDER_THAN_HOLE * holeDiameter),
        holeDiameter,
        modulus,
      }).value;
  }
}

/** A pressure cone needs a face wider than its hole, [-]. */
const WIDER_THAN_HOLE = 1.05;
