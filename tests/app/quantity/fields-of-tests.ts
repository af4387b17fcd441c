import type { QuantityDefinition } from '../../../src/app/quantity/quantity-definition.ts';

/** Definitions as the program might have them; limits in the core unit, all different. */
export const KNURL = {
  kind: 'length',
  displayUnit: 'mm',
  min: 2.4,
  max: 26,
  usual: [3.1, 9.3],
  step: 0.05,
  isDiameter: true,
} as const satisfies QuantityDefinition;

export const LID = {
  kind: 'length',
  displayUnit: 'mm',
  min: 0,
  minInclusive: false,
  max: 31,
  step: 0.1,
} as const;

export const PULL = { kind: 'force', displayUnit: 'N', min: 0, max: 4000, step: 10 } as const;

export const DIAL = { kind: 'torque', displayUnit: 'N·m', min: 0, max: 5300, step: 0.01 } as const;

export const WARMEST = { kind: 'temperature', displayUnit: '°C', min: -60, max: 190, step: 1 } as const;

export const DURATION = { kind: 'time', displayUnit: 'year', min: 0, max: 438000, step: 1 } as const;

export const INFILL = { kind: 'ratio', displayUnit: '%', min: 0, max: 1, step: 5 } as const;

export const LEAN = { kind: 'angle', displayUnit: '°', step: 1 } as const;
