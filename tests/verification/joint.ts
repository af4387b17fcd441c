import {
  loadFactor,
  overloadPull,
  screwForceOf,
  separationLoad,
} from '../../src/core/screws/load-sharing.ts';
import {
  coneEndDiameter,
  frustumStiffness,
  screwStiffness,
  stiffnessInSeries,
} from '../../src/core/screws/stiffness.ts';
import { type Check, checksOf } from './check.ts';

const CONE = 'k = tan 30° · π · E · d/ln[(1.155t + D − d)(D + d)/((1.155t + D + d)(D − d))]';
const SERIES = 'kb = Ad · At · E/(Ad · lt + At · ld)';

const shigley = { source: 'shigley', how: 'read', kind: 'computed' } as const;
const metric = { source: 'shigley-8', how: 'read', kind: 'computed' } as const;
const ROUNDED_CONSTANTS = {
  kind: 'part',
  of: 2e-4,
  why: 'the solution takes 0.5774 and 1.155 for tan 30° and twice that',
} as const;

/** Half of the members of Example 8-4: 0.75 in of cast iron, 14 Mpsi, under a washer face of 1.5 d, inches and Mpsi. */
const half = () =>
  frustumStiffness({ thickness: 0.75, faceDiameter: 1.5 * 0.625, holeDiameter: 0.625, modulus: 14 }).value;

/** Frustum of problem 8-22, kN/mm. */
const frustum = (thickness: number, faceDiameter: number, modulus: number) =>
  frustumStiffness({ thickness, faceDiameter, holeDiameter: 12, modulus }).value / 1000;

export const STIFFNESS: readonly Check[] = [
  {
    ...shigley,
    id: 'stiff.kb.8-4',
    quantity: 'kb of 5/8-11 over a grip of 1.5 in',
    formula: SERIES,
    printed: '5.21',
    unit: 'Mlbf/in',
    place: 'Example 8-4',
    computed: () =>
      screwStiffness({
        shankArea: 0.3068,
        threadArea: 0.226,
        shankLength: 0.75,
        threadLength: 0.75,
        modulus: 30,
      }).value,
  },
  {
    ...shigley,
    id: 'stiff.km.8-4',
    quantity: 'km of 1.5 in of cast iron, two frusta',
    formula: `${CONE}, two in series`,
    printed: '8.95',
    unit: 'Mlbf/in',
    place: 'Example 8-4, Eq. 8-22',
    computed: () => stiffnessInSeries([half(), half()]),
  },
  ...checksOf({ ...metric, formula: SERIES, unit: 'kN/mm' }, [
    {
      id: 'stiff.kb.metric.8-22',
      quantity: 'kb of M12, 30 mm of shank and 15 mm of thread in the grip',
      printed: '466.8',
      place: 'problem 8-22',
      computed: () =>
        screwStiffness({
          shankArea: 113,
          threadArea: 84.3,
          shankLength: 30,
          threadLength: 15,
          modulus: 207_000,
        }).value / 1000,
    },
    {
      id: 'stiff.kb.metric.8-23',
      quantity: 'kb of M12, 10 mm of shank and 16 mm of thread in the grip',
      printed: '744',
      place: 'problem 8-23',
      computed: () =>
        screwStiffness({
          shankArea: 113,
          threadArea: 84.3,
          shankLength: 10,
          threadLength: 16,
          modulus: 207_000,
        }).value / 1000,
    },
  ]),
  ...checksOf({ ...metric, formula: CONE, unit: 'kN/mm', place: 'problem 8-22' }, [
    {
      id: 'stiff.frustum.k1.steel',
      quantity: 'frustum of 20 mm of steel',
      printed: '4470',
      computed: () => frustum(20, 18, 207_000),
    },
    {
      id: 'stiff.frustum.k2.iron',
      quantity: 'frustum of 2.5 mm of iron',
      printed: '52230',
      tolerance: ROUNDED_CONSTANTS,
      computed: () => frustum(2.5, 41.09, 100_000),
    },
    {
      id: 'stiff.frustum.k3.iron',
      quantity: 'frustum of 22.5 mm of iron',
      printed: '2074',
      computed: () => frustum(22.5, 18, 100_000),
    },
  ]),
  {
    ...metric,
    id: 'stiff.series.8-22',
    quantity: 'km of the three frusta',
    formula: '1/km = Σ 1/ki',
    printed: '1379',
    unit: 'kN/mm',
    place: 'problem 8-22',
    computed: () => stiffnessInSeries([4470, 52_230, 2074]),
  },
  {
    ...metric,
    id: 'stiff.D.cone',
    quantity: 'wide end of a cone over 6 mm',
    formula: 'D = dw + 2 · t · tan 30°',
    printed: '24.9',
    unit: 'mm',
    place: 'problem 8-23',
    computed: () => coneEndDiameter({ faceDiameter: 18, thickness: 6 }),
  },
];

/** Proof load of 5/8-11 with a proof strength of 85 kpsi, kip. */
const PROOF_LOAD = 85 * 0.226;
const C = 'C = kb/(kb + km)';

export const LOAD_SHARING: readonly Check[] = [
  ...checksOf({ ...shigley, formula: C, unit: '-' }, [
    {
      id: 'shigley.C.8-3a',
      quantity: 'C of kb 6.5, km 13.8',
      printed: '0.320',
      place: 'Example 8-3(a)',
      computed: () => loadFactor({ screw: 6.5, members: 13.8 }).value,
    },
    {
      id: 'stiff.C.8-4',
      quantity: 'C of kb 5.21, km 8.95',
      printed: '0.368',
      place: 'Example 8-4',
      computed: () => loadFactor({ screw: 5.21, members: 8.95 }).value,
    },
  ]),
  {
    ...metric,
    id: 'stiff.C.8-22',
    quantity: 'C of kb 466.8, km 1379',
    formula: C,
    printed: '0.253',
    unit: '-',
    place: 'problem 8-22',
    computed: () => loadFactor({ screw: 466.8, members: 1379 }).value,
  },
  ...checksOf({ ...shigley, unit: 'kpsi', place: 'Example 8-3(a)' }, [
    {
      id: 'shigley.sigma_i.8-3a',
      quantity: 'stress by the preload alone',
      formula: '(Fi + C · P)/At at P = 0',
      printed: '67.02',
      computed: () => screwForceOf({ preload: 25, pull: 0, loadFactor: 0.32 }) / 0.373,
    },
    {
      id: 'shigley.sigma_b.8-3a',
      quantity: 'stress by preload and a pull of 6 kip',
      formula: '(Fi + C · P)/At',
      printed: '72.17',
      computed: () => screwForceOf({ preload: 25, pull: 6, loadFactor: 0.32 }) / 0.373,
    },
  ]),
  ...checksOf({ ...shigley, unit: '-', place: 'Example 8-4' }, [
    {
      id: 'joint.np.8-4',
      quantity: 'yield factor',
      formula: 'np = Sp · At/(Fi + C · P)',
      printed: '1.16',
      computed: () => PROOF_LOAD / screwForceOf({ preload: 14.4, pull: 6, loadFactor: 0.368 }),
    },
    {
      id: 'joint.nL.8-4',
      quantity: 'load factor',
      formula: 'nL = (Sp · At − Fi)/(C · P)',
      printed: '2.18',
      computed: () => overloadPull({ screwLimit: PROOF_LOAD, preload: 14.4, loadFactor: 0.368 }).value / 6,
    },
    {
      id: 'joint.n0.separation.8-4',
      quantity: 'factor against separation',
      formula: 'n0 = Fi/((1 − C) · P)',
      printed: '3.80',
      computed: () => separationLoad({ preload: 14.4, loadFactor: 0.368 }).value / 6,
    },
  ]),
  ...checksOf({ ...metric, unit: '-' }, [
    {
      id: 'joint.n.8-22',
      quantity: 'load factor of M12, preload 37.9 kN',
      formula: 'nL = (Sp · At − Fi)/(C · P)',
      printed: '4.73',
      place: 'problem 8-22',
      computed: () => overloadPull({ screwLimit: 0.6 * 84.3, preload: 37.9, loadFactor: 0.253 }).value / 10.6,
    },
    {
      id: 'joint.n0.8-37',
      quantity: 'factor against separation',
      formula: 'n0 = Fi/((1 − C) · P)',
      printed: '4.71',
      place: 'problem 8-37',
      computed: () => separationLoad({ preload: 252.45, loadFactor: 0.33 }).value / 80,
    },
  ]),
];
