import { type Derived, entry } from '../sources/derived.ts';

/** A preloaded screw with a pull on its joint; forces in N. */
export interface LoadedJoint {
  readonly preload: number;
  readonly pull: number;
  /** Share C of the pull that the screw feels while the joint is closed, 0 < C < 1. */
  readonly loadFactor: number;
}

/**
 * Share of an external pull that reaches the screw while the joint stays closed.
 *
 *     C = kb/(kb + km)
 *
 * @param stiffness - screw kb [N/mm] and members km [N/mm], > 0
 * @returns C [-]
 * @source shigley ch. 8, joint constant
 * @example kb 5.21, km 8.95 gives 0.368
 */
export function loadFactor(stiffness: { readonly screw: number; readonly members: number }): Derived {
  return {
    symbol: 'C',
    value: stiffness.screw / (stiffness.screw + stiffness.members),
    unit: '-',
    formula: 'k_b/(k_b + k_m)',
    entries: [entry('k_b', stiffness.screw, 'N/mm'), entry('k_m', stiffness.members, 'N/mm')],
    source: 'shigley',
    standing: 'published',
  };
}

/**
 * Force in the screw under preload and pull, as long as the joint is closed.
 *
 *     Fb = Fi + C · P
 *
 * @param joint - preload Fi and pull P [N], ≥ 0; load factor C [-], 0 < C < 1
 * @returns Fb [N]
 * @source shigley ch. 8, resultant bolt load
 * @example Fi 25, P 6, C 0.320 gives 26.92
 */
export const screwForceOf = (joint: LoadedJoint): number => joint.preload + joint.loadFactor * joint.pull;

/**
 * Force left between the parts; at or below zero the joint has opened and the equation ends.
 *
 *     Fm = Fi − (1 − C) · P
 *
 * @param joint - preload Fi and pull P [N], ≥ 0; load factor C [-], 0 < C < 1
 * @returns Fm [N]
 * @source shigley ch. 8, resultant load of the members
 */
export const clampForceLeftOf = (joint: LoadedJoint): number =>
  joint.preload - (1 - joint.loadFactor) * joint.pull;

/**
 * Pull that opens the joint.
 *
 *     P0 = Fi/(1 − C)
 *
 * @param joint - preload Fi [N], ≥ 0; load factor C [-], 0 < C < 1
 * @returns P0 [N]
 * @source shigley ch. 8, joint separation
 */
export function separationLoad(joint: { readonly preload: number; readonly loadFactor: number }): Derived {
  return {
    symbol: 'P_0',
    value: joint.preload / (1 - joint.loadFactor),
    unit: 'N',
    formula: 'F_i/(1 − C)',
    entries: [entry('F_i', joint.preload, 'N'), entry('C', joint.loadFactor, '-')],
    source: 'shigley',
    standing: 'published',
  };
}

/**
 * Pull at which the screw reaches a given force of its own, its proof load or its yield.
 *
 *     P = (Fp − Fi)/C
 *
 * @param joint - limit force of the screw Fp and preload Fi [N], Fi ≤ Fp; load factor C [-], 0 < C < 1
 * @returns P [N]
 * @source shigley ch. 8, load factor against overloading
 */
export function overloadPull(joint: {
  readonly screwLimit: number;
  readonly preload: number;
  readonly loadFactor: number;
}): Derived {
  return {
    symbol: 'P_p',
    value: (joint.screwLimit - joint.preload) / joint.loadFactor,
    unit: 'N',
    formula: '(F_p − F_i)/C',
    entries: [
      entry('F_p', joint.screwLimit, 'N'),
      entry('F_i', joint.preload, 'N'),
      entry('C', joint.loadFactor, '-'),
    ],
    source: 'shigley',
    standing: 'published',
  };
}
