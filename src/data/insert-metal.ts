import type { InsertMetal } from '../core/host/material.ts';

/**
 * Free-machining brass of unknown temper, MPa: value at the low end of CW614N, bounds of all tempers of C36000 and
 * CW614N together; shear of C36000. Listings of one temper differ by more than two (yield 140 to 310).
 */
export const INSERT_METAL: InsertMetal = {
  name: 'Free-machining brass',
  yield: { value: 220, low: 124, high: 359, provenance: 'read' },
  tensile: { value: 350, low: 338, high: 500, provenance: 'read' },
  shear: { value: 220, low: 207, high: 262, provenance: 'read' },
  modulus: { value: 97000, low: 90000, high: 105000, provenance: 'read' },
  source: 'brass-data',
};
