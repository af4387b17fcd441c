import { hostStrengths } from '../host/strengths.ts';
import { wallThickness } from '../host/wall-thickness.ts';
import type { InsertDimensions } from '../inserts/dimensions.ts';
import type { Bond } from '../pull-out/bond.ts';
import type { Contact, Situation, Surroundings } from '../pull-out/situation.ts';
import type { BearingFace } from '../screws/head-bearing.ts';
import { type Derived, entryBy } from '../sources/derived.ts';
import type { ScrewChoice, SeatFinding } from './assessment.ts';
import type { SeatedHole } from './hole-design.ts';
import type { AnswerableJoint } from './stop.ts';

/** What is already known when the failure modes are asked. */
export interface Found {
  readonly insert: InsertDimensions;
  readonly hole: SeatedHole;
  readonly seat: SeatFinding;
  readonly screw: ScrewChoice;
  /** Thread that carries: of the chosen screw, or the whole insert's where none fits. */
  readonly engagement: Derived;
  readonly bond: Bond;
}

/**
 * Face under the head, or under its washer; on a sleeve no wider than the sleeve.
 *
 * @param joint - head, washer and clearance hole [mm]
 * @returns shape, outer diameter [mm] and the hole that really faces it [mm]
 * @source vdi-2230 dh is the hole that faces the head
 */
export function bearingFaceOf(joint: AnswerableJoint): BearingFace {
  const { head, washer } = joint.screw;
  const { clearanceHole: hole, sleeve } = joint.clamped;
  const { shape } = head;
  if (shape === 'countersunk') return { shape, outerDiameter: head.diameter, holeDiameter: hole };
  const under = washer ? washer.outsideDiameter : head.bearingDiameter;
  if (sleeve) {
    const outerDiameter = Math.min(under, sleeve.outsideDiameter);
    const outer = entryBy('d_w', outerDiameter, 'mm', (steps) =>
      steps.faceOnSpacer(under, sleeve.outsideDiameter),
    );
    return { shape, outerDiameter, holeDiameter: hole, worked: { outer } };
  }
  if (!washer) return { shape, outerDiameter: under, holeDiameter: hole };
  const holeDiameter = Math.max(hole, washer.holeDiameter);
  const facing = entryBy('d_h', holeDiameter, 'mm', (steps) =>
    steps.holeUnderWasher(hole, washer.holeDiameter),
  );
  return { shape, outerDiameter: under, holeDiameter, worked: { hole: facing } };
}

/** What a failure mode may ask of the joint, whatever its insert: worked out once for a whole drawer. */
export function surroundingsOf(joint: AnswerableJoint): Surroundings {
  const { material } = joint.host;
  return {
    setting: joint.setting,
    insertMetal: joint.insertMetal,
    host: joint.host,
    material,
    strengths: hostStrengths(material, joint.host.axis, joint.loads.serviceTemperature),
    wall: wallThickness(joint.host),
    screw: joint.screw,
    bearingFace: bearingFaceOf(joint),
    clamped: { clearanceHole: joint.clamped.clearanceHole, contact: contactOf(joint) },
  };
}

/** Everything that a failure mode may ask: the surroundings, and what was found about one insert in them. */
export const situationOf = (surroundings: Surroundings, found: Found): Situation => ({
  // Key by key: a spread of so many costs a fifth of the whole ranking.
  setting: surroundings.setting,
  insertMetal: surroundings.insertMetal,
  host: surroundings.host,
  material: surroundings.material,
  strengths: surroundings.strengths,
  bond: found.bond,
  wall: surroundings.wall,
  screw: surroundings.screw,
  bearingFace: surroundings.bearingFace,
  clamped: surroundings.clamped,
  insert: found.insert,
  bore: found.hole.boreAsPrinted,
  bite: found.hole.bite,
  biteFactor: found.hole.biteFactor,
  depth: found.hole.depth,
  floor: found.hole.floor,
  seat: found.seat.kind,
  engagement: found.engagement,
});

function contactOf(joint: AnswerableJoint): Contact {
  const { material, sleeve } = joint.clamped;
  if (sleeve) return { kind: 'metal', limitingPressure: sleeve.material.limitingPressure };
  if (material.kind === 'metal') return { kind: 'metal', limitingPressure: material.limitingPressure };
  // Pressed flat on its face: the axis of its print does not change the compressive strength.
  const { compressive } = hostStrengths(material.polymer, 'along-build', joint.loads.serviceTemperature);
  return { kind: 'printed', polymer: material.polymer, compressive };
}
