import { meanOf, measuredLength } from '../../src/core/inserts/measured-length.ts';
import { normalQuantile } from '../../src/core/numerics/normal-distribution.ts';
import { studentQuantile } from '../../src/core/numerics/student-t.ts';
import { type Check, checksOf } from './check.ts';

/** Preload at a torque of 90 N·m, kN. */
const DRY = [
  23.6, 27.6, 28.0, 29.4, 30.3, 30.7, 32.9, 33.8, 33.8, 33.8, 34.7, 35.6, 35.6, 37.4, 37.8, 37.8, 39.2, 40.0,
  40.5, 42.7,
];
const LUBRICATED = [30.3, 32.5, 32.5, 32.9, 32.9, 33.8, 34.3, 34.7, 37.4, 40.5];

/** Five readings each of Annex H.2: volts, milliamperes, radians. */
const VOLTAGE = [5.007, 4.994, 5.005, 4.99, 4.999];
const CURRENT = [19.663, 19.639, 19.64, 19.685, 19.678];
const PHASE = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];

const mean = (values: readonly number[]) => meanOf({ values, permissibleError: 0 });
const uncertainty = (values: readonly number[]) =>
  measuredLength('x', { values, permissibleError: 0 }).standardUncertainty.value;
const deviation = (values: readonly number[]) => uncertainty(values) * Math.sqrt(values.length);
const percent = (values: readonly number[]) => (100 * deviation(values)) / mean(values);

const MEAN = 'Σx/n';
const DEVIATION = 's = √(Σ(x − x̄)²/(n − 1))';
const table = { unit: 'kN', source: 'shigley', how: 'read', kind: 'computed' } as const;
const annex = {
  source: 'jcgm-100',
  place: 'Annex H.2, Table H.2',
  how: 'from memory',
  kind: 'computed',
} as const;

export const MEASUREMENT: readonly Check[] = [
  ...checksOf({ ...table, place: 'Table 8-13, 20 unlubricated bolts' }, [
    {
      id: 'scatter.dry.mean',
      quantity: 'mean preload, dry',
      formula: MEAN,
      printed: '34.3',
      computed: () => mean(DRY),
    },
    {
      id: 'scatter.dry.sd',
      quantity: 'its standard deviation',
      formula: DEVIATION,
      printed: '4.91',
      computed: () => deviation(DRY),
    },
    {
      id: 'scatter.dry.V',
      quantity: 'its coefficient of variation',
      formula: 's/x̄',
      printed: '14.3',
      unit: '%',
      computed: () => percent(DRY),
    },
  ]),
  ...checksOf({ ...table, place: 'Table 8-14, 10 lubricated bolts' }, [
    {
      id: 'scatter.lub.mean',
      quantity: 'mean preload, lubricated',
      formula: MEAN,
      printed: '34.18',
      computed: () => mean(LUBRICATED),
    },
    {
      id: 'scatter.lub.sd',
      quantity: 'its standard deviation',
      formula: DEVIATION,
      printed: '2.88',
      computed: () => deviation(LUBRICATED),
    },
    {
      id: 'scatter.lub.V',
      quantity: 'its coefficient of variation',
      formula: 's/x̄',
      printed: '8.4',
      unit: '%',
      computed: () => percent(LUBRICATED),
    },
  ]),
  ...checksOf({ ...annex, formula: MEAN }, [
    {
      id: 'jcgm.H2.V.mean',
      quantity: 'mean voltage',
      printed: '4.9990',
      unit: 'V',
      computed: () => mean(VOLTAGE),
    },
    {
      id: 'jcgm.H2.I.mean',
      quantity: 'mean current',
      printed: '19.6610',
      unit: 'mA',
      computed: () => mean(CURRENT),
    },
    {
      id: 'jcgm.H2.phi.mean',
      quantity: 'mean phase',
      printed: '1.04446',
      unit: 'rad',
      computed: () => mean(PHASE),
    },
  ]),
  ...checksOf({ ...annex, formula: 'uA = s/√n' }, [
    {
      id: 'jcgm.H2.V.u',
      quantity: 'uncertainty of the mean voltage',
      printed: '0.0032',
      unit: 'V',
      computed: () => uncertainty(VOLTAGE),
    },
    {
      id: 'jcgm.H2.I.u',
      quantity: 'uncertainty of the mean current',
      printed: '0.0095',
      unit: 'mA',
      computed: () => uncertainty(CURRENT),
    },
    {
      id: 'jcgm.H2.phi.u',
      quantity: 'uncertainty of the mean phase',
      printed: '0.00075',
      unit: 'rad',
      computed: () => uncertainty(PHASE),
    },
  ]),
  ...checksOf(
    {
      formula: 'uB = a/√3',
      unit: 'mm',
      source: 'worked-apart',
      place: 'hole by caliper',
      how: 'recomputed',
      kind: 'computed',
    },
    [
      {
        id: 'jcgm.rectangular.0.03',
        quantity: 'uncertainty of one reading, ±0.03 mm',
        printed: '0.0173',
        computed: () =>
          measuredLength('x', { values: [5.02], permissibleError: 0.03 }).standardUncertainty.value,
      },
    ],
  ),
];

const STUDENT = [
  [1, '6.314'],
  [2, '2.920'],
  [3, '2.353'],
  [4, '2.132'],
  [5, '2.015'],
  [9, '1.833'],
  [29, '1.699'],
] as const;

const NORMAL = [
  [0.9, '1.282'],
  [0.95, '1.645'],
  [0.99, '2.326'],
] as const;

export const QUANTILES: readonly Check[] = [
  ...STUDENT.map(
    ([degrees, printed]): Check => ({
      id: `t.0.95.${degrees}`,
      quantity: `Student’s t, 95 %, ${degrees} degrees of freedom`,
      formula: 'F(t) = 0.95',
      printed,
      unit: '-',
      source: 'nist-t',
      place: 'column 0.95',
      how: 'reprint',
      kind: 'computed',
      computed: () => studentQuantile(0.95, degrees),
    }),
  ),
  ...NORMAL.map(
    ([chance, printed]): Check => ({
      id: `z.${chance}`,
      quantity: `normal quantile, ${100 * chance} %`,
      formula: 'Φ(z) = p',
      printed,
      unit: '-',
      source: 'tolerance-tables',
      place: 'row n = ∞',
      how: 'from memory',
      kind: 'computed',
      computed: () => normalQuantile(chance),
    }),
  ),
];
