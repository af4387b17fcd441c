import { isTorsionTested, minimumBreakingTorque } from '../../src/core/screws/breaking-torque.ts';
import { proofLoad, ultimateTensileLoad } from '../../src/core/screws/tensile-load.ts';
import type { Check } from './check.ts';
import { classNamed, threadNamed } from './rows-of-tables.ts';

const SIZES = ['M3', 'M4', 'M5', 'M6', 'M8'] as const;

/** Printed loads, N, M3 to M8. 4.6 and 5.8 have no proof loads here: those were not read, only worked out. */
const PROOF = {
  '4.8': ['1560', '2720', '4400', '6230', '11400'],
  '8.8': ['2920', '5100', '8230', '11600', '21200'],
  '10.9': ['4180', '7290', '11800', '16700', '30400'],
  '12.9': ['4880', '8520', '13800', '19500', '35500'],
} as const;
const ULTIMATE = {
  '4.6': ['2010', '3510', '5680', '8040', '14600'],
  '4.8': ['2110', '3690', '5960', '8440', '15400'],
  '5.8': ['2620', '4570', '7380', '10400', '19000'],
  '8.8': ['4020', '7020', '11350', '16100', '29200'],
  '10.9': ['5230', '9130', '14800', '20900', '38100'],
  '12.9': ['6140', '10700', '17300', '24500', '44600'],
} as const;

const OF_THE_STANDARD = {
  kind: 'part',
  of: 0.0065,
  why: 'the standard multiplies the rounded area and rounds again, not strictly to nearest (M6 5.8: 10 400 where the product is 10 452)',
} as const;

function proofOf(size: string, designation: string): number {
  const propertyClass = classNamed(designation);
  const { proofStress } = propertyClass;
  if (proofStress === undefined) throw new Error(`${designation} has no proof stress`);
  return proofLoad({ thread: threadNamed(size), propertyClass: { ...propertyClass, proofStress } }).value;
}

const ultimateOf = (size: string, designation: string): number =>
  ultimateTensileLoad({ thread: threadNamed(size), propertyClass: classNamed(designation) }).value;

function loads(
  name: 'proof' | 'ult',
  table: Readonly<Record<string, readonly string[]>>,
  load: (size: string, designation: string) => number,
): readonly Check[] {
  const words =
    name === 'proof'
      ? { quantity: 'proof load', formula: 'Fp = As · Sp', place: 'proof loads, coarse threads' }
      : {
          quantity: 'breaking load',
          formula: 'Fm = As · Rm',
          place: 'minimum ultimate tensile loads, coarse threads',
        };
  return Object.entries(table).flatMap(([designation, printed]) =>
    SIZES.map((size, index) => ({
      id: `iso898-1.${name}.${size}.${designation}`,
      quantity: `${words.quantity}, ${size} ${designation}`,
      formula: words.formula,
      printed: printed[index] ?? '',
      unit: 'N',
      tolerance: OF_THE_STANDARD,
      source: 'iso-898-1' as const,
      place: words.place,
      how: 'reprint' as const,
      kind: 'computed' as const,
      computed: () => load(size, designation),
    })),
  );
}

export const TENSILE_LOADS: readonly Check[] = [
  ...loads('proof', PROOF, proofOf),
  ...loads('ult', ULTIMATE, ultimateOf),
];

/** Remembered table of breaking torques, N·m: 8.8, 10.9, 12.9. */
const BREAKING = {
  M2: ['0.37', '0.45', '0.50'],
  'M2.5': ['0.82', '1.0', '1.1'],
  M3: ['1.5', '1.9', '2.1'],
  M4: ['3.6', '4.4', '4.9'],
  M5: ['7.6', '9.3', '10'],
  M6: ['13', '16', '17'],
  M8: ['33', '40', '44'],
} as const;

function breakingTorqueOf(size: string, designation: string): number {
  const propertyClass = classNamed(designation);
  if (!isTorsionTested(propertyClass)) throw new Error(`${designation} is not covered`);
  return minimumBreakingTorque({ thread: threadNamed(size), propertyClass }).value / 1000;
}

export const BREAKING_TORQUES_COMPUTED: readonly Check[] = Object.entries(BREAKING).flatMap(
  ([size, printed]) =>
    (['8.8', '10.9', '12.9'] as const).map((designation, index) => ({
      id: `iso898-7.MB.${size}.${designation}`,
      quantity: `least breaking torque, ${size} ${designation}`,
      formula: 'MB = X · Rm · π/16 · d3min³',
      printed: printed[index] ?? '',
      unit: 'N·m',
      source: 'iso-898-7' as const,
      place: 'table of minimum breaking torques',
      how: 'from memory' as const,
      kind: 'computed' as const,
      computed: () => breakingTorqueOf(size, designation),
    })),
);
