import type { Changes } from '../support/joints.ts';

/** The joint that takes longest: two printed parts, a boss over a gap, a load across, creep and re-tightenings. */
export const HEAVY: Changes = {
  gap_mm: 0.4,
  clamped: { material: 'petg' },
  host: { material: 'asa', bossDiameter_mm: 11 },
  loads: { pull_N: 20, shear_N: 10, duration_h: 5000, retightenings: 2 },
};
