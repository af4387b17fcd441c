import { stressAreaOf } from '../../src/core/screws/stress-area.ts';
import {
  externalMinorDiameterOf,
  internalMinorDiameterOf,
  pitchDiameterOf,
} from '../../src/core/screws/thread-geometry.ts';
import { threadOf, unifiedThread } from '../fixtures/iso-965/threads.ts';
import { type Check, checksOf } from './check.ts';
import { threadNamed } from './rows-of-tables.ts';

const coreArea = (designation: string) =>
  (Math.PI / 4) * externalMinorDiameterOf(threadNamed(designation)) ** 2;

const exact = {
  unit: 'mm²',
  source: 'shank-table',
  place: 'exact areas',
  how: 'read',
  kind: 'computed',
} as const;

export const METRIC_THREADS: readonly Check[] = [
  ...checksOf({ ...exact, unit: 'mm', formula: 'd2 = d − 3/4 · √3/2 · P' }, [
    {
      id: 'thread.d2.M2',
      quantity: 'd2, M2',
      printed: '1.7402',
      computed: () => pitchDiameterOf(threadNamed('M2')),
    },
    {
      id: 'thread.d2.M2.5',
      quantity: 'd2, M2.5',
      printed: '2.2077',
      computed: () => pitchDiameterOf(threadNamed('M2.5')),
    },
  ]),
  ...checksOf({ ...exact, formula: 'A3 = π/4 · d3², d3 = d − 17/12 · √3/2 · P' }, [
    { id: 'thread.A3.M2', quantity: 'A3, M2', printed: '1.7890', computed: () => coreArea('M2') },
    { id: 'thread.A3.M2.5', quantity: 'A3, M2.5', printed: '2.9801', computed: () => coreArea('M2.5') },
    { id: 'thread.A3.M3', quantity: 'A3, M3', printed: '4.4734', computed: () => coreArea('M3') },
  ]),
  ...checksOf(
    {
      formula: 'D1 = D − 5/4 · √3/2 · P',
      unit: 'mm',
      source: 'tap-limits',
      place: 'basic D1',
      how: 'reprint',
      kind: 'computed',
    },
    (
      [
        ['M5', '4.134'],
        ['M6', '4.917'],
        ['M8', '6.647'],
      ] as const
    ).map(([size, printed]) => ({
      id: `thread.D1.${size}`,
      quantity: `D1, ${size}`,
      printed,
      computed: () => internalMinorDiameterOf(threadNamed(size)),
    })),
  ),
  ...checksOf(
    { ...exact, formula: 'As = π/4 · ((d2 + d3)/2)²' },
    (
      [
        ['M2', '2.0732'],
        ['M2.5', '3.3908'],
        ['M3', '5.0308'],
      ] as const
    ).map(([size, printed]) => ({
      id: `thread.As.${size}`,
      quantity: `As, ${size}`,
      printed,
      computed: () => stressAreaOf(threadNamed(size)),
    })),
  ),
  ...checksOf(
    {
      formula: 'As = π/4 · ((d2 + d3)/2)²',
      unit: 'mm²',
      source: 'gb-t-16823-1',
      place: 'stress areas',
      how: 'reprint',
      kind: 'computed',
    },
    (
      [
        ['M4', '8.78'],
        ['M5', '14.18'],
        ['M6', '20.12'],
        ['M8', '36.61'],
      ] as const
    ).map(([size, printed]) => ({
      id: `thread.As.${size}`,
      quantity: `As, ${size}`,
      printed,
      computed: () => stressAreaOf(threadNamed(size)),
    })),
  ),
  ...checksOf(
    {
      formula: 'As = π/4 · ((d2 + d3)/2)²',
      unit: 'mm²',
      source: 'iso-898-1',
      place: 'nominal stress areas, coarse threads',
      how: 'reprint',
      kind: 'computed',
    },
    (
      [
        ['M3', '5.03'],
        ['M4', '8.78'],
        ['M5', '14.2'],
        ['M6', '20.1'],
        ['M8', '36.6'],
      ] as const
    ).map(([size, printed]) => ({
      id: `iso898-1.As.${size}`,
      quantity: `As, ${size}, as the standard rounds it`,
      printed,
      computed: () => stressAreaOf(threadNamed(size)),
    })),
  ),
];

/** Printed inch sizes: d2, minor external, minor internal [in], stress area [in²]. */
const UNC = [
  ['4-40', '0.0958', '0.0822', '0.0849', '0.00604'],
  ['6-32', '0.1177', '0.1008', '0.1042', '0.00909'],
  ['8-32', '0.1437', '0.1268', '0.1302', '0.0140'],
  ['10-24', '0.1629', '0.1404', '0.1449', '0.0175'],
  ['1/4-20', '0.2175', '0.1905', '0.1959', '0.0318'],
] as const;

const MILLIMETRES_PER_INCH = 25.4;
const inInches = (millimetres: number) => millimetres / MILLIMETRES_PER_INCH;
const unified = {
  unit: 'in',
  source: 'asme-b1.1',
  place: 'basic sizes, coarse threads',
  how: 'reprint',
  kind: 'computed',
} as const;
const areaInInches = (area: number) => area / MILLIMETRES_PER_INCH ** 2;

export const INCH_THREADS: readonly Check[] = [
  ...UNC.flatMap(([size, pitch, minor, inner, area]) => [
    ...checksOf(unified, [
      {
        id: `unc.d2.${size}`,
        quantity: `d2, ${size}`,
        formula: 'd2 = D − 3/4 · √3/2/n',
        printed: pitch,
        computed: () => inInches(pitchDiameterOf(threadNamed(size))),
      },
      {
        id: `unc.d3.${size}`,
        quantity: `minor diameter of the screw, ${size}`,
        formula: 'D − 11/8 · √3/2/n',
        printed: minor,
        computed: () => inInches(externalMinorDiameterOf(threadNamed(size))),
      },
      {
        id: `unc.D1.${size}`,
        quantity: `minor diameter of the nut, ${size}`,
        formula: 'D − 5/4 · √3/2/n',
        printed: inner,
        computed: () => inInches(internalMinorDiameterOf(threadNamed(size))),
      },
      {
        id: `unc.At.${size}`,
        quantity: `At, ${size}`,
        formula: 'At = π/4 · (D − 0.9743/n)²',
        printed: area,
        unit: 'in²',
        place: 'tensile stress areas, coarse threads',
        computed: () => areaInInches(stressAreaOf(threadNamed(size))),
        ...(size === '4-40'
          ? {
              tolerance: {
                kind: 'part' as const,
                of: 0.0013,
                why: 'the printed area lies 0.12 % above its own formula, π/4 · (0.112 − 0.0243575)² = 0.0060328 in²',
              },
            }
          : {}),
      },
    ] as const),
  ]),
  ...checksOf(
    {
      formula: 'At = π/4 · (D − 0.9743/n)²',
      unit: 'in²',
      source: 'shigley',
      place: 'Examples 8-3 and 8-4',
      how: 'read',
      kind: 'computed',
    },
    [
      {
        id: 'shigley.At.3/4-16',
        quantity: 'At, 3/4-16',
        printed: '0.373',
        computed: () => areaInInches(stressAreaOf(unifiedThread(0.75, 16))),
      },
      {
        id: 'shigley.At.5/8-11',
        quantity: 'At, 5/8-11',
        printed: '0.226',
        computed: () => areaInInches(stressAreaOf(unifiedThread(0.625, 11))),
      },
    ],
  ),
  ...checksOf(
    {
      ...exact,
      formula: 'ds = d − 0.938194 · P',
      unit: 'mm',
      source: 'worked-apart',
      place: 'coefficient',
      how: 'recomputed',
    },
    [
      {
        id: 'thread.d0.coefficient',
        quantity: '(d2 + d3)/2 below d at a pitch of 1 mm',
        printed: '0.938194',
        computed: () => 6 - (pitchDiameterOf(threadOf(6, 1)) + externalMinorDiameterOf(threadOf(6, 1))) / 2,
      },
    ],
  ),
];
