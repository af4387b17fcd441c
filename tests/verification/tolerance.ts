import { grubbsCritical } from '../../src/core/evidence/outlier.ts';
import { predictionFactor, predictionFactorKnown } from '../../src/core/evidence/prediction-factor.ts';
import { provenShare } from '../../src/core/evidence/proof-plan.ts';
import { toleranceFactor } from '../../src/core/evidence/tolerance-factor.ts';
import { chiSquaredQuantile } from '../../src/core/numerics/chi-squared.ts';
import type { Check, OwnTolerance } from './check.ts';

/** Values of n with the printed factor. */
type Column = readonly (readonly [count: number, printed: string])[];

interface ToleranceTable {
  readonly share: number;
  readonly confidence: number;
  readonly column: Column;
}

/** 0.90/0.95 as the handbook prints it. */
const HANDBOOK: Column = [
  [2, '20.581'],
  [3, '6.157'],
  [5, '3.408'],
  [7, '2.756'],
  [8, '2.583'],
  [9, '2.454'],
];
const ROUNDED_UP: OwnTolerance = {
  kind: 'absolute',
  is: 0.0025,
  why: 'the handbook rounds up, by 0.002 at most',
};

/** n from 2 to 10, 20 and 30. */
const NUMBERS = [2, 3, 4, 5, 6, 7, 8, 9, 10, 20, 30] as const;
const columnOf = (printed: string): Column =>
  printed.split(' ').map((text, place) => [NUMBERS[place] ?? 0, text] as const);

const REMEMBERED: readonly ToleranceTable[] = [
  {
    share: 0.95,
    confidence: 0.95,
    column: columnOf('26.260 7.656 5.144 4.203 3.708 3.399 3.187 3.031 2.911 2.396 2.220'),
  },
  {
    share: 0.99,
    confidence: 0.95,
    column: columnOf('37.094 10.553 7.042 5.741 5.062 4.642 4.354 4.143 3.981 3.295 3.064'),
  },
  {
    share: 0.9,
    confidence: 0.9,
    column: columnOf('10.253 4.258 3.188 2.742 2.494 2.333 2.219 2.133 2.066 1.765 1.657'),
  },
  {
    share: 0.95,
    confidence: 0.9,
    column: columnOf('13.090 5.311 3.957 3.400 3.092 2.894 2.754 2.650 2.568 2.208 2.080'),
  },
  {
    share: 0.99,
    confidence: 0.9,
    column: columnOf('18.500 7.340 5.438 4.666 4.243 3.972 3.783 3.641 3.532 3.052 2.884'),
  },
];

const toleranceCheck = ({ share, confidence }: ToleranceTable, count: number, printed: string) => ({
  id: `k.${share}/${confidence}.n${count}`,
  quantity: `tolerance factor, share ${share}, confidence ${confidence}, ${count} values`,
  formula: 't′(γ; n − 1, z_p·√n)/√n',
  printed,
  unit: '-',
  kind: 'computed' as const,
  computed: () => toleranceFactor(count, { share, confidence }),
});

export const TOLERANCE_FACTORS: readonly Check[] = [
  ...HANDBOOK.map(
    ([count, printed]): Check => ({
      ...toleranceCheck({ share: 0.9, confidence: 0.95, column: HANDBOOK }, count, printed),
      source: 'cmh-17',
      place: 'kB table',
      how: 'reprint',
      tolerance: ROUNDED_UP,
    }),
  ),
  {
    ...toleranceCheck({ share: 0.95, confidence: 0.95, column: [] }, 50, '2.065'),
    source: 'nureg-tolerance',
    place: 'one-sided table',
    how: 'reprint',
  },
  ...REMEMBERED.flatMap((table) =>
    table.column.map(
      ([count, printed]): Check => ({
        ...toleranceCheck(table, count, printed),
        source: 'iso-16269-6',
        place: 'one-sided, unknown variance',
        how: 'from memory',
      }),
    ),
  ),
];

const D1_UNKNOWN: Column = [
  [3, '3.37'],
  [4, '2.63'],
  [5, '2.33'],
  [6, '2.18'],
  [8, '2.00'],
  [10, '1.92'],
  [20, '1.76'],
  [30, '1.73'],
];
const D1_KNOWN: Column = [
  [1, '2.31'],
  [2, '2.01'],
  [3, '1.89'],
  [4, '1.83'],
  [5, '1.80'],
  [6, '1.77'],
  [8, '1.74'],
  [10, '1.72'],
  [20, '1.68'],
  [30, '1.67'],
];
const D2_KNOWN: Column = [
  [1, '4.36'],
  [2, '3.77'],
  [3, '3.56'],
  [4, '3.44'],
  [5, '3.37'],
  [6, '3.33'],
  [8, '3.27'],
  [10, '3.23'],
  [20, '3.16'],
  [30, '3.13'],
];
/** Its entries at 20 and 30 are doubtful by their own formula and left out. */
const D2_UNKNOWN: Column = [
  [4, '11.40'],
  [5, '7.85'],
  [6, '6.36'],
  [8, '5.07'],
  [10, '4.51'],
];
const DESIGN_SHARE = 0.999;

const predictionChecks = (
  table: string,
  { column, why, room }: { readonly column: Column; readonly why: string; readonly room: number },
  factor: (count: number) => number,
): readonly Check[] =>
  column.map(
    ([count, printed]): Check => ({
      id: `en1990.${table}.n${count}`,
      quantity: `prediction factor, ${table}, ${count} values`,
      formula: table.endsWith('unknown') ? 't·√(1 + 1/n)' : 'z·√(1 + 1/n)',
      printed,
      unit: '-',
      tolerance: { kind: 'absolute', is: room, why },
      source: 'en-1990',
      place: `Annex D, Table ${table.slice(0, 2)}`,
      how: 'from memory',
      kind: 'computed',
      computed: () => factor(count),
    }),
  );

export const PREDICTION_FACTORS: readonly Check[] = [
  ...predictionChecks(
    'D1, V_X unknown',
    { column: D1_UNKNOWN, room: 0.015, why: 'entries at 5, 8 and 20 are cut off or low' },
    (count) => predictionFactor(count, 0.95),
  ),
  ...predictionChecks(
    'D1, V_X known',
    { column: D1_KNOWN, room: 0.02, why: 'the table is made with z = 1.64' },
    (count) => predictionFactorKnown(count, 0.95),
  ),
  ...predictionChecks(
    'D2, V_X known',
    { column: D2_KNOWN, room: 0.02, why: 'the table is made with z = 3.08' },
    (count) => predictionFactorKnown(count, DESIGN_SHARE),
  ),
  ...predictionChecks(
    'D2, V_X unknown',
    { column: D2_UNKNOWN, room: 0.03, why: 'entries at 4 to 8 are cut off' },
    (count) => predictionFactor(count, DESIGN_SHARE),
  ),
];

const CHI_SQUARED = [
  [1, '3.841'],
  [2, '5.991'],
  [5, '11.070'],
  [9, '16.919'],
] as const;

export const CHI_SQUARED_QUANTILES: readonly Check[] = [
  {
    id: 'chi2.0.01.42',
    quantity: 'chi-squared, 1 %, 42 degrees of freedom',
    formula: 'F(x) = 0.01',
    printed: '23.650',
    unit: '-',
    source: 'nist-handbook',
    place: '7.2.6.3, example',
    how: 'reprint',
    kind: 'computed',
    computed: () => chiSquaredQuantile(0.01, 42),
  },
  ...CHI_SQUARED.map(
    ([degrees, printed]): Check => ({
      id: `chi2.0.95.${degrees}`,
      quantity: `chi-squared, 95 %, ${degrees} degrees of freedom`,
      formula: 'F(x) = 0.95',
      printed,
      unit: '-',
      source: 'nist-handbook',
      place: 'table of chi-squared',
      how: 'from memory',
      kind: 'computed',
      computed: () => chiSquaredQuantile(0.95, degrees),
    }),
  ),
];

const RUNS = [
  [29, 0.9, '0.0471'],
  [59, 0.95, '0.0485'],
  [299, 0.99, '0.0495'],
] as const;

/** The remembered entries at 3 (1.155) and 8 (2.126) are a unit of their last digit off the formula and left out. */
const GRUBBS: Column = [
  [4, '1.481'],
  [5, '1.715'],
  [6, '1.887'],
  [7, '2.020'],
  [9, '2.215'],
  [10, '2.290'],
];

export const PROOF_AND_OUTLIERS: readonly Check[] = [
  ...RUNS.map(
    ([count, share, printed]): Check => ({
      id: `nonpar.n${count}`,
      quantity: `chance that ${count} parts hold, share ${share}`,
      formula: 'pⁿ, and back by p = (1 − γ)^(1/n)',
      printed,
      unit: '-',
      source: 'success-run',
      place: 'nonparametric basis values',
      how: 'from memory',
      kind: 'computed',
      // The confidence at which the run proves just this share, found from the core's own share at any confidence.
      computed: () => 0.5 ** (Math.log(share) / Math.log(provenShare(count, 0.5))),
    }),
  ),
  ...GRUBBS.map(
    ([count, printed]): Check => ({
      id: `grubbs.0.05.n${count}`,
      quantity: `limit of the farthest value, two-sided 5 %, ${count} values`,
      formula: '(n − 1)/√n·√(t²/(n − 2 + t²))',
      printed,
      unit: '-',
      source: 'grubbs-1969',
      place: 'table, two-sided 5 %',
      how: 'from memory',
      kind: 'computed',
      computed: () => grubbsCritical(count, 0.05),
    }),
  ),
];
