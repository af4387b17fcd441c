import type { MaterialValue, PrintedMaterial } from '../../src/core/host/material.ts';
import { CLAMPED_MATERIALS } from '../../src/data/clamped-materials.ts';
import { HOST_MATERIALS } from '../../src/data/host-materials.ts';
import { INSERT_METAL } from '../../src/data/insert-metal.ts';
import { TORQUE_TOOL_CLASSES } from '../../src/data/torque-tools.ts';
import { theRow } from '../support/the-row.ts';
import type { Check } from './check.ts';

type Column = {
  [Key in keyof PrintedMaterial]-?: PrintedMaterial[Key] extends MaterialValue ? Key : never;
}[keyof PrintedMaterial];

/** Values read in cards and data sheets, as collected; everything else of the table is derived or remembered. */
const READ: readonly (readonly [
  material: string,
  column: Column,
  words: string,
  printed: string,
  unit: string,
  place: string,
])[] = [
  ['pla', 'tensileInPlane', 'tensile strength in plane', '50', 'MPa', 'PLA, printed: least of 50 to 65'],
  ['pla', 'poissonRatio', 'Poisson’s ratio', '0.36', '-', 'PLA, material card'],
  ['pla', 'softening', 'glass transition', '60', '°C', 'PLA, materials reference'],
  ['petg', 'tensileInPlane', 'tensile strength in plane', '44', 'MPa', 'PETG, printed: least of 44 to 56'],
  ['petg', 'compressive', 'compressive strength', '55', 'MPa', 'PETG, data sheet'],
  ['abs', 'poissonRatio', 'Poisson’s ratio', '0.37', '-', 'ABS, material card'],
  ['abs', 'softening', 'glass transition', '105', '°C', 'ABS, 105 to 108'],
  ['asa', 'softening', 'glass transition', '100', '°C', 'ASA, data sheet'],
  ['pa-cf', 'tensileInPlane', 'tensile strength at ±45°', '29.1', 'MPa', 'PA-CF, ISO 527-2'],
  ['pa-cf', 'tensileAcrossLayers', 'tensile strength across layers', '19.3', 'MPa', 'PA-CF, ISO 527-2'],
  ['pa-cf', 'modulusInPlane', 'modulus at ±45°', '950', 'MPa', 'PA-CF, ISO 527-2'],
  ['pa-cf', 'softening', 'heat deflection at 0.45 MPa', '178', '°C', 'PA-CF'],
  ['pc', 'tensileInPlane', 'tensile strength in plane', '58', 'MPa', 'PC, printed: least of 58 to 75'],
  ['pc', 'compressive', 'compressive strength', '80', 'MPa', 'PC, material card'],
  ['pc', 'poissonRatio', 'Poisson’s ratio', '0.37', '-', 'PC, material card'],
  ['pc', 'serviceMax', 'continuous service, 20,000 h', '115', '°C', 'PC, data sheet'],
  [
    'tpu-95a',
    'tensileInPlane',
    'tensile strength in plane',
    '22',
    'MPa',
    'TPU 95A, printed: least of 22 to 36',
  ],
];

const polymers = HOST_MATERIALS.filter((row): row is PrintedMaterial => row.melts);

export const POLYMER_TABLE: readonly Check[] = READ.map(
  ([material, column, words, printed, unit, place]): Check => {
    const row = theRow(polymers, ({ id }) => id === material);
    return {
      id: `material.${material}.${column}`,
      quantity: `${words}, ${row.name}`,
      formula: 'host-materials.ts',
      printed,
      unit,
      source: 'printed-materials',
      place,
      how: 'read',
      kind: 'table',
      computed: () => row[column].value,
    };
  },
);

const PRESSURES = [
  ['steel', '490', 'S235'],
  ['aluminium', '260', 'EN AW-6082'],
  ['stainless', '630', 'X5CrNi18-12'],
] as const;

const metals = CLAMPED_MATERIALS.flatMap((row) => (row.kind === 'metal' ? [row] : []));

export const METAL_TABLE: readonly Check[] = [
  ...PRESSURES.map(
    ([id, printed, name]): Check => ({
      id: `pG.${id}`,
      quantity: `limiting surface pressure, ${name}`,
      formula: 'clamped-materials.ts',
      printed,
      unit: 'MPa',
      source: 'vdi-2230',
      place: '2003, limiting surface pressures',
      how: 'reprint',
      kind: 'table',
      computed: () => theRow(metals, (row) => row.id === id).limitingPressure,
    }),
  ),
  ...(
    [
      ['yield', INSERT_METAL.yield.value, '220', 'CW614N, least of 220 to 350'],
      ['yield, least of all tempers', INSERT_METAL.yield.low, '124', 'C36000, 124 to 359'],
      ['tensile strength', INSERT_METAL.tensile.value, '350', 'CW614N, least of 350 to 500'],
      ['tensile strength, least of all tempers', INSERT_METAL.tensile.low, '338', 'C36000, 338 to 469'],
      ['shear strength', INSERT_METAL.shear.value, '220', 'C36000, half hard'],
      ['shear strength, soft', INSERT_METAL.shear.low, '207', 'C36000, soft'],
    ] as const
  ).map(
    ([words, value, printed, place]): Check => ({
      id: `brass.${words}`,
      quantity: `${words} of brass`,
      formula: 'insert-metal.ts',
      printed,
      unit: 'MPa',
      source: 'brass-data',
      place,
      how: 'read',
      kind: 'table',
      computed: () => value ?? Number.NaN,
    }),
  ),
  {
    id: 'brass.modulus',
    quantity: 'modulus of brass',
    formula: 'insert-metal.ts',
    printed: '97',
    unit: 'GPa',
    source: 'brass-data',
    place: 'CW614N, typical',
    how: 'read',
    kind: 'table',
    computed: () => INSERT_METAL.modulus.value / 1000,
  },
  {
    id: 'tool.driver',
    quantity: 'deviation ± of a torque driver up to 10 N·m',
    formula: 'torque-tools.ts',
    printed: '6',
    unit: '%',
    source: 'iso-6789',
    place: 'Type II, class A',
    how: 'reprint',
    kind: 'table',
    computed: () => 100 * theRow(TORQUE_TOOL_CLASSES, ({ kind }) => kind === 'torque-driver').deviation,
  },
  {
    id: 'tool.hand',
    quantity: 'deviation ± by feel',
    formula: 'torque-tools.ts',
    printed: '35',
    unit: '%',
    source: 'machinery-handbook',
    place: 'preload by method',
    how: 'reprint',
    kind: 'table',
    computed: () => 100 * theRow(TORQUE_TOOL_CLASSES, ({ kind }) => kind === 'hand').deviation,
  },
];
