import * as z from 'zod/mini';
import { LIMITS } from './limits.ts';
import { count, id, readings, text, within } from './schema-parts.ts';

const holeReadingSchema = z.strictObject({
  drawn_mm: within('holeDiameter_mm'),
  measured_mm: readings('holeDiameter_mm'),
  instrument: z.enum(['caliper-jaws', 'pin-gauge', 'drill-shank']),
  axis: z.enum(['vertical', 'horizontal']),
  facets: z.optional(count('facets')),
});

/** One machine with one material, nozzle and layer height, and the holes that were measured on it. */
export const printerSchema = z.strictObject({
  id,
  name: z.string().check(z.minLength(1), z.maxLength(80)),
  material: id,
  nozzle_mm: within('nozzle_mm'),
  layerHeight_mm: within('layerHeight_mm'),
  /** Whether the slicer enlarged the holes of the gauge. */
  gaugeCompensation: z.enum(['none', 'slicer']),
  jawFlat_mm: within('jawFlat_mm'),
  gaugeStep_mm: within('gaugeStep_mm'),
  /** How far the very first layer spreads, a side, and over how many layers; absent: nobody has looked. */
  firstLayerFlare_mm: z.optional(within('firstLayerFlare_mm')),
  flaredLayers: z.optional(count('flaredLayers')),
  holes: z.array(holeReadingSchema).check(z.maxLength(LIMITS.holeReadings.greatest)),
});

export const TEST_KINDS = ['pull-out', 'jack-out-torque', 'torque-out', 'proof-pull'] as const;
export const FORCE_UNITS = ['kgf', 'N', 'lbf'] as const;
export const TORQUE_UNITS = ['N·m', 'cN·m', 'in·lb', 'kgf·cm'] as const;
export const TEST_SETTINGS = ['heat-set', 'cold-pressed', 'hammered', 'screwed-in', 'nut'] as const;
export const TEST_RESULTS = [
  'insert-out-clean',
  'insert-out-with-plastic',
  'insert-turned',
  'boss-split',
  'layers-parted',
  'screw-broke',
  'thread-stripped',
  'held',
] as const;

/**
 * One test at the bench. Its insert, printer or material may be unknown, its reading or lever impossible: it is kept to be
 * put right, and said to be left out.
 */
export const benchTestSchema = z.strictObject({
  id,
  /** Number on the coupon, where it bears one. */
  coupon: z.optional(count('couponNumber')),
  date: z.iso.date(),
  insert: id,
  printer: z.optional(id),
  material: id,
  axis: z.enum(['along-build', 'across-build']),
  wallLines: z.optional(count('wallLines')),
  infill_percent: z.optional(within('infill_percent')),
  setting: z.enum(TEST_SETTINGS),
  kind: z.enum(TEST_KINDS),
  /** As read off the instrument, in the unit beside it. */
  value: within('asWritten'),
  unit: z.enum([...FORCE_UNITS, ...TORQUE_UNITS]),
  /** Force at the insert over the force at the scale; 1 without a lever. */
  leverRatio: within('asWritten'),
  /** Resolution and greatest reading of the instrument, in the same unit. */
  resolution: z.optional(within('testValue')),
  greatest: z.optional(within('testValue')),
  result: z.enum(TEST_RESULTS),
  /** Bore as measured before the insert was set; absent: the one intended. */
  bore_mm: z.optional(within('holeDiameter_mm')),
  ironTemperature_degC: z.optional(within('ironTemperature_degC')),
  settingTime_s: z.optional(within('settingTime_s')),
  /** A name for what was varied, to compare one way with another. */
  batch: z.optional(text(40)),
  photo: z.optional(id),
  note: text(400),
});
