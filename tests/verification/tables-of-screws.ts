import { BREAKING_TORQUES } from '../../src/data/breaking-torques.ts';
import { LENGTH_TOLERANCES } from '../../src/data/length-tolerances.ts';
import { theRow } from '../support/the-row.ts';
import type { Check, CheckedHow } from './check.ts';
import { classNamed, headOf, washerFor } from './rows-of-tables.ts';

/** Tensile strength, yield or proof strength, proof stress, MPa. */
const CLASSES = [
  ['4.6', '400', '240', '225'],
  ['4.8', '420', '340', '310'],
  ['5.8', '520', '420', '380'],
  ['8.8', '800', '640', '580'],
  ['10.9', '1040', '940', '830'],
  ['12.9', '1220', '1100', '970'],
  ['A2-70', '700', '450', undefined],
] as const;

export const PROPERTY_CLASS_TABLE: readonly Check[] = CLASSES.flatMap(([name, tensile, yielding, proof]) => {
  const shared = {
    formula: 'property-classes.ts',
    unit: 'MPa',
    source: name === 'A2-70' ? 'iso-3506-1' : 'iso-898-1',
    place: 'mechanical properties, d ≤ 16 mm',
    how: 'reprint',
    kind: 'table',
  } as const;
  const row = classNamed(name);
  const checks: readonly Check[] = [
    {
      ...shared,
      id: `class.Rm.${name}`,
      quantity: `Rm, ${name}`,
      printed: tensile,
      computed: () => row.tensileStrengthMin,
    },
    {
      ...shared,
      id: `class.Rp.${name}`,
      quantity: `Rp, ${name}`,
      printed: yielding,
      computed: () => row.yieldStrengthMin,
    },
  ];
  return proof === undefined
    ? checks
    : [
        ...checks,
        {
          ...shared,
          id: `class.Sp.${name}`,
          quantity: `Sp, ${name}`,
          printed: proof,
          computed: () => row.proofStress ?? Number.NaN,
        },
      ];
});

const SIZES = ['M2', 'M2.5', 'M3', 'M4', 'M5', 'M6', 'M8'] as const;

/** Breaking torques of stainless screws, N·m, M2 to M8. */
const STAINLESS = {
  'A2-50': ['0.3', '0.6', '1.1', '2.7', '5.5', '9.3', '23'],
  'A2-70': ['0.4', '0.9', '1.6', '3.8', '7.8', '13', '32'],
  'A2-80': ['0.48', '0.96', '1.8', '4.3', '8.8', '15', '37'],
} as const;

const torque = (size: string, propertyClass: string) =>
  theRow(BREAKING_TORQUES, (row) => row.thread === size && row.propertyClass === propertyClass).torque / 1000;

export const STAINLESS_BREAKING_TORQUES: readonly Check[] = Object.entries(STAINLESS).flatMap(
  ([propertyClass, printed]) =>
    SIZES.map(
      (size, index): Check => ({
        id: `iso3506-1.MB.${size}.${propertyClass}`,
        quantity: `least breaking torque, ${size} ${propertyClass}`,
        formula: 'breaking-torques.ts',
        printed: printed[index] ?? '',
        unit: 'N·m',
        source: 'iso-3506-1',
        place: 'minimum breaking torques',
        how: 'reprint',
        kind: 'table',
        computed: () => torque(size, propertyClass),
      }),
    ),
);

const COLUMNS = ['diameter', 'height', 'bearingDiameter', 'socketAcrossFlats', 'socketDepth'] as const;
const SYMBOLS = {
  diameter: 'dk max',
  height: 'k max',
  bearingDiameter: 'dw min',
  socketAcrossFlats: 's',
  socketDepth: 't min',
} as const;

/** dk max, k max, dw min (the others: dk min), s, t min. */
const HEADS: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  'ISO 4762': {
    M2: ['3.8', '2', '3.48', '1.5', '1.0'],
    'M2.5': ['4.5', '2.5', '4.18', '2', '1.1'],
    M3: ['5.5', '3', '5.07', '2.5', '1.3'],
    M4: ['7', '4', '6.53', '3', '2'],
    M5: ['8.5', '5', '8.03', '4', '2.5'],
    M6: ['10', '6', '9.38', '5', '3'],
    M8: ['13', '8', '12.33', '6', '4'],
  },
  'ISO 7380-1': {
    M3: ['5.7', '1.65', '5.4', '2', '1.04'],
    M4: ['7.6', '2.2', '7.24', '2.5', '1.3'],
    M5: ['9.5', '2.75', '9.14', '3', '1.56'],
    M6: ['10.5', '3.3', '10.07', '4', '2.08'],
    M8: ['14', '4.4', '13.57', '5', '2.6'],
  },
  'ISO 10642': {
    M3: ['6.72', '1.86', '5.54', '2', '1.1'],
    M4: ['8.96', '2.48', '7.53', '2.5', '1.5'],
    M5: ['11.20', '3.10', '9.43', '3', '1.9'],
    M6: ['13.44', '3.72', '11.34', '4', '2.2'],
    M8: ['17.92', '4.96', '15.24', '5', '3.0'],
  },
};

export const HEAD_TABLE: readonly Check[] = Object.entries(HEADS).flatMap(([standard, sizes]) =>
  Object.entries(sizes).flatMap(([size, printed]) =>
    COLUMNS.map((column, index): Check => {
      const row = headOf(standard, size);
      const symbol = column === 'bearingDiameter' && standard !== 'ISO 4762' ? 'dk min' : SYMBOLS[column];
      return {
        id: `head.${standard}.${size}.${column}`,
        quantity: `${symbol}, ${standard} ${size}`,
        formula: 'heads.ts',
        printed: printed[index] ?? '',
        unit: 'mm',
        source: row.source,
        place: 'dimensions',
        how: 'reprint',
        kind: 'table',
        computed: () => row[column],
      };
    }),
  ),
);

/** Hole, outside diameter, thickness. */
const WASHERS = [
  ['M2', '2.2', '5', '0.3'],
  ['M2.5', '2.7', '6', '0.5'],
  ['M3', '3.2', '7', '0.5'],
  ['M4', '4.3', '9', '0.8'],
  ['M5', '5.3', '10', '1'],
  ['M6', '6.4', '12', '1.6'],
  ['M8', '8.4', '16', '1.6'],
] as const;

export const WASHER_TABLE: readonly Check[] = WASHERS.flatMap(([size, hole, outside, thickness]) => {
  const row = washerFor(size);
  const how: CheckedHow = size === 'M2.5' ? 'from memory' : 'reprint';
  const shared = {
    formula: 'washers.ts',
    unit: 'mm',
    source: 'iso-7089',
    place: 'normal series',
    how,
    kind: 'table',
  } as const;
  return [
    {
      ...shared,
      id: `washer.d1.${size}`,
      quantity: `hole of the washer, ${size}`,
      printed: hole,
      computed: () => row.holeDiameter,
    },
    {
      ...shared,
      id: `washer.d2.${size}`,
      quantity: `outside diameter, ${size}`,
      printed: outside,
      computed: () => row.outsideDiameter,
    },
    {
      ...shared,
      id: `washer.h.${size}`,
      quantity: `thickness, ${size}`,
      printed: thickness,
      computed: () => row.thickness,
    },
  ];
});

const DEVIATIONS = [
  [6, '0.24'],
  [8, '0.29'],
  [10, '0.29'],
  [12, '0.35'],
  [16, '0.35'],
  [20, '0.42'],
  [30, '0.42'],
  [35, '0.5'],
  [50, '0.5'],
  [55, '0.6'],
  [60, '0.6'],
] as const;

export const LENGTH_TABLE: readonly Check[] = DEVIATIONS.map(
  ([length, printed]): Check => ({
    id: `js15.${length}`,
    quantity: `deviation ± of a screw of ${length} mm`,
    formula: 'length-tolerances.ts',
    printed,
    unit: 'mm',
    source: 'iso-4759',
    place: 'js15',
    how: 'reprint',
    kind: 'table',
    computed: () => theRow(LENGTH_TOLERANCES, ({ over, upTo }) => length > over && length <= upTo).deviation,
  }),
);
