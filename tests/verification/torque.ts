import { frictionDiameterOf } from '../../src/core/screws/head-bearing.ts';
import { nutFactor, tighteningTorqueByNutFactor } from '../../src/core/torque/nut-factor.ts';
import { leastPreload, preloadBounds, tighteningFactor } from '../../src/core/torque/scatter.ts';
import { tighteningTorque } from '../../src/core/torque/tightening-torque.ts';
import { unifiedThread } from '../fixtures/iso-965/threads.ts';
import type { Check } from './check.ts';
import { headOf, threadNamed } from './rows-of-tables.ts';

export const TORQUE_AND_SCATTER: readonly Check[] = [
  {
    id: 'shigley.T.8-3b',
    quantity: 'torque by a nut factor of 0.2, 3/4-16, 25 kip',
    formula: 'T = K · F · d',
    printed: '3750',
    unit: 'lbf·in',
    source: 'shigley',
    place: 'Example 8-3(b)',
    how: 'from memory',
    kind: 'computed',
    computed: () =>
      tighteningTorqueByNutFactor({ nutFactor: 0.2, force: 25_000, nominalDiameter: 0.75 }).value,
  },
  {
    id: 'shigley.T.8-3c',
    quantity: 'torque by friction 0.15, 3/4-16, 25 kip',
    formula: 'MA = F · (P/(2π) + μG · d2/(2 · cos 30°) + μK · DKm/2)',
    printed: '3551',
    unit: 'lbf·in',
    tolerance: {
      kind: 'part',
      of: 0.003,
      why: 'the book follows the helix exactly, the equation here is its small-angle form',
    },
    source: 'shigley',
    place: 'Example 8-3(c)',
    how: 'from memory',
    kind: 'computed',
    computed: () => {
      const inch = unifiedThread(0.75, 16);
      const thread = { ...inch, nominalDiameter: 0.75, pitch: 1 / 16 };
      const friction = { threadFriction: 0.15, headFriction: 0.15, bearingDiameter: 1.25 * 0.75 };
      return tighteningTorque({ thread, force: 25_000, ...friction }).value;
    },
  },
  {
    id: 'scatter.alphaA.from_pct',
    quantity: 'tightening factor of ±23 %',
    formula: 'αA = (1 + s)/(1 − s)',
    printed: '1.6',
    unit: '-',
    source: 'vdi-2230-1986',
    place: 'scatter and tightening factor by method (pairing)',
    how: 'from memory',
    kind: 'computed',
    computed: () => tighteningFactor(0.23).value,
  },
  {
    id: 'scatter.alphaA.FMmin',
    quantity: 'least preload of 41.9 kN at αA 1.8',
    formula: 'FMmin = FMmax/αA',
    printed: '23.3',
    unit: 'kN',
    source: 'vdi-2230-2001',
    place: 'worked example on the tables, M12 × 40',
    how: 'reprint',
    kind: 'computed',
    computed: () => leastPreload({ most: 41_900, tighteningFactor: 1.8 }).value / 1000,
  },
  {
    id: 'nasa.preload.bounds',
    quantity: 'largest over least preload at Γ 0.35',
    formula: '(1 + Γ)/(1 − Γ)',
    printed: '2.077',
    unit: '-',
    source: 'worked-apart',
    place: 'equation of nsts-08307 §3.4',
    how: 'recomputed',
    kind: 'computed',
    computed: () => {
      const { least, most } = preloadBounds({ mean: 1870, scatter: 0.35 });
      return most.value / least.value;
    },
  },
];

const FRICTIONS = [0.1, 0.12, 0.14, 0.16, 0.2, 0.3] as const;

/** Worked out apart from the program for socket head cap screws over ISO 273 medium holes. */
const EQUIVALENT = {
  M2: ['0.156', '0.180', '0.205', '0.230', '0.279', '0.403'],
  'M2.5': ['0.150', '0.175', '0.199', '0.224', '0.272', '0.394'],
  M3: ['0.149', '0.173', '0.197', '0.222', '0.271', '0.393'],
  M4: ['0.148', '0.172', '0.196', '0.220', '0.268', '0.388'],
  M5: ['0.145', '0.169', '0.193', '0.216', '0.264', '0.384'],
  M6: ['0.145', '0.168', '0.192', '0.215', '0.263', '0.381'],
  M8: ['0.143', '0.167', '0.191', '0.215', '0.262', '0.380'],
} as const;

function nutFactorOf(size: string, friction: number): number {
  const thread = threadNamed(size);
  const bearingDiameter = frictionDiameterOf({
    shape: 'cylindrical',
    outerDiameter: headOf('ISO 4762', size).bearingDiameter,
    holeDiameter: thread.clearanceHoles.medium,
  });
  return nutFactor({ thread, threadFriction: friction, headFriction: friction, bearingDiameter }).value;
}

export const NUT_FACTORS: readonly Check[] = Object.entries(EQUIVALENT).flatMap(([size, printed]) =>
  FRICTIONS.map((friction, index) => ({
    id: `K.${size}.mu${friction}`,
    quantity: `nut factor, ISO 4762 ${size}, μ ${friction}`,
    formula: 'K = (P/(2π) + μ · d2/(2 · cos 30°) + μ · DKm/2)/d',
    printed: printed[index] ?? '',
    unit: '-',
    source: 'worked-apart' as const,
    place: 'equivalent nut factors',
    how: 'recomputed' as const,
    kind: 'computed' as const,
    computed: () => nutFactorOf(size, friction),
  })),
);
