import type { Joint } from '../../core/joint/joint.ts';
import { centroidOf, type ScrewPosition } from '../../core/loads/pattern.ts';
import { momentsAbout, type PartLoad, type ScrewLoad } from '../../core/loads/screw-loads.ts';

/** Moments smaller than this are dust of arms that cancel, N·mm. */
const MOMENT_DUST = 1e-6;
/** Loads within this share of the largest are as large. */
const ALIKE = 1e-9;

export interface PlanScrew extends ScrewLoad {
  /** As it is called on the plan, from 1. */
  readonly number: number;
  readonly hasMostPull: boolean;
  readonly hasMostShear: boolean;
}

/** All that the plan of the screws shows; mm, N and N·mm, y upwards. */
export interface PlanInput {
  readonly screws: readonly PlanScrew[];
  readonly centroid: ScrewPosition;
  readonly load: PartLoad;
  readonly headDiameter: number;
  /** Distances of the part's edges from the centroid; absent: the part turns about the centroid. */
  readonly edge?: { readonly x: number; readonly y: number };
  /** Which edges stay down when the loads lift the part: −1 below or left of the centroid, 1 beyond it, 0 neither. */
  readonly staysDown: { readonly x: -1 | 0 | 1; readonly y: -1 | 0 | 1 };
}

const signOf = (moment: number): -1 | 0 | 1 => (Math.abs(moment) < MOMENT_DUST ? 0 : moment > 0 ? 1 : -1);
const against = (sign: -1 | 0 | 1): -1 | 0 | 1 => (sign === 0 ? 0 : sign === 1 ? -1 : 1);

/** Which of several values are the largest; none where all are alike. */
function largest(values: readonly number[]): readonly boolean[] {
  const most = Math.max(...values);
  const isMost = values.map((value) => most > 0 && value >= most * (1 - ALIKE));
  return isMost.every(Boolean) ? isMost.map(() => false) : isMost;
}

/** Reads what the plan shows from a joint. */
export function planInput({ group, screw }: Joint): PlanInput {
  const { screws } = group.loads;
  const mostPull = largest(screws.map(({ pull }) => pull));
  const mostShear = largest(screws.map(({ shear }) => shear));
  const centroid = centroidOf(screws);
  const moments = momentsAbout(group.load, centroid);
  const { pivot } = group;
  return {
    screws: screws.map((one, index) => ({
      ...one,
      number: index + 1,
      hasMostPull: mostPull[index] ?? false,
      hasMostShear: mostShear[index] ?? false,
    })),
    centroid,
    load: group.load,
    headDiameter: screw.head.diameter,
    ...(pivot.kind === 'edge' ? { edge: { x: pivot.x, y: pivot.y } } : {}),
    // About x a positive moment lifts the side of positive y, about y the side of negative x.
    staysDown:
      pivot.kind === 'edge' ? { x: signOf(moments.y), y: against(signOf(moments.x)) } : { x: 0, y: 0 },
  };
}

/** Whether the worst screw is asked with other loads than the part; with one screw at the load it is not. */
export const hasSharesOfLoad = ({ group, loads }: Joint): boolean =>
  group.pattern.kind !== 'single' ||
  loads.pull !== group.load.force.pull ||
  loads.shear !== group.load.force.x;

/** Whether there is something to see in plan: several screws, or a load beside the only one. */
export const isWorthAPlan = ({ group }: Joint): boolean => {
  const { at, moment } = group.load;
  return (
    group.pattern.kind !== 'single' || [at.x, at.y, moment.x, moment.y, moment.z].some((one) => one !== 0)
  );
};
