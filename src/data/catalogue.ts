import type { Catalogue } from '../core/joint/catalogue.ts';
import { BREAKING_TORQUES } from './breaking-torques.ts';
import { CLAMPED_MATERIALS } from './clamped-materials.ts';
import { FRICTION_CONDITIONS } from './friction.ts';
import { HEADS } from './heads.ts';
import { HOST_MATERIALS } from './host-materials.ts';
import { INFILL_PATTERNS } from './infill-patterns.ts';
import { INSERT_METAL } from './insert-metal.ts';
import { PROPERTY_CLASSES } from './property-classes.ts';
import { SCREW_LENGTHS } from './screw-lengths.ts';
import { THREADS } from './threads.ts';
import { UNCALIBRATED_HOLES } from './uncalibrated-holes.ts';
import { WASHERS } from './washers.ts';

/** Every table in one argument. */
export const CATALOGUE: Catalogue = {
  threads: THREADS,
  propertyClasses: PROPERTY_CLASSES,
  breakingTorques: BREAKING_TORQUES,
  heads: HEADS,
  washers: WASHERS,
  screwLengths: SCREW_LENGTHS,
  frictionConditions: FRICTION_CONDITIONS,
  hostMaterials: HOST_MATERIALS,
  clampedMaterials: CLAMPED_MATERIALS,
  insertMetal: INSERT_METAL,
  infillPatterns: INFILL_PATTERNS,
  uncalibratedHoles: UNCALIBRATED_HOLES,
};
