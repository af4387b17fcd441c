import {
  engagementForEqualStrength,
  insertStrippingAreaOf,
  screwStrippingAreaOf,
} from '../../src/core/screws/stripping-areas.ts';
import { coarseThread, threadOf } from '../fixtures/iso-965/threads.ts';
import { type Check, checksOf } from './check.ts';
import { threadNamed } from './rows-of-tables.ts';

const ASS = 'ASs = π · (LE/P) · D1max · (P/2 + (d2min − D1max)/√3)';
const ASN = 'ASn = π · (LE/P) · dmin · (P/2 + (dmin − D2max)/√3)';

const bickford = {
  unit: 'mm²',
  source: 'bickford',
  place: 'strip areas, LE = 1 d, 6H/6g',
  how: 'reprint',
  kind: 'computed',
} as const;

/** Load of M10 10.9 in the worked example, 1200 MPa on 58 mm², N; shear strength of the aluminium, MPa. */
const M10_LOAD = 1200 * 58;
const ALUMINIUM_SHEAR = 130;

function m10Engagement(externalMajorMin: number): number {
  const M10 = coarseThread('M10');
  const thread = threadOf(10, 1.5, 'metric', { ...M10.limits, externalMajorMin });
  return M10_LOAD / (ALUMINIUM_SHEAR * insertStrippingAreaOf(thread, 1));
}

/** Area per millimetre of engagement, screw and insert [mm²/mm], and Le of equal strength [mm]. */
const PER_MILLIMETRE = [
  ['M2', '2.447', '3.441', '1.69'],
  ['M2.5', '3.177', '4.477', '2.13'],
  ['M3', '3.903', '5.547', '2.58'],
  ['M4', '5.473', '7.769', '3.21'],
  ['M5', '7.073', '9.999', '4.01'],
  ['M6', '8.646', '12.191', '4.66'],
  ['M8', '12.161', '16.829', '6.02'],
] as const;

export const STRIPPING: readonly Check[] = [
  ...checksOf(bickford, [
    {
      id: 'strip.ASs.M5',
      quantity: 'ASs, M5, LE 5 mm',
      formula: ASS,
      printed: '35.366',
      computed: () => screwStrippingAreaOf(threadNamed('M5'), 5),
    },
    {
      id: 'strip.ASs.M6',
      quantity: 'ASs, M6, LE 6 mm',
      formula: ASS,
      printed: '51.875',
      computed: () => screwStrippingAreaOf(threadNamed('M6'), 6),
    },
    {
      id: 'strip.ASs.M8',
      quantity: 'ASs, M8, LE 8 mm',
      formula: ASS,
      printed: '97.290',
      computed: () => screwStrippingAreaOf(threadNamed('M8'), 8),
    },
    {
      id: 'strip.ASn.M5',
      quantity: 'ASn, M5, LE 5 mm',
      formula: ASN,
      printed: '49.994',
      computed: () => insertStrippingAreaOf(threadNamed('M5'), 5),
    },
    {
      id: 'strip.ASn.M6',
      quantity: 'ASn, M6, LE 6 mm',
      formula: ASN,
      printed: '73.145',
      computed: () => insertStrippingAreaOf(threadNamed('M6'), 6),
    },
    {
      id: 'strip.ASn.M8',
      quantity: 'ASn, M8, LE 8 mm',
      formula: ASN,
      printed: '134.63',
      computed: () => insertStrippingAreaOf(threadNamed('M8'), 8),
    },
  ]),
  {
    id: 'strip.LE.M10-10.9-aluminium',
    quantity: 'engagement of M10 10.9 in aluminium, with the example’s own diameter 9.968 mm',
    formula: 'LE = F/(τ · ASn/LE)',
    printed: '21.6',
    unit: 'mm',
    source: 'engagement-chapter',
    place: 'abstract (see the errata)',
    how: 'read',
    kind: 'computed',
    computed: () => m10Engagement(9.968),
  },
  {
    id: 'strip.LE.M10.true_min',
    quantity: 'the same with the least major diameter of 6g, 9.732 mm',
    formula: 'LE = F/(τ · ASn/LE)',
    printed: '24.9',
    unit: 'mm',
    source: 'worked-apart',
    place: 'erratum of the example',
    how: 'recomputed',
    kind: 'computed',
    computed: () => m10Engagement(9.732),
  },
  ...PER_MILLIMETRE.flatMap(([size, screw, insert, engagement]) =>
    checksOf(
      {
        formula: ASS,
        unit: 'mm²/mm',
        source: 'worked-apart',
        place: 'areas per millimetre',
        how: 'recomputed',
        kind: 'computed',
      },
      [
        {
          id: `strip.perMm.ASs.${size}`,
          quantity: `ASs/LE, ${size}`,
          printed: screw,
          computed: () => screwStrippingAreaOf(threadNamed(size), 1),
        },
        {
          id: `strip.perMm.ASn.${size}`,
          quantity: `ASn/LE, ${size}`,
          formula: ASN,
          printed: insert,
          computed: () => insertStrippingAreaOf(threadNamed(size), 1),
        },
        {
          id: `strip.Le.${size}`,
          quantity: `engagement at which screw and thread hold the same, ${size}`,
          formula: 'Le = 2 · As/(ASs/LE)',
          printed: engagement,
          unit: 'mm',
          computed: () =>
            engagementForEqualStrength({
              thread: threadNamed(size),
              screwTensileStrength: 400,
              insertTensileStrength: 410,
            }).value,
        },
      ],
    ),
  ),
];
