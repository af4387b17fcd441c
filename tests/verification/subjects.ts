import { BEARING_AREAS } from './bearing-areas.ts';
import { BOLT_GROUPS } from './bolt-groups.ts';
import type { Check } from './check.ts';
import { HOLE_ERROR, HOLE_FACETS, HOLES_IN_PRACTICE, INSIDE_JAWS, PRINTED_WALLS } from './holes.ts';
import { LOAD_SHARING, STIFFNESS } from './joint.ts';
import { PRELOADS, STAINLESS_PRELOADS } from './preload.ts';
import { MEASUREMENT, QUANTILES } from './statistics.ts';
import { BREAKING_TORQUES_COMPUTED, TENSILE_LOADS } from './strengths.ts';
import { STRIPPING } from './stripping.ts';
import { METAL_TABLE, POLYMER_TABLE } from './tables-of-materials.ts';
import {
  HEAD_TABLE,
  LENGTH_TABLE,
  PROPERTY_CLASS_TABLE,
  STAINLESS_BREAKING_TORQUES,
  WASHER_TABLE,
} from './tables-of-screws.ts';
import { CLEARANCE_HOLES, THREAD_TABLE } from './tables-of-threads.ts';
import { THICK_RINGS } from './thick-rings.ts';
import { INCH_THREADS, METRIC_THREADS } from './threads.ts';
import {
  CHI_SQUARED_QUANTILES,
  PREDICTION_FACTORS,
  PROOF_AND_OUTLIERS,
  TOLERANCE_FACTORS,
} from './tolerance.ts';
import { NUT_FACTORS, TORQUE_AND_SCATTER } from './torque.ts';

export interface Subject {
  readonly title: string;
  readonly checks: readonly Check[];
}

/** Everything that is checked against a print, in the order in which a joint is worked out. */
export const SUBJECTS: readonly Subject[] = [
  { title: 'Metric threads', checks: METRIC_THREADS },
  { title: 'Inch threads', checks: INCH_THREADS },
  { title: 'Limits of threads', checks: THREAD_TABLE },
  { title: 'Clearance holes', checks: CLEARANCE_HOLES },
  { title: 'Property classes', checks: PROPERTY_CLASS_TABLE },
  { title: 'Proof and breaking loads', checks: TENSILE_LOADS },
  { title: 'Breaking torques', checks: [...BREAKING_TORQUES_COMPUTED, ...STAINLESS_BREAKING_TORQUES] },
  { title: 'Preload and torque of steel screws', checks: PRELOADS },
  { title: 'Preload and torque of stainless screws', checks: STAINLESS_PRELOADS },
  { title: 'Torque and scatter', checks: TORQUE_AND_SCATTER },
  { title: 'Nut factor', checks: NUT_FACTORS },
  { title: 'Stripping', checks: STRIPPING },
  { title: 'Stiffness', checks: STIFFNESS },
  { title: 'Load factor and separation', checks: LOAD_SHARING },
  { title: 'Bolt groups', checks: BOLT_GROUPS },
  { title: 'Thick rings', checks: THICK_RINGS },
  { title: 'Measurement', checks: MEASUREMENT },
  { title: 'Quantiles', checks: [...QUANTILES, ...CHI_SQUARED_QUANTILES] },
  { title: 'Tolerance factors', checks: TOLERANCE_FACTORS },
  { title: 'Prediction factors', checks: PREDICTION_FACTORS },
  { title: 'Success runs and outliers', checks: PROOF_AND_OUTLIERS },
  { title: 'Hole error', checks: HOLE_ERROR },
  { title: 'Hole facets', checks: HOLE_FACETS },
  { title: 'Inside jaws in a hole', checks: INSIDE_JAWS },
  { title: 'Holes for inserts', checks: HOLES_IN_PRACTICE },
  { title: 'Printed walls', checks: PRINTED_WALLS },
  { title: 'Heads', checks: HEAD_TABLE },
  { title: 'Washers', checks: WASHER_TABLE },
  { title: 'Bearing areas', checks: BEARING_AREAS },
  { title: 'Screw lengths', checks: LENGTH_TABLE },
  { title: 'Printed materials', checks: POLYMER_TABLE },
  { title: 'Metals and tools', checks: METAL_TABLE },
];

export const ALL_CHECKS: readonly Check[] = SUBJECTS.flatMap(({ checks }) => checks);
