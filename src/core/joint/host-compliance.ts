import { infillShearShareOf } from '../host/infill-stiffness.ts';
import type { PrintedMaterial } from '../host/material.ts';
import { ringDiameter } from '../pull-out/ring-diameter.ts';
import type { Situation } from '../pull-out/situation.ts';
import { plugDiameter } from '../pull-out/wall-plug.ts';
import { frustumStiffness } from '../screws/stiffness.ts';
import {
  type BondedRing,
  columnCompliance,
  endHeldCompliance,
  pressedReach,
  pulledReach,
  rimHeldCompliance,
} from './bonded-ring.ts';

/** A pressure cone needs a face wider than its hole, [-]. */
export const WIDER_THAN_HOLE = 1.05;

/**
 * Compliance of the plastic that holds an insert, between the insert and where the part bears.
 *
 *     on the plastic   ring held at its end, Do up to the pressed reach
 *     over a gap       a free boss: ring held at its end, and the column below
 *                      a larger part: through walls and infill to a rim at the pulled reach, or down the walls as if
 *                      they stood free, whichever is stiffer
 *     far side         pressure cone in the shoulder
 *     on the insert    0
 *
 * Walls and smeared infill limit Do of a held end (ringDiameter); a solid isotropic ring is what the forms were checked on.
 *
 * @param situation - seat, knurl, walls, boss, bore [mm], modulus and Poisson's ratio of the host
 * @returns C [mm/N]; beside the insert 0 where no plastic stands round the knurl; its steps: hostCompliance
 * @source own-model which form holds where, docs/finite-element.md
 */
export function hostComplianceOf(situation: Situation): number {
  switch (situation.seat) {
    case 'on-insert':
      return 0;
    case 'far-side':
      return shoulderCompliance(situation);
    case 'on-plastic': {
      const ring = ringUpTo(situation, ringDiameter(situation).value);
      return heldRing({ ...ring, outerDiameter: Math.min(ring.outerDiameter, pressedReach(ring)) });
    }
    case 'over-gap': {
      const { bossDiameter } = situation.host;
      if (bossDiameter === undefined) {
        const throughInfill = rimThroughInfill(situation);
        return Math.min(throughInfill, standingCompliance(situation, plugDiameter(situation).value));
      }
      return standingCompliance(situation, bossDiameter, ringDiameter(situation).value);
    }
  }
}

const ringUpTo = (situation: Situation, outerDiameter: number): BondedRing => ({
  knurlDiameter: situation.insert.knurlDiameter.estimate.value,
  outerDiameter,
  length: situation.insert.knurledLength.estimate.value,
  ...elasticOf(situation.material),
});

/** A ring held at one end, mm/N; 0 where it has no wall. */
const heldRing = (ring: BondedRing): number =>
  ring.outerDiameter > ring.knurlDiameter ? endHeldCompliance(ring) : 0;

/** An insert in a boss that stands on its base, mm/N: its ring, and the column below. */
function standingCompliance(situation: Situation, bossDiameter: number, ringLimit = bossDiameter): number {
  const ring = ringUpTo(situation, ringLimit);
  const column = columnCompliance({
    outerDiameter: bossDiameter,
    boreDiameter: situation.bore.value,
    room: Math.max(0, situation.depth.value - situation.insert.length.estimate.value),
    solid: situation.floor.value,
    ...elasticOf(situation.material),
  });
  return heldRing({ ...ring, outerDiameter: Math.min(ring.outerDiameter, pulledReach(ring)) }) + column;
}

/**
 * An insert in a large part, sheared against a rim far away through walls and then infill.
 *
 *     C = [ln(Dw/Dk) + ln(Do/Dw)/ψ]/(2π · G · Lk)        Do = pulledReach; solid up to Do where the walls reach it
 *
 * @param situation - knurl, walls [mm], infill share ψ [-]
 * @returns C [mm/N]; infinite for walls in a hollow
 */
function rimThroughInfill(situation: Situation): number {
  const ring = ringUpTo(situation, plugDiameter(situation).value);
  const rim = pulledReach(ring);
  if (ring.outerDiameter >= rim) return rimHeldCompliance({ ...ring, outerDiameter: rim });
  const beyond = { ...ring, knurlDiameter: ring.outerDiameter, outerDiameter: rim };
  return rimHeldCompliance(ring) + rimHeldCompliance(beyond) / infillShearShareOf(situation.host.infill);
}

const elasticOf = (material: PrintedMaterial) => ({
  modulus: material.modulusInPlane.value,
  poissonRatio: material.poissonRatio.value,
});

/** Shoulder in front of a far-side insert, squeezed between insert and face. */
function shoulderCompliance(situation: Situation): number {
  const { holeDiameter } = situation.bearingFace;
  if (situation.floor.value <= 0) return 0;
  return (
    1 /
    frustumStiffness({
      thickness: situation.floor.value,
      faceDiameter: Math.max(situation.insert.knurlDiameter.estimate.value, WIDER_THAN_HOLE * holeDiameter),
      holeDiameter,
      modulus: situation.material.modulusInPlane.value,
    }).value
  );
}
