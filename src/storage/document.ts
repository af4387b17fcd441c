import * as z from 'zod/mini';
import { LIMITS } from './limits.ts';
import { count, id, readings, text, within } from './schema-parts.ts';
import { benchTestSchema, printerSchema } from './workshop-schema.ts';

/** The version that this program writes; older ones are migrated, newer ones refused. */
export const DOCUMENT_VERSION = 3;
export const DOCUMENT_FORMAT = 'knurlwright-joint';

const insertSchema = z.strictObject({
  id,
  label: z.optional(text(80)),
  thread: id,
  knurlDiameter_mm: readings('insertDiameter_mm'),
  pilotDiameter_mm: readings('insertDiameter_mm'),
  length_mm: readings('insertLength_mm'),
  knurledLength_mm: z.optional(readings('insertLength_mm')),
  count: z.optional(count('count')),
});

const wallSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('lines'),
    count: count('wallLines'),
    lineWidth_mm: within('lineWidth_mm'),
    convention: z.enum(['rounded-beads', 'plain-beads']),
  }),
  z.strictObject({
    kind: z.literal('measured'),
    thickness_mm: within('wallThickness_mm'),
    lineWidth_mm: within('lineWidth_mm'),
  }),
]);

const placeSchema = z.strictObject({ x: within('place_mm'), y: within('place_mm') });

const patternSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('single') }),
  z.strictObject({
    kind: z.literal('rectangular'),
    columns: count('patternCount'),
    rows: count('patternCount'),
    spacingX_mm: within('spacing_mm'),
    spacingY_mm: within('spacing_mm'),
  }),
  z.strictObject({
    kind: z.literal('circular'),
    count: count('patternCount'),
    diameter_mm: within('spacing_mm'),
  }),
  z.strictObject({
    kind: z.literal('free'),
    positions_mm: z
      .array(placeSchema)
      .check(z.minLength(LIMITS.patternCount.least), z.maxLength(LIMITS.patternCount.greatest)),
  }),
]);

const pivotSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('centroid') }),
  z.strictObject({ kind: z.literal('edge'), x_mm: within('edge_mm'), y_mm: within('edge_mm') }),
]);

const jointSchema = z.strictObject({
  clamped: z.strictObject({
    material: id,
    thickness_mm: within('clampedThickness_mm'),
    clearanceHole_mm: within('clearanceHole_mm'),
    sleeve: z.optional(z.strictObject({ material: id, outsideDiameter_mm: within('sleeveDiameter_mm') })),
  }),
  gap_mm: within('gap_mm'),
  sunk_mm: within('sunk_mm'),
  insertSide: z.enum(['near-side', 'far-side']),
  seat: z.enum(['from-geometry', 'on-insert', 'on-plastic', 'over-gap', 'far-side']),
  host: z.strictObject({
    material: id,
    axis: z.enum(['along-build', 'across-build']),
    wall: wallSchema,
    layerHeight_mm: within('layerHeight_mm'),
    infill: z.strictObject({ pattern: id, density_percent: within('infill_percent') }),
    topSkin_mm: within('topSkin_mm'),
    thickness_mm: within('hostThickness_mm'),
    bossDiameter_mm: z.optional(within('bossDiameter_mm')),
  }),
  setting: z.enum(['heat-set', 'cold-pressed', 'hammered']),
  holes: z.strictObject({
    compensation: z.enum(['in-cad', 'in-slicer']),
    fit_mm: within('fit_mm'),
    step_mm: within('step_mm'),
    /** Corners of the polygon that leaves the CAD program instead of a circle; absent: a circle. */
    facets: z.optional(count('facets')),
    /** A hole that is there already and cannot be drawn anew. */
    existing: z.optional(
      z.strictObject({
        diameter_mm: within('holeDiameter_mm'),
        known: z.enum(['as-drawn', 'as-measured']),
        depth_mm: z.optional(within('holeDepth_mm')),
      }),
    ),
  }),
  screw: z.strictObject({
    thread: id,
    head: id,
    propertyClass: id,
    friction: id,
    washer: z.enum(['none', 'plain']),
    length_mm: z.optional(within('screwLength_mm')),
    threadLocking: z.enum(['none', 'fluid']),
  }),
  /** The printer whose holes were measured; absent: an unknown one. */
  printer: z.optional(id),
  pattern: patternSchema,
  loads: z.strictObject({
    pull_N: within('pull_N'),
    shear_N: within('shear_N'),
    shearAcross_N: within('shear_N'),
    at_mm: z.strictObject({ x: within('place_mm'), y: within('place_mm'), z: within('place_mm') }),
    moment_Nm: z.strictObject({ x: within('moment_Nm'), y: within('moment_Nm'), z: within('moment_Nm') }),
    pivot: pivotSchema,
    serviceTemperature_degC: within('serviceTemperature_degC'),
    duration_h: within('duration_h'),
    retightenings: count('retightenings'),
    vibration: z.enum(['none', 'present']),
  }),
  use: z.enum(['general', 'overhead', 'lifting', 'vehicle', 'climbing', 'pressure', 'mains']),
  tool: z.strictObject({
    kind: z.enum(['torque-driver', 'hand']),
    settings_Nm: z.array(within('setting_Nm')).check(z.maxLength(LIMITS.settings.greatest)),
    step_Nm: within('toolStep_Nm'),
  }),
  factors: z.strictObject({ limits: within('factor'), closed: within('factor') }),
});

/**
 * One joint, the drawer of inserts it may be made with, the caliper they were measured with, and what is known of the
 * printers and from tests.
 * Inputs only: results are computed. Every key that holds a quantity ends in its unit.
 */
export const documentSchema = z.strictObject({
  format: z.literal(DOCUMENT_FORMAT),
  version: z.literal(DOCUMENT_VERSION),
  name: z.string().check(z.minLength(1), z.maxLength(80)),
  scenario: text(400),
  joint: jointSchema,
  caliper: z.strictObject({ permissibleError_mm: within('permissibleError_mm') }),
  drawer: z.array(insertSchema).check(z.minLength(LIMITS.drawer.least), z.maxLength(LIMITS.drawer.greatest)),
  /** The insert that the person has picked; absent: the best of the drawer. */
  chosenInsert: z.optional(id),
  printers: z.array(printerSchema).check(z.maxLength(LIMITS.printers.greatest)),
  tests: z.array(benchTestSchema).check(z.maxLength(LIMITS.tests.greatest)),
  /** Whether the tests speak in the answers. */
  evidence: z.enum(['used', 'left-out']),
});

export type JointDocument = z.infer<typeof documentSchema>;
export type PrinterRecord = JointDocument['printers'][number];
export type HoleReadingRecord = PrinterRecord['holes'][number];
export type TestRecord = JointDocument['tests'][number];
export type InsertRecord = JointDocument['drawer'][number];
