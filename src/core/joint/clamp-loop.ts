import type { PrintedMaterial } from '../host/material.ts';
import { strengthLeft } from '../host/temperature.ts';
import type { Situation } from '../pull-out/situation.ts';
import { type CreepLaw, creepFactorOf, creepLaw } from '../relaxation/findley.ts';
import { type ClampLoop, residualPreloadRatioOf } from '../relaxation/residual-preload.ts';
import { lastRetightening, RETIGHTENING_HOURS } from '../relaxation/retightening.ts';
import { warmCreepLaw } from '../relaxation/warm-creep.ts';
import { frustumStiffness, screwStiffness } from '../screws/stiffness.ts';
import { stressAreaOf } from '../screws/stress-area.ts';
import { type Derived, entry } from '../sources/derived.ts';
import { hostComplianceOf } from './host-compliance.ts';
import type { Joint } from './joint.ts';

/** Modulus of the screw, MPa. */
const STEEL_MODULUS = 205_000;

/** Plastic in the clamp loop: how it gives at once, mm/N, and how it creeps at service temperature. */
interface PlasticLink {
  readonly compliance: number;
  readonly law: CreepLaw;
}

/** Creep law of a polymer at 23 °C through its ratios. */
const creepLawOf = (polymer: PrintedMaterial): CreepLaw =>
  creepLaw({
    after1h: polymer.creepRatio1h.value,
    after24h: polymer.creepRatio24h.value,
    after1000h: polymer.creepRatio1000h.value,
  });

/** Creep law of a polymer at service temperature, °C. */
export const warmLawOf = (polymer: PrintedMaterial, serviceTemperature: number): CreepLaw =>
  warmCreepLaw(creepLawOf(polymer), strengthLeft(polymer, serviceTemperature).value);

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

/**
 * Share of the preload that is left at a time.
 *
 *     F(t)/F0 = [Cb + Σ Cp · c(tr)]/[Cb + Σ Cp · c(t)]        c(t) = 1 + m · θ^−2.4 · tⁿ
 *
 * In the loop: the screw; a printed clamped part without a sleeve (pressure cone); the plastic that holds the insert
 * where the clamp force passes through it. A metal part on the insert leaves no plastic in the loop: nothing is lost.
 * tr is the last re-tightening: what has crept until then need not creep again.
 *
 * @param joint - clamped part, temperature [°C], re-tightenings
 * @param situation - seat, insert, host
 * @param gripLength - stretched length of the screw [mm]
 * @param hours - time since assembly t [h], ≥ 0
 * @returns F(t)/F0 [-], above 0, at most 1
 * @source own-model constant length of the loop, growth with temperature
 * @source findley-iso-899 creep, extrapolated beyond 1000 h
 * @source shigley pressure cone, screw stiffness
 */
export const preloadLeftAt = (
  joint: Joint,
  situation: Situation,
  gripLength: number,
  hours: number,
): Derived => {
  const loop = creepingLoop(joint, situation, gripLength);
  return leftBetween(loop, lastRetightening(hours, joint.loads.retightenings), hours);
};

/**
 * Smallest share of the preload that is left at any time under load: at its end, or just before a re-tightening.
 *
 * @param joint - clamped part, temperature [°C], time under load t [h], re-tightenings
 * @param situation - seat, insert, host
 * @param gripLength - stretched length of the screw [mm]
 * @returns the smallest F(t)/F0 [-], above 0, at most 1; see preloadLeftAt
 * @source own-model the joint must stay closed between re-tightenings too
 */
export function preloadLeft(joint: Joint, situation: Situation, gripLength: number): Derived {
  const { duration, retightenings } = joint.loads;
  const loop = creepingLoop(joint, situation, gripLength);
  const restored = RETIGHTENING_HOURS.slice(0, retightenings).filter((hours) => hours < duration);
  return [...restored, duration]
    .map((until, index) => leftBetween(loop, restored[index - 1], until))
    .reduce((least, other) => (other.value < least.value ? other : least));
}

/** The loop that a preload closes in, and how its plastic creeps. */
interface CreepingLoop {
  readonly loop: ClampLoop;
  /** Compliance of the plastic over its first one, [-], after hours. */
  readonly creepAt: (hours: number) => number;
}

function creepingLoop(joint: Joint, situation: Situation, gripLength: number): CreepingLoop {
  const links = plasticLinks(joint, situation);
  const Cp = links.reduce((sum, link) => sum + link.compliance, 0);
  return {
    loop: {
      elasticCompliance: screwComplianceOf(joint, situation, gripLength),
      plasticCompliance: Cp,
    },
    creepAt: (hours) =>
      Cp === 0
        ? 1
        : links.reduce((sum, link) => sum + link.compliance * creepFactorOf(link.law, hours), 0) / Cp,
  };
}

/** Share left at a time of the preload that was restored at an earlier one, or given at assembly. */
function leftBetween({ loop, creepAt }: CreepingLoop, restored: number | undefined, hours: number): Derived {
  const crept = restored === undefined ? 1 : creepAt(restored);
  const creep = creepAt(hours);
  return {
    symbol: 'R_F',
    value: residualPreloadRatioOf(loop, creep) / residualPreloadRatioOf(loop, crept),
    unit: '-',
    formula: '(1 + C_p/C_b · c_r)/(1 + C_p/C_b · c)',
    entries: [
      entry('C_p/C_b', loop.plasticCompliance / loop.elasticCompliance, '-'),
      entry('c', creep, '-'),
      entry('c_r', crept, '-'),
      entry('t', hours, 'h'),
    ],
    source: 'own-model',
    standing: 'estimate',
  };
}

function plasticLinks(joint: Joint, situation: Situation): PlasticLink[] {
  const { serviceTemperature } = joint.loads;
  const links: PlasticLink[] = [];
  const { material, sleeve } = joint.clamped;
  if (material.kind === 'printed' && !sleeve) {
    const { outerDiameter, holeDiameter } = situation.bearingFace;
    const cone = frustumStiffness({
      thickness: joint.clamped.thickness,
      faceDiameter: outerDiameter,
      holeDiameter,
      modulus: material.polymer.modulusInPlane.value,
    });
    links.push({ compliance: 1 / cone.value, law: warmLawOf(material.polymer, serviceTemperature) });
  }
  const compliance = hostComplianceOf(situation);
  if (compliance > 0) links.push({ compliance, law: warmLawOf(situation.material, serviceTemperature) });
  return links;
}
