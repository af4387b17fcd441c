import type { HostMaterial, NonMeltingMaterial, PrintedMaterial } from '../core/host/material.ts';

/*
 * Polymers as printed, solid, 23 °C; MPa and °C. Where nothing is known of the printed state the row holds the
 * moulded polymer's value (compressive strength, Poisson's ratio, temperatures, creep of PC).
 * Softening: glass transition of an amorphous polymer, heat deflection at 0.45 MPa of a semi-crystalline one.
 * A remembered value that is not often quoted is marked as of low confidence.
 */

/** Across layers from an isolated interlayer specimen of mean 22.8 MPa; shear 0.577 of that mean. */
export const PLA: PrintedMaterial = {
  id: 'pla',
  name: 'PLA',
  melts: true,
  tensileInPlane: { value: 50, low: 47.4, high: 65, provenance: 'read' },
  tensileAcrossLayers: { value: 28, low: 22.8, high: 45, provenance: 'derived' },
  shearBetweenLayers: { value: 13.2, low: 13.2, high: 19.5, provenance: 'derived' },
  compressive: { value: 60, low: 50, high: 90, provenance: 'from-memory' },
  modulusInPlane: { value: 2700, low: 2400, high: 4000, provenance: 'derived' },
  poissonRatio: { value: 0.36, provenance: 'read' },
  softening: { value: 60, low: 55, high: 65, provenance: 'read', kind: 'glass-transition' },
  serviceMax: { value: 45, low: 40, high: 50, provenance: 'from-memory' },
  creepRatio1h: { value: 0.93, provenance: 'from-memory', lowConfidence: true },
  creepRatio24h: { value: 0.8, provenance: 'from-memory', lowConfidence: true },
  creepRatio1000h: { value: 0.6, low: 0.4, high: 0.75, provenance: 'from-memory', lowConfidence: true },
  strengthRatios: [
    { temperature: 40, ratio: { value: 0.75, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 50, ratio: { value: 0.45, provenance: 'from-memory', lowConfidence: true } },
    {
      temperature: 60,
      ratio: { value: 0.1, low: 0, high: 0.2, provenance: 'from-memory', lowConfidence: true },
    },
  ],
  ironTemperature: { value: 225, source: 'trade-practice' },
  crackedByThreadlocker: false,
  elastomer: false,
  source: 'printed-materials',
};

/** Toughened PLA; everything remembered. Blends differ from one another. */
export const PLA_PLUS: PrintedMaterial = {
  id: 'pla-plus',
  name: 'PLA+ (toughened)',
  melts: true,
  tensileInPlane: { value: 40, low: 35, high: 50, provenance: 'from-memory', lowConfidence: true },
  tensileAcrossLayers: { value: 24, low: 18, high: 32, provenance: 'from-memory', lowConfidence: true },
  shearBetweenLayers: { value: 14, provenance: 'from-memory', lowConfidence: true },
  compressive: { value: 50, provenance: 'from-memory', lowConfidence: true },
  modulusInPlane: { value: 2200, low: 1800, high: 2600, provenance: 'from-memory', lowConfidence: true },
  poissonRatio: { value: 0.36, provenance: 'from-memory' },
  softening: {
    value: 58,
    low: 55,
    high: 62,
    provenance: 'from-memory',
    lowConfidence: true,
    kind: 'glass-transition',
  },
  serviceMax: { value: 42, provenance: 'from-memory', lowConfidence: true },
  creepRatio1h: { value: 0.92, provenance: 'from-memory', lowConfidence: true },
  creepRatio24h: { value: 0.78, provenance: 'from-memory', lowConfidence: true },
  creepRatio1000h: { value: 0.55, provenance: 'from-memory', lowConfidence: true },
  strengthRatios: [
    { temperature: 40, ratio: { value: 0.72, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 60, ratio: { value: 0.1, provenance: 'from-memory', lowConfidence: true } },
  ],
  crackedByThreadlocker: false,
  elastomer: false,
  source: 'printed-materials',
};

/** In plane library range and n = 3; shear 0.577 of the tensile strength across layers. */
export const PETG: PrintedMaterial = {
  id: 'petg',
  name: 'PETG',
  melts: true,
  tensileInPlane: { value: 44, low: 34.8, high: 56, provenance: 'read' },
  tensileAcrossLayers: { value: 28, low: 25, high: 38, provenance: 'derived' },
  shearBetweenLayers: { value: 16, provenance: 'derived' },
  compressive: { value: 55, provenance: 'read' },
  modulusInPlane: { value: 1800, low: 1630, high: 3000, provenance: 'derived' },
  poissonRatio: { value: 0.38, low: 0.36, high: 0.4, provenance: 'from-memory' },
  softening: { value: 80, low: 75, high: 88, provenance: 'derived', kind: 'glass-transition' },
  serviceMax: { value: 60, provenance: 'from-memory' },
  creepRatio1h: { value: 0.93, provenance: 'from-memory', lowConfidence: true },
  creepRatio24h: { value: 0.82, provenance: 'from-memory', lowConfidence: true },
  creepRatio1000h: { value: 0.65, provenance: 'from-memory', lowConfidence: true },
  strengthRatios: [
    { temperature: 40, ratio: { value: 0.85, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 60, ratio: { value: 0.6, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 70, ratio: { value: 0.3, provenance: 'from-memory', lowConfidence: true } },
  ],
  ironTemperature: { value: 245, source: 'trade-practice' },
  crackedByThreadlocker: false,
  elastomer: false,
  source: 'printed-materials',
};

/** Printed strengths remembered; shear 0.9 · 0.577 of the bulk tensile strength. */
export const ABS: PrintedMaterial = {
  id: 'abs',
  name: 'ABS',
  melts: true,
  tensileInPlane: { value: 34, low: 28, high: 40, provenance: 'from-memory' },
  tensileAcrossLayers: { value: 22, low: 15, high: 30, provenance: 'from-memory', lowConfidence: true },
  // The low bound is 0.577 of the remembered strength across layers.
  shearBetweenLayers: { value: 21, low: 13, high: 21, provenance: 'derived' },
  compressive: { value: 45, low: 35.9, high: 83, provenance: 'derived' },
  modulusInPlane: { value: 2000, low: 1600, high: 2300, provenance: 'from-memory' },
  poissonRatio: { value: 0.37, low: 0.37, high: 0.422, provenance: 'read' },
  softening: { value: 105, low: 88, high: 120, provenance: 'read', kind: 'glass-transition' },
  serviceMax: { value: 70, low: 62, high: 77, provenance: 'derived' },
  creepRatio1h: { value: 0.92, provenance: 'from-memory', lowConfidence: true },
  creepRatio24h: { value: 0.8, provenance: 'from-memory', lowConfidence: true },
  creepRatio1000h: { value: 0.62, provenance: 'from-memory', lowConfidence: true },
  strengthRatios: [
    { temperature: 40, ratio: { value: 0.88, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 60, ratio: { value: 0.72, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 80, ratio: { value: 0.48, provenance: 'from-memory', lowConfidence: true } },
  ],
  ironTemperature: { value: 265, source: 'trade-practice' },
  crackedByThreadlocker: true,
  elastomer: false,
  source: 'printed-materials',
};

/** Printed strengths remembered. */
export const ASA: PrintedMaterial = {
  id: 'asa',
  name: 'ASA',
  melts: true,
  tensileInPlane: { value: 38, low: 30, high: 45, provenance: 'from-memory', lowConfidence: true },
  tensileAcrossLayers: { value: 26, low: 18, high: 33, provenance: 'from-memory', lowConfidence: true },
  shearBetweenLayers: { value: 15, provenance: 'from-memory', lowConfidence: true },
  compressive: { value: 50, provenance: 'from-memory', lowConfidence: true },
  modulusInPlane: { value: 1900, low: 1600, high: 2300, provenance: 'from-memory', lowConfidence: true },
  poissonRatio: { value: 0.37, provenance: 'from-memory' },
  softening: { value: 100, low: 98, high: 100, provenance: 'read', kind: 'glass-transition' },
  serviceMax: { value: 75, provenance: 'from-memory' },
  creepRatio1h: { value: 0.92, provenance: 'from-memory', lowConfidence: true },
  creepRatio24h: { value: 0.8, provenance: 'from-memory', lowConfidence: true },
  creepRatio1000h: { value: 0.62, provenance: 'from-memory', lowConfidence: true },
  strengthRatios: [
    { temperature: 40, ratio: { value: 0.88, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 60, ratio: { value: 0.72, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 80, ratio: { value: 0.5, provenance: 'from-memory', lowConfidence: true } },
  ],
  crackedByThreadlocker: false,
  elastomer: false,
  source: 'printed-materials',
};

/** State of indoor use, 50 % relative humidity; dry it is stronger and stiffer. Creep from PA66. */
export const PA6: PrintedMaterial = {
  id: 'pa6',
  name: 'PA6, conditioned',
  melts: true,
  tensileInPlane: { value: 42, low: 35, high: 60, provenance: 'from-memory' },
  tensileAcrossLayers: { value: 24, provenance: 'from-memory', lowConfidence: true },
  shearBetweenLayers: { value: 14, provenance: 'from-memory', lowConfidence: true },
  compressive: { value: 45, provenance: 'from-memory', lowConfidence: true },
  modulusInPlane: { value: 1100, low: 900, high: 1800, provenance: 'from-memory' },
  poissonRatio: { value: 0.42, provenance: 'from-memory', lowConfidence: true },
  // Known for the dry state only.
  softening: {
    value: 180,
    low: 160,
    high: 190,
    provenance: 'from-memory',
    lowConfidence: true,
    kind: 'heat-deflection',
  },
  serviceMax: { value: 80, provenance: 'from-memory' },
  creepRatio1h: { value: 1, provenance: 'derived' },
  creepRatio24h: { value: 0.85, provenance: 'derived' },
  creepRatio1000h: { value: 0.66, provenance: 'derived' },
  strengthRatios: [
    { temperature: 40, ratio: { value: 0.85, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 60, ratio: { value: 0.65, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 80, ratio: { value: 0.55, provenance: 'from-memory', lowConfidence: true } },
  ],
  crackedByThreadlocker: false,
  elastomer: false,
  source: 'printed-materials',
};

/** Printed strengths remembered. */
export const PA12: PrintedMaterial = {
  id: 'pa12',
  name: 'PA12',
  melts: true,
  tensileInPlane: { value: 42, low: 35, high: 48, provenance: 'from-memory' },
  tensileAcrossLayers: { value: 30, low: 22, high: 38, provenance: 'from-memory', lowConfidence: true },
  shearBetweenLayers: { value: 17, provenance: 'from-memory', lowConfidence: true },
  compressive: { value: 45, provenance: 'from-memory', lowConfidence: true },
  modulusInPlane: { value: 1200, low: 900, high: 1400, provenance: 'from-memory' },
  poissonRatio: { value: 0.4, provenance: 'from-memory' },
  softening: {
    value: 110,
    low: 95,
    high: 120,
    provenance: 'from-memory',
    lowConfidence: true,
    kind: 'heat-deflection',
  },
  serviceMax: { value: 75, low: 70, high: 80, provenance: 'derived' },
  creepRatio1h: { value: 0.75, provenance: 'from-memory', lowConfidence: true },
  creepRatio24h: { value: 0.6, provenance: 'from-memory', lowConfidence: true },
  creepRatio1000h: { value: 0.45, provenance: 'from-memory', lowConfidence: true },
  strengthRatios: [
    { temperature: 40, ratio: { value: 0.82, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 60, ratio: { value: 0.65, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 80, ratio: { value: 0.52, provenance: 'from-memory', lowConfidence: true } },
  ],
  crackedByThreadlocker: false,
  elastomer: false,
  source: 'printed-materials',
};

/** In plane at ±45° to the bead, which infill is; along the bead it reads 55.9 and 2160. Creep across layers. */
export const PA_CF: PrintedMaterial = {
  id: 'pa-cf',
  name: 'PA-CF (short fibre)',
  melts: true,
  tensileInPlane: { value: 29.1, low: 21.8, high: 29.1, provenance: 'read' },
  tensileAcrossLayers: { value: 19.3, low: 8.78, high: 19.3, provenance: 'read' },
  shearBetweenLayers: { value: 11, provenance: 'derived' },
  compressive: { value: 55, provenance: 'from-memory', lowConfidence: true },
  modulusInPlane: { value: 950, provenance: 'read' },
  poissonRatio: { value: 0.38, provenance: 'from-memory', lowConfidence: true },
  softening: { value: 178, provenance: 'read', kind: 'heat-deflection' },
  serviceMax: { value: 100, provenance: 'from-memory', lowConfidence: true },
  creepRatio1h: { value: 0.9, provenance: 'from-memory', lowConfidence: true },
  creepRatio24h: { value: 0.75, provenance: 'from-memory', lowConfidence: true },
  creepRatio1000h: { value: 0.55, provenance: 'from-memory', lowConfidence: true },
  strengthRatios: [
    { temperature: 40, ratio: { value: 0.88, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 60, ratio: { value: 0.75, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 80, ratio: { value: 0.65, provenance: 'from-memory', lowConfidence: true } },
  ],
  crackedByThreadlocker: false,
  elastomer: false,
  source: 'printed-materials',
};

/** Creep and compression of the moulded polymer; shear 0.577 of the tensile strength across layers. */
export const PC: PrintedMaterial = {
  id: 'pc',
  name: 'PC',
  melts: true,
  tensileInPlane: { value: 58, low: 58, high: 75, provenance: 'read' },
  tensileAcrossLayers: { value: 38, low: 35, high: 52, provenance: 'derived' },
  shearBetweenLayers: { value: 22, provenance: 'derived' },
  compressive: { value: 80, low: 80, high: 86, provenance: 'read' },
  modulusInPlane: { value: 2200, low: 2000, high: 3000, provenance: 'derived' },
  poissonRatio: { value: 0.37, provenance: 'read' },
  softening: { value: 147, low: 143, high: 150, provenance: 'derived', kind: 'glass-transition' },
  serviceMax: { value: 115, low: 115, high: 125, provenance: 'read' },
  creepRatio1h: { value: 0.917, provenance: 'derived' },
  creepRatio24h: { value: 0.87, provenance: 'derived' },
  creepRatio1000h: { value: 0.792, provenance: 'derived' },
  strengthRatios: [
    { temperature: 40, ratio: { value: 0.93, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 60, ratio: { value: 0.85, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 80, ratio: { value: 0.75, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 100, ratio: { value: 0.65, provenance: 'from-memory', lowConfidence: true } },
  ],
  crackedByThreadlocker: true,
  elastomer: false,
  source: 'printed-materials',
};

/** An elastomer: not suited to a preload. */
export const TPU_95A: PrintedMaterial = {
  id: 'tpu-95a',
  name: 'TPU 95A',
  melts: true,
  tensileInPlane: { value: 22, low: 17.8, high: 36, provenance: 'read' },
  tensileAcrossLayers: { value: 14, low: 12, high: 24, provenance: 'derived' },
  shearBetweenLayers: { value: 8, provenance: 'derived' },
  // None known: the in-plane tensile strength stands in.
  compressive: { value: 22, provenance: 'derived', lowConfidence: true },
  modulusInPlane: { value: 100, low: 100, high: 146, provenance: 'read' },
  poissonRatio: { value: 0.48, provenance: 'from-memory' },
  softening: {
    value: 110,
    low: 100,
    high: 130,
    provenance: 'from-memory',
    lowConfidence: true,
    kind: 'vicat',
  },
  serviceMax: { value: 75, low: 70, high: 90, provenance: 'derived' },
  creepRatio1h: { value: 0.8, provenance: 'from-memory', lowConfidence: true },
  creepRatio24h: { value: 0.7, provenance: 'from-memory', lowConfidence: true },
  creepRatio1000h: { value: 0.55, provenance: 'from-memory', lowConfidence: true },
  strengthRatios: [
    { temperature: 40, ratio: { value: 0.85, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 60, ratio: { value: 0.7, provenance: 'from-memory', lowConfidence: true } },
    { temperature: 80, ratio: { value: 0.5, provenance: 'from-memory', lowConfidence: true } },
  ],
  crackedByThreadlocker: false,
  elastomer: true,
  source: 'printed-materials',
};

/** Photopolymer of any kind: it does not melt. */
export const RESIN: NonMeltingMaterial = {
  id: 'resin',
  name: 'Photopolymer resin',
  melts: false,
  source: 'trade-practice',
};

export const HOST_MATERIALS: readonly HostMaterial[] = [
  PLA,
  PLA_PLUS,
  PETG,
  ABS,
  ASA,
  PA6,
  PA12,
  PA_CF,
  PC,
  TPU_95A,
  RESIN,
];
