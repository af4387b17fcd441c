import type { PrintedMaterial } from '../host/material.ts';
import { ringDiameter } from '../pull-out/boss-split.ts';
import type { Situation } from '../pull-out/situation.ts';
import { creepFactorOf, creepLaw } from '../relaxation/findley.ts';
import { residualPreloadRatioOf } from '../relaxation/residual-preload.ts';
import { frustumStiffness, screwStiffness } from '../screws/stiffness.ts';
import { stressAreaOf } from '../screws/stress-area.ts';
import { type Derived, entry } from '../sources/derived.ts';
import type { Joint } from './joint.ts';

/** Modulus of the screw, MPa. */
const STEEL_MODULUS = 205_000;

/** Plastic in the clamp loop: how it gives at once, mm/N, and how many times that later, [-]. */
interface PlasticLink {
  readonly compliance: number;
  readonly creep: number;
}

const creepOf = (polymer: PrintedMaterial, hours: number): number =>
  creepFactorOf(
    creepLaw({
      after1h: polymer.creepRatio1h.value,
      after24h: polymer.creepRatio24h.value,
      after1000h: polymer.creepRatio1000h.value,
    }),
    hours,
  );

/**
 * Compliance of the plastic that holds an insert against an axial force.
 *
 *     C = ln(Do/Dk)/(2π · G · Lk)        G = E/(2 · (1 + ν))
 *
 * A bonded ring sheared along its axis between the knurl and the ring that resists.
 *
 * @param situation - knurl Dk and Lk, ring Do [mm], modulus E [MPa], Poisson's ratio ν [-]
 * @returns C [mm/N], 0 where no plastic stands round the knurl
 * @source elasticity coaxial shear
 */
export function hostComplianceOf(situation: Situation): number {
  const { insert, material } = situation;
  const shearModulus = material.modulusInPlane.value / (2 * (1 + material.poissonRatio.value));
  const ratio = Math.max(1, ringDiameter(situation).value / insert.knurlDiameter.estimate.value);
  return Math.log(ratio) / (2 * Math.PI * shearModulus * insert.knurledLength.estimate.value);
}

/**
 * Share of the preload that is left after the time under load.
 *
 *     F(t)/F0 = (Cb + Σ Cp)/(Cb + Σ Cp · c(t))        c(t) = 1 + m·tⁿ
 *
 * In the loop: the screw; a printed clamped part (pressure cone); the plastic that holds the insert where the clamp
 * force passes through it. A metal part on the insert leaves no plastic in the loop: nothing is lost. Creep data hold
 * at 23 °C; warmer joints lose more than this.
 *
 * @param joint - clamped part, time under load t [h]
 * @param situation - seat, insert, host
 * @param gripLength - stretched length of the screw [mm]
 * @returns F(t)/F0 [-], above 0, at most 1
 * @source own-model constant length of the loop
 * @source findley-iso-899 creep
 * @source shigley pressure cone, screw stiffness
 */
export function preloadLeft(joint: Joint, situation: Situation, gripLength: number): Derived {
  const area = stressAreaOf(joint.screw.thread);
  const stretched = gripLength + situation.engagement.value / 2;
  const Cb =
    1 /
    screwStiffness({
      shankArea: area,
      shankLength: 0,
      threadArea: area,
      threadLength: stretched,
      modulus: STEEL_MODULUS,
    }).value;
  const links = plasticLinks(joint, situation);
  const Cp = links.reduce((sum, link) => sum + link.compliance, 0);
  const creep = Cp === 0 ? 1 : links.reduce((sum, link) => sum + link.compliance * link.creep, 0) / Cp;
  return {
    symbol: 'R_F',
    value: residualPreloadRatioOf({ elasticCompliance: Cb, plasticCompliance: Cp }, creep),
    unit: '-',
    formula: '(1 + C_p/C_b)/(1 + C_p/C_b · c)',
    entries: [entry('C_p/C_b', Cp / Cb, '-'), entry('c', creep, '-'), entry('t', joint.loads.duration, 'h')],
    source: 'own-model',
    standing: 'estimate',
  };
}

function plasticLinks(joint: Joint, situation: Situation): PlasticLink[] {
  const hours = joint.loads.duration;
  const links: PlasticLink[] = [];
  const { material } = joint.clamped;
  if (material.kind === 'printed') {
    const { outerDiameter, holeDiameter } = situation.bearingFace;
    const cone = frustumStiffness({
      thickness: joint.clamped.thickness,
      faceDiameter: outerDiameter,
      holeDiameter,
      modulus: material.polymer.modulusInPlane.value,
    });
    links.push({ compliance: 1 / cone.value, creep: creepOf(material.polymer, hours) });
  }
  if (situation.seat !== 'on-insert') {
    links.push({ compliance: hostComplianceOf(situation), creep: creepOf(situation.material, hours) });
  }
  return links;
}
