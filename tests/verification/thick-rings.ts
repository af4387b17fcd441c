import { hoopPerPressure, pressFitPressureOf } from '../../src/core/pull-out/thick-ring.ts';
import { type Check, checksOf } from './check.ts';

const STEEL = { modulus: 207_000, poissonRatio: 0.292 };
const INCH_STEEL = { modulus: 30e6, poissonRatio: 0.292 };

/** Ring 50/75 mm on a shaft with a hole of 25 mm, 0.02 mm too large on the diameter. */
const pressure = () =>
  pressFitPressureOf({
    diametralInterference: 0.02,
    diameter: 50,
    ring: { ...STEEL, outerDiameter: 75 },
    shaft: { ...STEEL, holeDiameter: 25 },
  });

/** The solution goes on with its rounded pressure, MPa. */
const PRINTED_PRESSURE = 19.41;

/** Ring on a solid steel shaft of 1 in, psi. */
const inchPressure = (diametralInterference: number, outerDiameter: number) =>
  pressFitPressureOf({
    diametralInterference,
    diameter: 1,
    ring: { ...INCH_STEEL, outerDiameter },
    shaft: { ...INCH_STEEL, holeDiameter: 0 },
  });

const FIT = 'p = δ/D/[(κo + νo)/Eo + (κi − νi)/Ei]';
const HOOP = 'σ = p · (Do² + D²)/(Do² − D²)';
const solutions = { source: 'shigley-8', how: 'read', kind: 'computed' } as const;

const vonMises = (hoop: number, radial: number) => Math.sqrt(hoop ** 2 - hoop * radial + radial ** 2);

export const THICK_RINGS: readonly Check[] = [
  ...checksOf({ ...solutions, unit: 'MPa', place: 'problem 5-35' }, [
    {
      id: 'lame.p.5-35',
      quantity: 'pressure between ring and shaft, 25/50/75 mm',
      formula: FIT,
      printed: '19.41',
      computed: pressure,
    },
    {
      id: 'lame.sti.5-35',
      quantity: 'hoop stress of the shaft',
      formula: 'σ = −p · (D² + di²)/(D² − di²)',
      printed: '−32.35',
      computed: () => -PRINTED_PRESSURE * hoopPerPressure(50, 25),
    },
    {
      id: 'lame.sto.5-35',
      quantity: 'hoop stress of the ring',
      formula: HOOP,
      printed: '50.47',
      computed: () => PRINTED_PRESSURE * hoopPerPressure(75, 50),
    },
    {
      id: 'lame.vm.5-35',
      quantity: 'equivalent stress of the ring',
      formula: '√(σt² − σt · σr + σr²), σr = −p',
      printed: '62.48',
      tolerance: {
        kind: 'absolute',
        is: 0.02,
        why: 'the solution goes on with its rounded stress, 50.47 MPa',
      },
      computed: () => vonMises(PRINTED_PRESSURE * hoopPerPressure(75, 50), -PRINTED_PRESSURE),
    },
  ]),
  ...checksOf({ ...solutions, unit: 'psi' }, [
    {
      id: 'lame.p.3-68',
      quantity: 'pressure, solid shaft of 1 in, ring of 2 in',
      formula: FIT,
      printed: '22500',
      place: 'problem 3-68',
      computed: () => inchPressure(0.002, 2),
    },
    {
      id: 'lame.sto.3-68',
      quantity: 'hoop stress of that ring',
      formula: HOOP,
      printed: '37500',
      place: 'problem 3-68',
      computed: () => inchPressure(0.002, 2) * hoopPerPressure(2, 1),
    },
    {
      id: 'lame.p.5-34b',
      quantity: 'pressure, ring of 1.5 in',
      formula: FIT,
      printed: '4167',
      place: 'problem 5-34(b)',
      computed: () => inchPressure(0.0005, 1.5),
    },
  ]),
];
