import { wholeLayers } from '../holes/hole-depth.ts';
import type { Insert } from '../inserts/insert.ts';
import { meanOf } from '../inserts/measured-length.ts';
import type { Joint } from './joint.ts';
import { LEAST_FLOOR } from './screw-choice.ts';
import type { Found } from './situation-of.ts';

/** Why the printed part has no room for the hole of an insert; mm. */
export type NoRoom =
  | {
      readonly code: 'part-too-thin';
      readonly depth: number;
      readonly thickness: number;
      readonly floor: number;
    }
  | { readonly code: 'boss-too-small'; readonly bossDiameter: number; readonly leastDiameter: number };

/**
 * Why no hole for an insert can exist at all, so that nothing about it can be computed.
 *
 * @param joint - boss, thickness of the part, sunk, layer height [mm], side of the insert
 * @param insert - readings of knurl and length [mm]
 * @returns a boss no wider than the knurl, or no shoulder left for a far-side insert; undefined otherwise
 * @source own-model limits of what can be computed
 */
export function noRoomAtAll(joint: Joint, insert: Insert): NoRoom | undefined {
  const { host, insertSide, sunk } = joint;
  if (host.bossDiameter !== undefined) {
    const knurl = meanOf(insert.knurlDiameter);
    if (host.bossDiameter <= knurl) return bossTooSmall(joint, host.bossDiameter, knurl);
  }
  if (insertSide === 'near-side') return undefined;
  const wanted = wholeLayers(sunk + meanOf(insert.length), host.layerHeight);
  const depth = joint.holes.existing?.depth ?? wanted;
  return host.thickness - depth < LEAST_FLOOR ? partTooThin(joint, depth) : undefined;
}

/**
 * Why the hole that was found has too little plastic round it or under it.
 *
 * @param joint - boss, thickness of the part, line width [mm]
 * @param found - hole and insert
 * @returns less floor than LEAST_FLOOR (a hole that is there has the floor it has), or less wall in the boss than one line; undefined otherwise
 * @source own-model limits of what is recommended
 */
export function tooLittleRoom(joint: Joint, { hole, insert }: Found): NoRoom | undefined {
  const isThere = joint.holes.existing?.depth !== undefined;
  if (!isThere && hole.floor.value < LEAST_FLOOR) return partTooThin(joint, hole.depth.value);
  const { bossDiameter } = joint.host;
  const knurl = insert.knurlDiameter.estimate.value;
  return bossDiameter !== undefined && bossDiameter < leastBoss(joint, knurl)
    ? bossTooSmall(joint, bossDiameter, knurl)
    : undefined;
}

const partTooThin = (joint: Joint, depth: number): NoRoom => ({
  code: 'part-too-thin',
  depth,
  thickness: joint.host.thickness,
  floor: LEAST_FLOOR,
});

/** Smallest boss in which one line of wall stands all round the knurl, mm. */
const leastBoss = (joint: Joint, knurl: number): number => knurl + 2 * joint.host.wall.lineWidth;

const bossTooSmall = (joint: Joint, bossDiameter: number, knurl: number): NoRoom => ({
  code: 'boss-too-small',
  bossDiameter,
  leastDiameter: leastBoss(joint, knurl),
});
