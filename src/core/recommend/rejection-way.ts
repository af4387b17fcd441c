import { givenDepth } from '../holes/existing-hole.ts';
import { farSideDepth } from '../holes/hole-depth.ts';
import type { Insert } from '../inserts/insert.ts';
import { insertDimensions } from '../inserts/insert-dimensions.ts';
import { assess } from '../joint/assess.ts';
import { existingFinding } from '../joint/existing-finding.ts';
import { boreOf } from '../joint/joint-bore.ts';
import { pullEntry } from '../joint/load-entries.ts';
import { screwLengthWays } from '../joint/screw-length-ways.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { Rejection } from './recommendation.ts';

/** A number of a rejection that was computed; the others were given. */
export type RejectedFact =
  | 'depth'
  | 'leastDiameter'
  | 'bore'
  | 'knurl'
  | 'pilot'
  | 'depthNeeded'
  | 'holds'
  | 'asked'
  | 'least'
  | 'greatest'
  | 'most';

/**
 * The way to one number of a rejection, worked out when it is asked for: a drawer of thousands has many.
 *
 * @param joint - the joint that the insert is out for
 * @param insert - the insert
 * @param rejection - why it is out, as recommend gave it
 * @param fact - name of the number in the rejection
 * @returns the same number [mm, N or N·mm], with the way to it
 * @source own-model limits of what is recommended
 */
export function rejectionWay(
  joint: AnswerableJoint,
  insert: Insert,
  rejection: Rejection,
  fact: RejectedFact,
): Derived {
  const way = waysOf(joint, insert, rejection)[fact];
  if (way === undefined) throw new Error(`${rejection.code} computes no ${fact}`);
  return way;
}

type Ways = Readonly<Partial<Record<RejectedFact, Derived>>>;

function waysOf(joint: AnswerableJoint, insert: Insert, { code }: Rejection): Ways {
  switch (code) {
    case 'other-thread':
      return {};
    case 'part-too-thin':
      return { depth: depthOf(joint, insert) };
    case 'boss-too-small':
      return { leastDiameter: leastBoss(joint, insert) };
    case 'hole-without-bite':
    case 'hole-too-small':
    case 'hole-too-shallow':
      return waysInHole(joint, insert);
    case 'holds-too-little':
      return { holds: assess(joint, insert).holds.characteristic, asked: askedOf(joint) };
    case 'no-screw-length': {
      const dimensions = insertDimensions(insert);
      return screwLengthWays(joint, dimensions, boreOf(joint, dimensions).meltHeight);
    }
    case 'no-torque': {
      const { least, most } = assess(joint, insert).torque;
      return { least, most };
    }
  }
}

/** From behind nothing but the depth may be left to compute. */
function depthOf(joint: AnswerableJoint, insert: Insert): Derived {
  if (joint.insertSide === 'near-side') return assess(joint, insert).hole.depth;
  const { existing } = joint.holes;
  if (existing?.depth !== undefined) return givenDepth(existing.depth);
  const { length } = insertDimensions(insert);
  return farSideDepth({ length: length.estimate, sunk: joint.sunk, layerHeight: joint.host.layerHeight });
}

/** Smallest boss in which one line of wall stands all round the knurl; see tooLittleRoom. */
function leastBoss({ host }: AnswerableJoint, insert: Insert): Derived {
  const knurl = insertDimensions(insert).knurlDiameter.estimate;
  const { lineWidth } = host.wall;
  return {
    symbol: 'D_b1',
    value: knurl.value + 2 * lineWidth,
    unit: 'mm',
    formula: 'D_k + 2 · w',
    entries: [entryFrom(knurl), entry('w', lineWidth, 'mm')],
    source: 'own-model',
    standing: 'estimate',
  };
}

function waysInHole(joint: AnswerableJoint, insert: Insert): Ways {
  const finding = existingFinding(joint, assess(joint, insert));
  if (finding === undefined) throw new Error('a hole that excludes an insert is there');
  const { bore, limits, depthNeeded } = finding;
  return { bore, knurl: limits.knurl, pilot: limits.pilot, depthNeeded };
}

/** What the joint asks an insert to hold. */
const askedOf = (joint: AnswerableJoint): Derived => ({
  symbol: 'R_req',
  value: joint.factors.limits * joint.loads.pull,
  unit: 'N',
  formula: 'S · P',
  entries: [entry('S', joint.factors.limits, '-'), pullEntry(joint)],
  source: 'own-model',
  standing: 'estimate',
});
