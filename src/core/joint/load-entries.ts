import { type Entry, entry, entryFrom } from '../sources/derived.ts';
import type { Joint } from './joint.ts';

/** All that the load on one screw follows from. */
type LoadedJoint = Pick<Joint, 'loads' | 'group'>;

/**
 * Pull on the screw as it is put in: as it was given, or with the way from the load on a pattern of screws.
 *
 * @param joint - loads of the screw, group that it belongs to
 * @returns P [N]
 * @source shigley ch. 8, bolt groups
 */
export const pullEntry = ({ loads, group }: LoadedJoint): Entry =>
  loads.pull === group.loads.pull.value && loads.pull !== group.load.force.pull
    ? entryFrom(group.loads.pull)
    : entry('P', loads.pull, 'N');

/**
 * Load across the screw as it is put in: as it was given, or with the way from the load on a pattern of screws.
 *
 * @param joint - loads of the screw, group that it belongs to
 * @returns Q [N]
 * @source shigley ch. 8, bolt groups
 */
export const shearEntry = ({ loads, group }: LoadedJoint): Entry =>
  loads.shear === group.loads.shear.value && loads.shear !== group.load.force.x
    ? entryFrom(group.loads.shear)
    : entry('Q', loads.shear, 'N');
