import { hostStrengths } from '../host/strengths.ts';
import { wallThickness } from '../host/wall-thickness.ts';
import type { InsertDimensions } from '../inserts/dimensions.ts';
import { bondFactor } from '../pull-out/bond.ts';
import type { Contact, Situation } from '../pull-out/situation.ts';
import type { BearingFace } from '../screws/head-bearing.ts';
import type { Derived } from '../sources/derived.ts';
import type { HoleDesign, ScrewChoice, SeatFinding } from './assessment.ts';
import type { AnswerableJoint } from './stop.ts';

/** What is already known when the failure modes are asked. */
export interface Found {
  readonly insert: InsertDimensions;
  readonly hole: HoleDesign;
  readonly seat: SeatFinding;
  readonly screw: ScrewChoice;
  /** Thread that carries: of the chosen screw, or the whole insert's where none fits. */
  readonly engagement: Derived;
}

/**
 * Face under the head, or under its washer.
 *
 * @param joint - head, washer and clearance hole [mm]
 * @returns shape, outer diameter [mm] and the hole that really faces it [mm]
 * @source vdi-2230 dh is the hole that faces the head
 */
export function bearingFaceOf(joint: AnswerableJoint): BearingFace {
  const { head, washer } = joint.screw;
  const hole = joint.clamped.clearanceHole;
  if (head.shape === 'countersunk') {
    return { shape: 'countersunk', outerDiameter: head.diameter, holeDiameter: hole };
  }
  return washer
    ? {
        shape: head.shape,
        outerDiameter: washer.outsideDiameter,
        holeDiameter: Math.max(hole, washer.holeDiameter),
      }
    : { shape: head.shape, outerDiameter: head.bearingDiameter, holeDiameter: hole };
}

/** Everything that a failure mode may ask, gathered from a joint and what was found about it. */
export function situationOf(joint: AnswerableJoint, found: Found): Situation {
  const { material } = joint.host;
  const { serviceTemperature } = joint.loads;
  return {
    insert: found.insert,
    setting: joint.setting,
    insertMetal: joint.insertMetal,
    host: joint.host,
    material,
    strengths: hostStrengths(material, joint.host.axis, serviceTemperature),
    bond: bondFactor(joint.setting),
    bore: found.hole.boreAsPrinted,
    bite: found.hole.bite,
    biteFactor: found.hole.biteFactor,
    depth: found.hole.depth,
    floor: found.hole.floor,
    wall: wallThickness(joint.host),
    seat: found.seat.kind,
    screw: joint.screw,
    engagement: found.engagement,
    bearingFace: bearingFaceOf(joint),
    clamped: { clearanceHole: joint.clamped.clearanceHole, contact: contactOf(joint) },
  };
}

function contactOf(joint: AnswerableJoint): Contact {
  const { material } = joint.clamped;
  if (material.kind === 'metal') return { kind: 'metal', limitingPressure: material.limitingPressure };
  // Pressed flat on its face: the axis of its print does not change the compressive strength.
  const { compressive } = hostStrengths(material.polymer, 'along-build', joint.loads.serviceTemperature);
  return { kind: 'printed', polymer: material.polymer, compressive };
}
