import { boreAsPrinted } from '../../src/core/holes/bore.ts';
import { facetLossOf } from '../../src/core/holes/facets.ts';
import { holeDepth } from '../../src/core/holes/hole-depth.ts';
import { drawnDiameterOf } from '../../src/core/holes/hole-to-draw.ts';
import { boreBetweenJawsOf } from '../../src/core/holes/jaw-correction.ts';
import { printErrorOf } from '../../src/core/holes/print-error.ts';
import { lineSpacingOf, wallThickness } from '../../src/core/host/wall-thickness.ts';
import type { InsertDimensions } from '../../src/core/inserts/dimensions.ts';
import { measuredLength } from '../../src/core/inserts/measured-length.ts';
import type { Derived } from '../../src/core/sources/derived.ts';
import { PUBLISHED_FIT } from '../support/holes.ts';
import { type Check, checksOf } from './check.ts';

const sheet = { source: 'worked-apart', how: 'recomputed', kind: 'computed', unit: 'mm' } as const;

const SIDES = [8, 12, 16, 24, 32, 48, 64] as const;
/** Loss on the diameter, worked out apart from the program. */
const LOSSES = {
  4: ['0.304', '0.136', '0.077', '0.034', '0.019', '0.009', '0.005'],
  5: ['0.381', '0.170', '0.096', '0.043', '0.024', '0.011', '0.006'],
  6: ['0.457', '0.204', '0.115', '0.051', '0.029', '0.013', '0.007'],
  8: ['0.609', '0.273', '0.154', '0.068', '0.039', '0.017', '0.010'],
} as const;
const FACETS = 'ΔD = D · (1 − cos(π/N))';

export const HOLE_FACETS: readonly Check[] = [
  ...checksOf(
    {
      formula: 'ΔD/D = 1 − cos(π/N)',
      unit: '%',
      source: 'polygon-hole-articles',
      place: 'share lost',
      how: 'read',
      kind: 'computed',
    },
    [
      {
        id: 'facets.10',
        quantity: 'loss with 10 corners',
        printed: '5',
        computed: () => 100 * facetLossOf({ diameter: 1, sides: 10 }),
      },
      {
        id: 'facets.22',
        quantity: 'loss with 22 corners',
        printed: '1',
        computed: () => 100 * facetLossOf({ diameter: 1, sides: 22 }),
      },
    ],
  ),
  ...Object.entries(LOSSES).flatMap(([diameter, printed]) =>
    SIDES.map(
      (sides, index): Check => ({
        ...sheet,
        id: `facets.${diameter}.${sides}`,
        quantity: `loss of a hole of ${diameter} mm with ${sides} sides`,
        formula: FACETS,
        printed: printed[index] ?? '',
        place: 'loss on the diameter',
        computed: () => facetLossOf({ diameter: Number(diameter), sides }),
      }),
    ),
  ),
];

const JAW_FLATS = [0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1] as const;
/** What inside jaws read too little, worked out apart from the program. */
const JAWS_SHORT = {
  3: ['0.007', '0.015', '0.027', '0.042', '0.061', '0.109', '0.172'],
  4: ['0.005', '0.011', '0.020', '0.031', '0.045', '0.081', '0.127'],
  5: ['0.004', '0.009', '0.016', '0.025', '0.036', '0.064', '0.101'],
  6: ['0.003', '0.008', '0.013', '0.021', '0.030', '0.054', '0.084'],
  8: ['0.003', '0.006', '0.010', '0.016', '0.023', '0.040', '0.063'],
} as const;

/** Chord that flats leave in a bore. */
const chordOf = (bore: number, flat: number): number => 2 * Math.sqrt((bore / 2) ** 2 - (flat / 2) ** 2);

export const INSIDE_JAWS: readonly Check[] = Object.entries(JAWS_SHORT).flatMap(([bore, printed]) =>
  JAW_FLATS.map((flat, index): Check => {
    const between = chordOf(Number(bore), flat);
    return {
      ...sheet,
      id: `jaws.${bore}.${flat}`,
      quantity: `added to jaws of ${flat} mm in a bore of ${bore} mm`,
      formula: 'D = √(R² + t²)',
      printed: printed[index] ?? '',
      place: 'chord of a circle',
      computed: () => boreBetweenJawsOf({ between, flat }) - between,
    };
  }),
);

/** Printed less drawn diameter, and the diameter to draw, by the published fit. */
const ERRORS = [
  [3, '−0.369'],
  [4, '−0.302'],
  [5, '−0.251'],
  [6, '−0.209'],
  [8, '−0.143'],
] as const;
const DRAWN = [
  [3, '3.34'],
  [4, '4.29'],
  [4.2, '4.48'],
  [5, '5.24'],
  [5.6, '5.82'],
  [6, '6.20'],
  [8, '8.14'],
] as const;

export const HOLE_ERROR: readonly Check[] = [
  {
    id: 'hole.fit.ceiling',
    quantity: 'error of a hole of 12 mm: always −0.1 mm beyond 10 mm',
    formula: 'e = min(0.2307 · ln D − 0.6223, −0.10)',
    printed: '−0.1',
    unit: 'mm',
    source: 'hole-metrology-note',
    place: 'footnote to the fit',
    how: 'read',
    kind: 'computed',
    computed: () => printErrorOf(PUBLISHED_FIT, 12),
  },
  ...ERRORS.map(
    ([drawn, printed]): Check => ({
      ...sheet,
      id: `hole.error.${drawn}`,
      quantity: `error of a hole drawn at ${drawn} mm`,
      formula: 'e = min(0.2307 · ln D − 0.6223, −0.10)',
      printed,
      place: 'published fit, evaluated',
      computed: () => printErrorOf(PUBLISHED_FIT, drawn),
    }),
  ),
  ...DRAWN.map(
    ([bore, printed]): Check => ({
      ...sheet,
      id: `hole.draw.${bore}`,
      quantity: `diameter to draw for a bore of ${bore} mm`,
      formula: 'D + e(D) = Dt',
      printed,
      place: 'published fit, inverted',
      computed: () => drawnDiameterOf(PUBLISHED_FIT, bore),
    }),
  ),
];

const given = (symbol: string, value: number): Derived => ({
  symbol,
  value,
  unit: 'mm',
  formula: symbol,
  entries: [],
  source: 'your-measurement',
  standing: 'measured',
});

const insertOf = (pilot: number): InsertDimensions => {
  const reading = (symbol: string, value: number) =>
    measuredLength(symbol, { values: [value], permissibleError: 0 });
  return {
    knurlDiameter: reading('D_k', pilot + 0.4),
    pilotDiameter: reading('D_p', pilot),
    length: reading('L', 4),
    knurledLength: reading('L_k', 3),
  };
};

/** Insert length and hole depth of the constants file, mm. */
const DEPTHS = [
  ['M3', 5.7, '6.7'],
  ['M4', 8.1, '9.1'],
  ['M5', 9.5, '10.5'],
  ['short M3', 3, '4.0'],
  ['short M4', 4, '5.0'],
  ['short M5', 5.8, '6.8'],
] as const;

const depthOf = (length: number) =>
  holeDepth({
    length: given('L', length),
    sunk: 0,
    meltHeight: given('m', 0.4),
    layerHeight: 0.1,
  }).value;

export const HOLES_IN_PRACTICE: readonly Check[] = [
  ...checksOf(
    {
      formula: 'Dt = Dp + 0.05 mm',
      unit: 'mm',
      source: 'insert-data-sheet',
      place: 'miniature sizes',
      how: 'read',
      kind: 'computed',
    },
    [
      {
        id: 'bore.M2',
        quantity: 'hole for a pilot of 2.60 mm',
        printed: '2.65',
        computed: () => boreAsPrinted(insertOf(2.6), 0.05).value,
      },
      {
        id: 'bore.M2.5',
        quantity: 'hole for a pilot of 3.15 mm',
        printed: '3.20',
        computed: () => boreAsPrinted(insertOf(3.15), 0.05).value,
      },
    ],
  ),
  ...DEPTHS.map(
    ([name, length, printed]): Check => ({
      id: `depth.${name}`,
      quantity: `depth for ${name}, L ${length} mm`,
      formula: 'T = L + max(1 mm, m)',
      printed,
      unit: 'mm',
      source: 'metric-constants',
      place: 'blind depth',
      how: 'read',
      kind: 'computed',
      computed: () => depthOf(length),
    }),
  ),
  {
    id: 'depth.common-M3',
    quantity: 'depth for the common M3 insert, L 4 mm, melt in layers of 0.2 mm',
    formula: 'T = L + max(1 mm, m)',
    printed: '5',
    unit: 'mm',
    source: 'trade-practice',
    place: 'insert 5 × 4 in a hole of 4.7 mm',
    how: 'read',
    kind: 'computed',
    computed: () =>
      holeDepth({
        length: given('L', 4),
        sunk: 0,
        meltHeight: given('m', 0.27),
        layerHeight: 0.2,
      }).value,
  },
];

/** Line width and layer height, spacing, and walls of 1 to 6 lines. */
const WALLS = [
  [0.42, 0.2, '0.377', ['0.42', '0.80', '1.17', '1.55', '1.93', '2.31']],
  [0.45, 0.2, '0.407', ['0.45', '0.86', '1.26', '1.67', '2.08', '2.49']],
  [0.6, 0.3, '0.536', ['0.60', '1.14', '1.67', '2.21', '2.74', '3.28']],
] as const;
const SPACING = 's = w − h · (1 − π/4)';

const wallOf = (
  count: number,
  lineWidth: number,
  layerHeight: number,
  convention: 'rounded-beads' | 'plain-beads',
) => wallThickness({ wall: { kind: 'lines', count, lineWidth, convention }, layerHeight }).value;

const settings = {
  unit: 'mm',
  source: 'slicer-settings-note',
  place: 'walls of 0.4 mm lines in layers of 0.2 mm',
  how: 'read',
  kind: 'computed',
} as const;

export const PRINTED_WALLS: readonly Check[] = [
  {
    ...settings,
    id: 'wall.two-spacings',
    quantity: 'two spacings of rounded beads',
    formula: '2 · (w − h · (1 − π/4))',
    printed: '0.714',
    computed: () => 2 * lineSpacingOf({ lineWidth: 0.4, layerHeight: 0.2 }),
  },
  {
    ...settings,
    id: 'wall.plain',
    quantity: 'two plain beads side by side',
    formula: 'n · w',
    printed: '0.8',
    computed: () => wallOf(2, 0.4, 0.2, 'plain-beads'),
  },
  ...WALLS.flatMap(([w, h, spacing, walls]): readonly Check[] => [
    {
      ...sheet,
      id: `wall.spacing.${w}x${h}`,
      quantity: `spacing, lines ${w} × ${h} mm`,
      formula: SPACING,
      printed: spacing,
      place: 'bead section of slicer-flow-note, evaluated',
      computed: () => lineSpacingOf({ lineWidth: w, layerHeight: h }),
    },
    ...walls.map(
      (printed, index): Check => ({
        ...sheet,
        id: `wall.${index + 1}.${w}x${h}`,
        quantity: `wall of ${index + 1}, lines ${w} × ${h} mm`,
        formula: 't = w + (n − 1) · s',
        printed,
        place: 'bead section of slicer-flow-note, evaluated',
        computed: () => wallOf(index + 1, w, h, 'rounded-beads'),
      }),
    ),
  ]),
];
