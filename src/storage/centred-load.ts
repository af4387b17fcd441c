import type { JointDocument } from './document.ts';

/** The rest of the loads of a joint that is pulled and pushed at its centre, once tightened and left in peace. */
export const CENTRED_LOAD = {
  shearAcross_N: 0,
  at_mm: { x: 0, y: 0, z: 0 },
  moment_Nm: { x: 0, y: 0, z: 0 },
  pivot: { kind: 'centroid' },
  retightenings: 0,
  vibration: 'none',
} as const satisfies Partial<JointDocument['joint']['loads']>;
