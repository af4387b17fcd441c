import type { HoleBehaviour } from '../holes/print-error.ts';
import type { InfillFamily } from '../host/host.ts';
import type { ClampedMaterial, HostMaterial, InsertMetal } from '../host/material.ts';
import type {
  BreakingTorque,
  FrictionCondition,
  PropertyClass,
  ScrewHead,
  ScrewLengths,
  Washer,
} from '../screws/screw.ts';
import type { Thread } from '../screws/thread.ts';
import type { SourceId } from '../sources/sources.ts';

export interface InfillPattern {
  readonly id: string;
  readonly name: string;
  readonly family: InfillFamily;
  readonly source: SourceId;
}

/** Every table that a document may name a row of; made in data, handed in as one argument. */
export interface Catalogue {
  readonly threads: readonly Thread[];
  readonly propertyClasses: readonly PropertyClass[];
  readonly breakingTorques: readonly BreakingTorque[];
  readonly heads: readonly ScrewHead[];
  readonly washers: readonly Washer[];
  readonly screwLengths: readonly ScrewLengths[];
  readonly frictionConditions: readonly FrictionCondition[];
  readonly hostMaterials: readonly HostMaterial[];
  readonly clampedMaterials: readonly ClampedMaterial[];
  readonly insertMetal: InsertMetal;
  readonly infillPatterns: readonly InfillPattern[];
  readonly uncalibratedHoles: HoleBehaviour;
}
