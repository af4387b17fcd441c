import { areaCentroid, inPlaneForces, type WeightedScrew } from '../../src/core/loads/in-plane.ts';
import { edgeTensions } from '../../src/core/loads/out-of-plane.ts';
import { type ScrewPosition, screwPositions } from '../../src/core/loads/pattern.ts';
import { type Check, checksOf } from './check.ts';

const equal = (positions: readonly ScrewPosition[]): readonly WeightedScrew[] =>
  positions.map((position) => ({ ...position, area: 1 }));

/** Bolts of Example 8-7: the two near the load first. */
const CORNERS = equal([
  { x: 75, y: 60 },
  { x: 75, y: -60 },
  { x: -75, y: 60 },
  { x: -75, y: -60 },
]);
const ALONG = { x: 0, y: 16, moment: 0 };
const TURNING = { x: 0, y: 0, moment: 6800 };

/** Six bolts of unequal size, in the example's own lengths: x, y, diameter. */
const UNEQUAL: readonly WeightedScrew[] = (
  [
    [1, 1, 0.375],
    [-1, 1, 0.25],
    [-1, -1, 0.25],
    [1, 5, 0.375],
    [0, 5, 0.25],
    [10, 2, 0.375],
  ] as const
).map(([x, y, diameter]) => ({ x, y, area: (Math.PI / 4) * diameter ** 2 }));

const LINE = equal([
  { x: -50, y: 0 },
  { x: 0, y: 0 },
  { x: 50, y: 0 },
]);
const FOUR = equal(screwPositions({ kind: 'rectangular', columns: 2, rows: 2, spacingX: 80, spacingY: 60 }));

function forceOn(
  screws: readonly WeightedScrew[],
  load: Parameters<typeof inPlaneForces>[1],
  index: number,
): number {
  const force = inPlaneForces(screws, load)[index];
  if (force === undefined) throw new Error(`no bolt ${index}`);
  return Math.hypot(force.x, force.y);
}
const near = () => forceOn(CORNERS, { ...ALONG, moment: TURNING.moment }, 0);
const far = () => forceOn(CORNERS, { ...ALONG, moment: TURNING.moment }, 2);
const unequal = (index: number) => () => forceOn(UNEQUAL, { x: 0, y: -10_000, moment: 10_641 }, index);
const topTension = () => edgeTensions(12 * 400, [50, 50, 375, 375])[3] ?? Number.NaN;

const SUM = '|V/n + M · r/Σr²|';
const WEIGHTED = '|V · A/ΣA + M · A · r/Σ(A · r²)|';
const niu = { source: 'niu', how: 'read', kind: 'computed' } as const;

export const BOLT_GROUPS: readonly Check[] = [
  ...checksOf({ unit: 'kN', source: 'shigley', place: 'Example 8-7', how: 'read', kind: 'computed' }, [
    {
      id: 'group.inplane.8-7.primary',
      quantity: 'direct shear, 16 kN on four bolts',
      formula: 'F′ = V/n',
      printed: '4.0',
      computed: () => forceOn(CORNERS, ALONG, 0),
    },
    {
      id: 'group.inplane.8-7.secondary',
      quantity: 'shear by 6800 N·m on (±75, ±60) mm',
      formula: 'F″ = M · r/Σr²',
      printed: '17.7',
      computed: () => forceOn(CORNERS, TURNING, 0),
    },
    {
      id: 'group.inplane.8-7.FA',
      quantity: 'near bolts together',
      formula: SUM,
      printed: '21.0',
      computed: near,
    },
    {
      id: 'group.inplane.8-7.FC',
      quantity: 'far bolts together',
      formula: SUM,
      printed: '14.8',
      computed: far,
    },
    {
      id: 'group.inplane.8-7.tau',
      quantity: 'shear stress of the near bolts on 144 mm²',
      formula: `${SUM}/As`,
      printed: '146',
      unit: 'MPa',
      computed: () => (1000 * near()) / 144,
    },
  ]),
  {
    id: 'group.inplane.line.8-48',
    quantity: 'outer of three bolts in a line, over the load',
    formula: SUM,
    printed: '2.343',
    unit: '-',
    source: 'shigley-8',
    place: 'problem 8-48',
    how: 'read',
    kind: 'computed',
    computed: () => forceOn(LINE, { x: 0, y: 1, moment: 201 }, 2),
  },
  {
    id: 'group.inplane.10kN',
    quantity: '10 kN at 100 mm on (±40, ±30) mm',
    formula: SUM,
    printed: '7.16',
    unit: 'kN',
    source: 'steel-questions',
    place: 'four bolts, 10 kN at 100 mm',
    how: 'read',
    kind: 'computed',
    computed: () => Math.max(...FOUR.map((_, index) => forceOn(FOUR, { x: 0, y: 10, moment: 1000 }, index))),
  },
  ...checksOf({ ...niu, formula: 'Σ(A · x)/ΣA', unit: '-', place: 'centroid of unequal areas' }, [
    {
      id: 'group.area-weighted.xc',
      quantity: 'centroid, x',
      printed: '2.6',
      computed: () => areaCentroid(UNEQUAL).x,
    },
    {
      id: 'group.area-weighted.yc',
      quantity: 'centroid, y',
      printed: '2.4',
      computed: () => areaCentroid(UNEQUAL).y,
    },
  ]),
  ...checksOf(
    {
      ...niu,
      formula: WEIGHTED,
      unit: 'N',
      place: 'forces on the bolts',
    },
    [
      { id: 'group.area-weighted.bolt1', quantity: 'bolt 1', printed: '2493', computed: unequal(0) },
      { id: 'group.area-weighted.bolt4', quantity: 'bolt 4', printed: '2507', computed: unequal(3) },
      { id: 'group.area-weighted.bolt6', quantity: 'bolt 6', printed: '1451', computed: unequal(5) },
    ],
  ),
  ...checksOf(
    {
      unit: 'kN',
      source: 'khurmi-gupta',
      place: 'bracket, 12 kN at 400 mm',
      how: 'from memory',
      kind: 'computed',
    },
    [
      {
        id: 'group.outofplane.Wt',
        quantity: 'tension on a top bolt, rows at 50 and 375 mm from the edge',
        formula: 'Wt = M · L/ΣL²',
        printed: '6.29',
        computed: topTension,
      },
      {
        id: 'group.outofplane.equiv',
        quantity: 'the same with 3 kN of shear',
        formula: '½ · (Wt + √(Wt² + 4 · Ws²))',
        printed: '7.49',
        computed: () => 0.5 * (topTension() + Math.sqrt(topTension() ** 2 + 4 * 3 ** 2)),
      },
    ],
  ),
];
