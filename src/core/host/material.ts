import type { EndWay } from '../sources/derived.ts';
import type { SourceId } from '../sources/sources.ts';

export type RowProvenance = 'read' | 'derived' | 'from-memory';

/** A value of a material row with its range and where it is from. */
export interface MaterialValue {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly provenance: RowProvenance;
  /** True where even an estimate is weak. */
  readonly lowConfidence?: true;
  /** Where the value is an end of what is known of a row that does not give it: how it was worked out. */
  readonly way?: EndWay;
}

/** A polymer as printed, solid, 23 °C; MPa and °C. */
export interface PrintedMaterial {
  readonly id: string;
  readonly name: string;
  /** False for photopolymers: an iron cannot set an insert in them. */
  readonly melts: true;
  readonly tensileInPlane: MaterialValue;
  readonly tensileAcrossLayers: MaterialValue;
  readonly shearBetweenLayers: MaterialValue;
  readonly compressive: MaterialValue;
  readonly modulusInPlane: MaterialValue;
  readonly poissonRatio: MaterialValue;
  /** Temperature at which the strength is taken as gone: glass transition, or heat deflection of a semi-crystalline one. */
  readonly softening: MaterialValue & { readonly kind: 'glass-transition' | 'heat-deflection' | 'vicat' };
  readonly serviceMax: MaterialValue;
  /** E(t)/E(short) at 23 °C after 1 h, 24 h and 1000 h. */
  readonly creepRatio1h: MaterialValue;
  readonly creepRatio24h: MaterialValue;
  readonly creepRatio1000h: MaterialValue;
  /** Fraction of the 23 °C strength left, ascending temperatures, °C. */
  readonly strengthRatios: readonly { readonly temperature: number; readonly ratio: MaterialValue }[];
  /** Iron setting in circulation, °C; absent where none is known. */
  readonly ironTemperature?: { readonly value: number; readonly source: SourceId };
  /** Thread-locking fluid or solvent known to crack it. */
  readonly crackedByThreadlocker: boolean;
  readonly elastomer: boolean;
  readonly source: SourceId;
}

/** A photopolymer: refused as a host for heat-set inserts. */
export interface NonMeltingMaterial {
  readonly id: string;
  readonly name: string;
  readonly melts: false;
  readonly source: SourceId;
}

export type HostMaterial = PrintedMaterial | NonMeltingMaterial;

/** What the clamped part is made of: a metal with a limiting surface pressure, or a printed polymer. */
export type ClampedMaterial =
  | {
      readonly kind: 'metal';
      readonly id: string;
      readonly name: string;
      readonly limitingPressure: number;
      readonly modulus: number;
      readonly source: SourceId;
    }
  | {
      readonly kind: 'printed';
      readonly id: string;
      readonly name: string;
      readonly polymer: PrintedMaterial;
    };

/** Insert brass, MPa. */
export interface InsertMetal {
  readonly name: string;
  readonly yield: MaterialValue;
  readonly tensile: MaterialValue;
  readonly shear: MaterialValue;
  readonly modulus: MaterialValue;
  readonly source: SourceId;
}
