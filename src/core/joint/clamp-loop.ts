import { type End, modulusAt, taken } from '../host/little-known.ts';
import type { MaterialValue } from '../host/material.ts';
import type { Situation } from '../pull-out/situation.ts';
import { type PolymerCreep, polymerCreep } from '../relaxation/polymer-creep.ts';
import { frustumStiffness } from '../screws/stiffness.ts';
import type { Derived, StepsWay } from '../sources/derived.ts';
import { hostComplianceOf } from './host-compliance.ts';
import type { Joint } from './joint.ts';
import { screwComplianceOf } from './screw-compliance.ts';
import type { AnswerableJoint } from './stop.ts';

/** Plastic in the clamp loop: how it gives at once. */
export interface PlasticLink {
  readonly of: Plastic;
  /** By the modulus at each end of what is known of it, mm/N: at the low end it gives the most. */
  readonly compliance: Readonly<Record<End, number>>;
  /** How it comes to that. */
  readonly way: (modulus: End) => StepsWay;
}

/** Which part a plastic of the clamp loop belongs to. */
export type Plastic = 'host' | 'clamped';

/** How the printed parts of a joint creep at service temperature. */
export interface JointCreep {
  readonly host: PolymerCreep;
  /** Of the clamped part; absent where it is of metal. */
  readonly clamped?: PolymerCreep;
}

/** How the printed parts of a joint creep: the same for every insert. */
export function creepOf({ host, clamped, loads }: AnswerableJoint): JointCreep {
  const { material } = clamped;
  return {
    host: polymerCreep(host.material, loads.serviceTemperature),
    ...(material.kind === 'printed'
      ? { clamped: polymerCreep(material.polymer, loads.serviceTemperature) }
      : {}),
  };
}

/** The loop that a preload closes in, and its plastics. */
export interface CreepingLoop {
  /** Cb, mm/N, > 0: the screw. */
  readonly elasticCompliance: number;
  /** How the screw comes to that; may be left out where no plastic is in the loop. */
  readonly screw?: StepsWay;
  readonly links: readonly PlasticLink[];
  /** Of the printed parts, whether they are in the loop or not. */
  readonly creep: JointCreep;
}

/**
 * The loop that a preload closes in, and its plastics: a printed clamped part without a sleeve (pressure cone), and what
 * holds the insert where the clamp force passes through it.
 *
 * @param joint - clamped part
 * @param situation - seat, insert, host
 * @param grip - stretched length of the screw [mm]
 * @param creep - of both parts
 * @returns compliances [mm/N]
 * @source shigley pressure cone, screw stiffness
 */
export function creepingLoop(
  joint: Joint,
  situation: Situation,
  grip: Derived,
  creep: JointCreep,
): CreepingLoop {
  const { engagement } = situation;
  return {
    elasticCompliance: screwComplianceOf(joint, engagement.value, grip.value),
    screw: (steps) => steps.screwCompliance(joint, engagement, grip),
    links: plasticLinks(joint, situation),
    creep,
  };
}

function plasticLinks(joint: Joint, situation: Situation): readonly PlasticLink[] {
  const links: PlasticLink[] = [];
  const { material, sleeve } = joint.clamped;
  if (material.kind === 'printed' && !sleeve) {
    const { modulusInPlane } = material.polymer;
    const compliance = complianceAt(lidComplianceOf(joint, situation, modulusInPlane.value), modulusInPlane);
    links.push({
      of: 'clamped',
      compliance,
      way: (end) => (steps) => steps.lidCompliance(joint, situation, modulusInPlane, end),
    });
  }
  const given = hostComplianceOf(situation);
  if (given > 0) {
    const compliance = complianceAt(given, situation.material.modulusInPlane);
    links.push({ of: 'host', compliance, way: (end) => (steps) => steps.hostCompliance(situation, end) });
  }
  return links;
}

/** Pressure cone in a printed clamped part. */
export const lidCone = ({ clamped }: Joint, { bearingFace }: Situation, modulus: number): Derived =>
  frustumStiffness({
    thickness: clamped.thickness,
    faceDiameter: bearingFace.outerDiameter,
    holeDiameter: bearingFace.holeDiameter,
    modulus,
  });

/** Compliance of a printed clamped part, mm/N. */
export const lidComplianceOf = (joint: Joint, situation: Situation, modulus: number): number =>
  1 / lidCone(joint, situation, modulus).value;

/** A compliance, which goes with 1/E, at each end of what is known of the modulus. */
const complianceAt = (compliance: number, modulus: MaterialValue): PlasticLink['compliance'] =>
  taken('middle', (end) => (compliance * modulus.value) / modulusAt(modulus, end)).ends;
