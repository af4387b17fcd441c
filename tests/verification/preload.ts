import { frictionDiameterOf } from '../../src/core/screws/head-bearing.ts';
import type { Thread } from '../../src/core/screws/thread.ts';
import { tighteningTorque } from '../../src/core/torque/tightening-torque.ts';
import { yieldPreloadOf } from '../../src/core/torque/yield-preload.ts';
import { threadOf } from '../fixtures/iso-965/threads.ts';
import type { Check, OwnTolerance } from './check.ts';
import { classNamed, threadNamed } from './rows-of-tables.ts';

/** The share of yield that the tables after VDI 2230 use up. */
const UTILISATION = 0.9;

interface Screw {
  readonly thread: Thread;
  readonly propertyClass: string;
  readonly friction: number;
  /** Bearing face of a hexagon head over an ISO 273 medium hole, mm. */
  readonly face: number;
}

/** Preload, kN. */
const preloadOf = ({ thread, propertyClass, friction }: Screw): number =>
  yieldPreloadOf({
    thread,
    yieldStrength: classNamed(propertyClass).yieldStrengthMin,
    threadFriction: friction,
    utilisation: UTILISATION,
  }) / 1000;

/** Torque, N·m, for that preload. */
function torqueOf(screw: Screw, holeDiameter: number): number {
  const bearingDiameter = frictionDiameterOf({
    shape: 'cylindrical',
    outerDiameter: screw.face,
    holeDiameter,
  });
  const { thread, friction } = screw;
  const force = 1000 * preloadOf(screw);
  return (
    tighteningTorque({ thread, force, threadFriction: friction, headFriction: friction, bearingDiameter })
      .value / 1000
  );
}

const FM = 'FM = ν · As · Rp/√(1 + 3 · (3/2 · d2/d0 · (P/(π · d2) + μ/cos 30°))²)';
const MA = 'MA = FM · (P/(2π) + μ · d2/(2 · cos 30°) + μ · DKm/2)';
const ROUNDED: OwnTolerance = {
  kind: 'part',
  of: 0.004,
  why: 'three figures from inputs that the reprint does not show; one entry (12.9, μ 0.12) is 34.7 kN where the formula gives 34.8 kN',
};

/** μ, then FM [kN] and MA [N·m] for 8.8, 10.9, 12.9. */
const FINE = [
  [0.1, ['20.7', '30.4', '35.6'], ['22.8', '33.5', '39.2']],
  [0.12, ['20.2', '29.7', '34.7'], ['26.1', '38.3', '44.9']],
  [0.14, ['19.7', '28.9', '33.9'], ['29.2', '42.8', '50.1']],
] as const;
const CLASSES = ['8.8', '10.9', '12.9'] as const;
const M8_FINE = threadOf(8, 1);

const fineThread = FINE.flatMap(([friction, forces, torques]) =>
  CLASSES.flatMap((propertyClass, index): readonly Check[] => {
    const screw = { thread: M8_FINE, propertyClass, friction, face: 11.63 };
    const shared = {
      tolerance: ROUNDED,
      source: 'vdi-2230-2001',
      how: 'reprint',
      kind: 'computed',
    } as const;
    return [
      {
        ...shared,
        id: `vdi.FM.M8x1.mu${friction}.${propertyClass}`,
        quantity: `FM, M8 × 1, ${propertyClass}, μ ${friction}`,
        formula: FM,
        printed: forces[index] ?? '',
        unit: 'kN',
        place: 'assembly preloads, fine threads',
        computed: () => preloadOf(screw),
      },
      {
        ...shared,
        id: `vdi.MA.M8x1.mu${friction}.${propertyClass}`,
        quantity: `MA, M8 × 1, ${propertyClass}, μ ${friction}`,
        formula: MA,
        printed: torques[index] ?? '',
        unit: 'N·m',
        place: 'tightening torques, fine threads',
        computed: () => torqueOf(screw, 9),
      },
    ];
  }),
);

/** Bearing face [mm], then MA [N·m] at μ 0.14 for 8.8, 10.9, 12.9. */
const COARSE = [
  ['M4', 5.88, ['3.3', '4.8', '5.6']],
  ['M5', 6.88, ['6.5', '9.5', '11.2']],
  ['M6', 8.88, ['11.3', '16.5', '19.3']],
  ['M8', 11.63, ['27.3', '40.1', '46.9']],
] as const;

const coarseThread = COARSE.flatMap(([size, face, torques]) =>
  CLASSES.map((propertyClass, index): Check => {
    const thread = threadNamed(size);
    return {
      id: `vdi.MA.${size}.mu0.14.${propertyClass}`,
      quantity: `MA, ${size}, ${propertyClass}, μ 0.14`,
      formula: MA,
      printed: torques[index] ?? '',
      unit: 'N·m',
      tolerance: {
        kind: 'part',
        of: 0.01,
        why: 'the manual does not show its bearing faces: hexagon heads over ISO 273 medium holes are taken',
      },
      source: 'vdi-2230-manual',
      place: 'torques at μ 0.14',
      how: 'reprint',
      kind: 'computed',
      computed: () => torqueOf({ thread, propertyClass, friction: 0.14, face }, thread.clearanceHoles.medium),
    };
  }),
);

export const PRELOADS: readonly Check[] = [...fineThread, ...coarseThread];

/** Hexagon bearing face [mm]; FM [kN] and MA [N·m] at μ 0.1, 0.2, 0.3. The faces of M2 to M3 are remembered. */
const STAINLESS = [
  ['M2', 3.07, ['0.74', '0.64', '0.55'], ['0.23', '0.35', '0.43']],
  ['M2.5', 4.07, ['1.23', '1.06', '0.90'], ['0.46', '0.72', '0.89']],
  ['M3', 4.57, ['1.84', '1.60', '1.36'], ['0.80', '1.26', '1.56']],
  ['M4', 5.88, ['3.2', '2.76', '2.35'], ['1.85', '2.9', '3.6']],
  ['M5', 6.88, ['5.2', '4.51', '3.85'], ['3.6', '5.7', '7.0']],
  ['M6', 8.88, ['7.3', '6.4', '5.5'], ['6.3', '10', '12.2']],
  ['M8', 11.63, ['13.4', '11.6', '9.9'], ['15.2', '24.1', '30']],
] as const;

const CATALOGUE_FORCE: OwnTolerance = {
  kind: 'part',
  of: 0.011,
  why: 'two or three figures from inputs that the catalogue does not show',
};
const catalogueTorque = (size: string): OwnTolerance => ({
  kind: 'part',
  of: size === 'M2' ? 0.028 : 0.015,
  why: 'the catalogue does not show its bearing faces: hexagon heads over ISO 273 medium holes are taken, those of M2 to M3 remembered',
});

export const STAINLESS_PRELOADS: readonly Check[] = STAINLESS.flatMap(([size, face, forces, torques]) =>
  [0.1, 0.2, 0.3].flatMap((friction, index): readonly Check[] => {
    const thread = threadNamed(size);
    const screw = { thread, propertyClass: 'A2-70', friction, face };
    const shared = { source: 'stainless-catalogue', place: 'A2-70', how: 'read', kind: 'computed' } as const;
    return [
      {
        ...shared,
        id: `a2-70.FM.${size}.mu${friction}`,
        quantity: `FM, ${size}, μ ${friction}`,
        formula: FM,
        printed: forces[index] ?? '',
        unit: 'kN',
        tolerance: CATALOGUE_FORCE,
        computed: () => preloadOf(screw),
      },
      {
        ...shared,
        id: `a2-70.MA.${size}.mu${friction}`,
        quantity: `MA, ${size}, μ ${friction}`,
        formula: MA,
        printed: torques[index] ?? '',
        unit: 'N·m',
        tolerance: catalogueTorque(size),
        computed: () => torqueOf(screw, thread.clearanceHoles.medium),
      },
    ];
  }),
);
