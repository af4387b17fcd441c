import { type End, moduliOf } from '../host/little-known.ts';
import type { MaterialValue, PrintedMaterial } from '../host/material.ts';
import { hostCompliance, widerThanHole } from '../joint/host-compliance-steps.ts';
import { leastBy } from '../joint/least-by.ts';
import { screwCompliance, stretchedScrew } from '../joint/screw-compliance-steps.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import type { Situation } from '../pull-out/situation.ts';
import { loadFactor } from '../screws/load-sharing.ts';
import { coneEndDiameter, frustumStiffness } from '../screws/stiffness.ts';
import {
  carefulEntry,
  type Derived,
  type Entry,
  entry,
  entryAs,
  entryFrom,
  rangeOfCareful,
  withWays,
} from '../sources/derived.ts';

/** Where the moduli of the printed part and of a printed clamped part are taken within what is known of them. */
interface Ends {
  readonly host: End;
  readonly lid: End;
}

const MIDDLE: Ends = { host: 'middle', lid: 'middle' };
const STIFFNESS = { unit: 'N/mm', source: 'own-model', standing: 'estimate' } as const;

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
 * @param grip - stretched length of the screw [mm]
 * @param ends - where the moduli are taken within what is known of them
 * @returns Φ [-], 0 … 1
 * @source shigley ch. 8, load factor C and pressure cones
 * @source own-model what lies on which side
 */
export function pullShare(
  joint: AnswerableJoint,
  situation: Situation,
  grip: Derived,
  ends: Ends = MIDDLE,
): Derived {
  const common = { symbol: 'Φ', unit: '-', standing: 'estimate' } as const;
  if (situation.seat === 'over-gap') {
    return {
      ...common,
      value: 1,
      formula: '1, nothing is clamped under the part',
      entries: [entry('gap', joint.gap, 'mm')],
      source: 'own-model',
    };
  }
  const screw = screwSide(joint, situation, grip, ends.host);
  const members = memberSide(joint, situation, ends);
  const share = loadFactor({ screw: screw.value, members: members.value });
  return { ...withWays(share, { k_b: screw, k_m: members }), ...common };
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
 * @param grip - stretched length of the screw [mm]
 * @returns least and most Φ [-], the same where the moduli are known; see pullShare
 * @source own-model the ends of a little known modulus
 */
export function pullShares(joint: AnswerableJoint, situation: Situation, grip: Derived): PullShares {
  const middle = pullShare(joint, situation, grip);
  const { material } = joint.clamped;
  const hosts = endsOf(situation.material);
  const lids = material.kind === 'printed' ? endsOf(material.polymer) : KNOWN;
  if (hosts === KNOWN && lids === KNOWN) return { most: middle, least: middle };
  const shares = hosts.flatMap((host) => lids.map((lid) => pullShare(joint, situation, grip, { host, lid })));
  const least = leastBy(shares, ({ value }) => value).one;
  const most = leastBy(shares, ({ value }) => -value).one;
  const range = rangeOfCareful({ low: least.value, middle: middle.value, high: most.value });
  return { most: { ...most, ...range }, least: { ...least, ...range } };
}

const KNOWN: readonly End[] = ['middle'];
const BOTH: readonly End[] = ['low', 'high'];
const endsOf = ({ modulusInPlane }: PrintedMaterial): readonly End[] =>
  modulusInPlane.lowConfidence === true ? BOTH : KNOWN;

const modulusEntry = (modulus: MaterialValue, end: End): Entry =>
  carefulEntry('E', moduliOf(modulus, end), 'MPa');

/** Stiffness of the screw, with the plastic round the insert where it gives too. */
function screwSide(joint: AnswerableJoint, situation: Situation, grip: Derived, end: End): Derived {
  const { engagement, seat } = situation;
  const round = seat === 'on-plastic' ? hostCompliance(situation, end) : undefined;
  if (round === undefined) return stretchedScrew(joint, engagement, grip);
  const screw = screwCompliance(joint, engagement, grip);
  const value = 1 / (screw.value + round.value);
  const entries = [entryFrom(screw), entryFrom(round)];
  return { ...STIFFNESS, symbol: 'k_b', value, formula: '1/(C_b + C_h)', entries };
}

/** Stiffness of what is clamped between the head and what holds the screw. */
function memberSide(joint: AnswerableJoint, situation: Situation, { host, lid }: Ends): Derived {
  const above = clampedPart(joint, situation, lid);
  const below = memberBelow(joint, situation, host);
  if (below === undefined) return above;
  const value = 1 / (1 / above.value + 1 / below.value);
  const entries = [entryAs('k_lid', entryFrom(above)), entryAs('k_part', entryFrom(below))];
  return { ...STIFFNESS, symbol: 'k_m', value, formula: '1/(1/k_lid + 1/k_part)', entries };
}

/** Stiffness of the clamped part: its pressure cone, or its spacer as a tube. */
function clampedPart(joint: AnswerableJoint, { bearingFace }: Situation, end: End): Derived {
  const { material, sleeve, thickness, clearanceHole } = joint.clamped;
  if (sleeve) return spacerStiffness(sleeve, { thickness, clearanceHole });
  const { outerDiameter: faceDiameter, holeDiameter } = bearingFace;
  const modulus =
    material.kind === 'metal'
      ? entry('E', material.modulus, 'MPa')
      : modulusEntry(material.polymer.modulusInPlane, end);
  const cone = frustumStiffness({ thickness, faceDiameter, holeDiameter, modulus: modulus.value });
  return withWays(cone, modulus.from ? { E: modulus.from } : {});
}

/** A spacer as a tube that is squeezed. */
function spacerStiffness(
  sleeve: NonNullable<AnswerableJoint['clamped']['sleeve']>,
  { thickness, clearanceHole }: Readonly<Record<'thickness' | 'clearanceHole', number>>,
): Derived {
  const { outsideDiameter, material } = sleeve;
  const area = (Math.PI / 4) * (outsideDiameter ** 2 - clearanceHole ** 2);
  return {
    symbol: 'k_tube',
    value: (material.modulus * area) / thickness,
    unit: 'N/mm',
    formula: 'E · π/4 · (D_tube² − d_h²)/t',
    entries: [
      entry('E', material.modulus, 'MPa'),
      entry('D_tube', outsideDiameter, 'mm'),
      entry('d_h', clearanceHole, 'mm'),
      entry('t', thickness, 'mm'),
    ],
    source: 'elasticity',
    standing: 'published',
  };
}

/** Stiffness of the printed part between the face and the insert; undefined where the part bears on brass. */
function memberBelow(joint: AnswerableJoint, situation: Situation, end: End): Derived | undefined {
  const { seat, insert, floor, bearingFace } = situation;
  const modulus = modulusEntry(situation.material.modulusInPlane, end);
  const spread = coneEnd(bearingFace.outerDiameter, joint.clamped.thickness);
  /** A cone from the face that the clamped part's own cone has spread to, never as narrow as its hole. */
  const cone = (thickness: Derived, hole: number, around?: Derived): Derived => {
    const face = widerThanHole(spread, hole);
    const stiffness = frustumStiffness({
      thickness: thickness.value,
      faceDiameter: face.value,
      holeDiameter: hole,
      modulus: modulus.value,
    });
    return withWays(stiffness, {
      t: thickness,
      D: face,
      ...(around ? { d: around } : {}),
      ...(modulus.from ? { E: modulus.from } : {}),
    });
  };
  const knurl = insert.knurlDiameter.estimate;
  switch (seat) {
    case 'on-insert':
    case 'over-gap':
      return undefined;
    case 'on-plastic':
      return cone(insert.knurledLength.estimate, knurl.value, knurl);
    case 'far-side':
      return cone(floor, bearingFace.holeDiameter);
  }
}

/** The wide end of the clamped part's cone. */
const coneEnd = (faceDiameter: number, thickness: number): Derived => ({
  symbol: 'D_cone',
  value: coneEndDiameter({ faceDiameter, thickness }),
  unit: 'mm',
  formula: 'd_w + 2 · tan 30° · t',
  entries: [entry('d_w', faceDiameter, 'mm'), entry('t', thickness, 'mm')],
  source: 'shigley',
  standing: 'published',
});
