import type { PropertyClass } from '../core/screws/screw.ts';

/**
 * Strengths of screws up to 16 mm, MPa. The minimum strengths are those of the table, not of the digits in the
 * class name: they differ for 4.8, 5.8, 10.9 and 12.9. Proof stress of 8.8 is 580 up to 16 mm, 600 only above.
 * A2-50 and A2-80 are remembered, A2-70 is read.
 */
export const PROPERTY_CLASSES: readonly PropertyClass[] = [
  {
    id: '4.6',
    designation: '4.6',
    tensileStrengthMin: 400,
    yieldStrengthMin: 240,
    proofStress: 225,
    family: 'carbon-steel',
    source: 'iso-898-1',
  },
  {
    id: '4.8',
    designation: '4.8',
    tensileStrengthMin: 420,
    yieldStrengthMin: 340,
    proofStress: 310,
    family: 'carbon-steel',
    source: 'iso-898-1',
  },
  {
    id: '5.8',
    designation: '5.8',
    tensileStrengthMin: 520,
    yieldStrengthMin: 420,
    proofStress: 380,
    family: 'carbon-steel',
    source: 'iso-898-1',
  },
  {
    id: '8.8',
    designation: '8.8',
    tensileStrengthMin: 800,
    yieldStrengthMin: 640,
    proofStress: 580,
    family: 'carbon-steel',
    source: 'iso-898-1',
  },
  {
    id: '10.9',
    designation: '10.9',
    tensileStrengthMin: 1040,
    yieldStrengthMin: 940,
    proofStress: 830,
    family: 'carbon-steel',
    source: 'iso-898-1',
  },
  {
    id: '12.9',
    designation: '12.9',
    tensileStrengthMin: 1220,
    yieldStrengthMin: 1100,
    proofStress: 970,
    family: 'carbon-steel',
    source: 'iso-898-1',
  },
  {
    id: 'A2-50',
    designation: 'A2-50',
    tensileStrengthMin: 500,
    yieldStrengthMin: 210,
    family: 'stainless-steel',
    source: 'iso-3506-1-classes',
  },
  {
    id: 'A2-70',
    designation: 'A2-70',
    tensileStrengthMin: 700,
    yieldStrengthMin: 450,
    family: 'stainless-steel',
    source: 'iso-3506-1',
  },
  {
    id: 'A2-80',
    designation: 'A2-80',
    tensileStrengthMin: 800,
    yieldStrengthMin: 600,
    family: 'stainless-steel',
    source: 'iso-3506-1-classes',
  },
];
