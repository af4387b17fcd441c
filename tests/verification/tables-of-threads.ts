import type { Check } from './check.ts';
import { threadNamed } from './rows-of-tables.ts';

const DATA = 'threads.ts';

/** Limits 6g as printed, mm; absent where the print was not read. */
const LIMITS = [
  ['M2', '1.886', '1.654', '1.408'],
  ['M2.5', '2.380', '2.117', '1.840'],
  ['M3', '2.874', '2.580', '2.272'],
  ['M4', '3.838', '3.433', '3.002'],
  ['M5', '4.826', '4.361', '3.868'],
  ['M6', '5.794', '5.212', undefined],
] as const;

const HOLES = [
  ['M2', '2.2', '2.4', '2.6'],
  ['M2.5', '2.7', '2.9', '3.1'],
  ['M3', '3.2', '3.4', '3.6'],
  ['M4', '4.3', '4.5', '4.8'],
  ['M5', '5.3', '5.5', '5.8'],
  ['M6', '6.4', '6.6', '7'],
  ['M8', '8.4', '9', '10'],
  ['4-40', '3.0', '3.3', '3.7'],
  ['6-32', '3.9', '4.3', '4.7'],
  ['8-32', '4.6', '5.0', '5.4'],
  ['10-24', '5.2', '5.6', '6.0'],
  ['1/4-20', '6.8', '7.1', '7.5'],
] as const;

const PITCHES = [
  ['M2', '0.4'],
  ['M2.5', '0.45'],
  ['M3', '0.5'],
  ['M4', '0.7'],
  ['M5', '0.8'],
  ['M6', '1.0'],
  ['M8', '1.25'],
] as const;

const limit = (
  size: string,
  name: 'externalMajorMin' | 'externalPitchMin' | 'externalMinorMin',
  symbol: string,
  printed: string | undefined,
): readonly Check[] =>
  printed === undefined
    ? []
    : [
        {
          id: `iso965.${symbol}.${size}`,
          quantity: `${symbol}, 6g, ${size}`,
          formula: DATA,
          printed,
          unit: 'mm',
          source: 'iso-965',
          place: '6g, coarse threads',
          how: 'reprint',
          kind: 'table',
          computed: () => threadNamed(size).limits[name],
        },
      ];

export const THREAD_TABLE: readonly Check[] = [
  ...PITCHES.map(
    ([size, printed]): Check => ({
      id: `iso261.P.${size}`,
      quantity: `pitch, ${size}`,
      formula: DATA,
      printed,
      unit: 'mm',
      source: 'iso-261',
      place: 'coarse series',
      how: 'reprint',
      kind: 'table',
      computed: () => threadNamed(size).pitch,
    }),
  ),
  ...LIMITS.flatMap(([size, major, pitch, minor]) => [
    ...limit(size, 'externalMajorMin', 'dmin', major),
    ...limit(size, 'externalPitchMin', 'd2min', pitch),
    ...limit(size, 'externalMinorMin', 'd3min', minor),
  ]),
];

export const CLEARANCE_HOLES: readonly Check[] = HOLES.flatMap(([size, ...printed]) =>
  (['fine', 'medium', 'coarse'] as const).map((series, index): Check => {
    const thread = threadNamed(size);
    return {
      id: `hole.${thread.system}.${size}.${series}`,
      quantity: `clearance hole, ${series}, ${size}`,
      formula: DATA,
      printed: printed[index] ?? '',
      unit: 'mm',
      source: thread.clearanceHoles.source,
      place: thread.system === 'metric' ? 'fine, medium, coarse' : 'close, normal, loose',
      how: 'reprint',
      kind: 'table',
      computed: () => thread.clearanceHoles[series],
    };
  }),
);
