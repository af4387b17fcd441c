import { type End, modulusAt, taken } from '../host/little-known.ts';
import type { MaterialValue } from '../host/material.ts';
import type { Situation } from '../pull-out/situation.ts';
import { type PolymerCreep, polymerCreep } from '../relaxation/polymer-creep.ts';
import type { ClampLoop } from '../relaxation/residual-preload.ts';
import { frustumStiffness, screwStiffness } from '../screws/stiffness.ts';
import { stressAreaOf } from '../screws/stress-area.ts';
import { hostComplianceOf } from './host-compliance.ts';
import type { Joint } from './joint.ts';
import type { AnswerableJoint } from './stop.ts';

/** Modulus of the screw, MPa. */
const STEEL_MODULUS = 205_000;

/** Plastic in the clamp loop: how it gives at once and how it creeps at service temperature. */
export interface PlasticLink {
  readonly of: Plastic;
  /** By the modulus at each end of what is known of it, mm/N: at the low end it gives the most. */
  readonly compliance: Readonly<Record<End, number>>;
  readonly creep: PolymerCreep;
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

/**
 * Compliance of the stretched screw.
 *
 *     Cb = (g + LE/2)/(E · As)
 *
 * Thread over the whole length; half of the engagement stretches with it.
 *
 * @param joint - thread of the screw [mm]
 * @param situation - engagement LE [mm]
 * @param gripLength - g [mm]
 * @returns Cb [mm/N]
 * @source shigley ch. 8, bolt stiffness
 */
export function screwComplianceOf(joint: Joint, situation: Situation, gripLength: number): number {
  const area = stressAreaOf(joint.screw.thread);
  return (
    1 /
    screwStiffness({
      shankArea: area,
      shankLength: 0,
      threadArea: area,
      threadLength: gripLength + situation.engagement.value / 2,
      modulus: STEEL_MODULUS,
    }).value
  );
}

/** The loop that a preload closes in, and its plastics. */
export interface CreepingLoop extends ClampLoop {
  readonly links: readonly PlasticLink[];
}

/**
 * The loop that a preload closes in, and its plastics: a printed clamped part without a sleeve (pressure cone), and what
 * holds the insert where the clamp force passes through it.
 *
 * @param joint - clamped part
 * @param situation - seat, insert, host
 * @param gripLength - stretched length of the screw [mm]
 * @param creep - of both parts
 * @returns compliances [mm/N]
 * @source shigley pressure cone, screw stiffness
 */
export function creepingLoop(
  joint: Joint,
  situation: Situation,
  gripLength: number,
  creep: JointCreep,
): CreepingLoop {
  const links = plasticLinks(joint, situation, creep);
  return {
    elasticCompliance: screwComplianceOf(joint, situation, gripLength),
    plasticCompliance: links.reduce((sum, link) => sum + link.compliance.middle, 0),
    links,
  };
}

function plasticLinks(joint: Joint, situation: Situation, creep: JointCreep): PlasticLink[] {
  const links: PlasticLink[] = [];
  const { material, sleeve } = joint.clamped;
  if (material.kind === 'printed' && !sleeve && creep.clamped) {
    const { outerDiameter, holeDiameter } = situation.bearingFace;
    const cone = frustumStiffness({
      thickness: joint.clamped.thickness,
      faceDiameter: outerDiameter,
      holeDiameter,
      modulus: material.polymer.modulusInPlane.value,
    });
    const compliance = complianceAt(1 / cone.value, material.polymer.modulusInPlane);
    links.push({ of: 'clamped', compliance, creep: creep.clamped });
  }
  const given = hostComplianceOf(situation);
  if (given > 0) {
    const compliance = complianceAt(given, situation.material.modulusInPlane);
    links.push({ of: 'host', compliance, creep: creep.host });
  }
  return links;
}

/** A compliance, which goes with 1/E, at each end of what is known of the modulus. */
const complianceAt = (compliance: number, modulus: MaterialValue): PlasticLink['compliance'] =>
  taken('middle', (end) => (compliance * modulus.value) / modulusAt(modulus, end)).ends;
