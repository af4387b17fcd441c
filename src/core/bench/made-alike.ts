import type { InsertAxis } from '../host/host.ts';
import type { BenchTest, TestSetting } from './bench-test.ts';
import { type LikeReadings, likeReadings } from './like-readings.ts';

/** How a coupon was made in one respect; a value that is absent was not written down. */
export type Made =
  | { readonly of: 'batch'; readonly name?: string }
  | { readonly of: 'setting'; readonly setting: TestSetting }
  /** mm; ends of the readings that count as one hole. */
  | { readonly of: 'bore'; readonly bore?: Pick<LikeReadings<unknown>, 'least' | 'greatest'> }
  /** °C */
  | { readonly of: 'iron-temperature'; readonly temperature?: number }
  /** h */
  | { readonly of: 'setting-time'; readonly time?: number }
  | { readonly of: 'printer'; readonly printer?: string }
  | { readonly of: 'axis'; readonly axis: InsertAxis }
  | { readonly of: 'wall-lines'; readonly count?: number }
  /** [-] */
  | { readonly of: 'infill'; readonly share?: number };

export type Respect = Made['of'];

/** Every respect in which two coupons may differ, in the order in which it is told. */
const RESPECTS = [
  'printer',
  'setting',
  'axis',
  'wall-lines',
  'infill',
  'bore',
  'iron-temperature',
  'setting-time',
  'batch',
] as const satisfies readonly Respect[];

/** Coupons made alike in one respect. */
export interface MadeAlike {
  readonly made: Made;
  readonly tests: readonly BenchTest[];
}

/** Bores within this are one hole, mm: neither printer nor caliper tells them apart (estimate). */
export const SAME_BORE = 0.05;

/** Ways of setting, the usual one first. */
const SETTINGS: readonly TestSetting[] = ['heat-set', 'cold-pressed', 'hammered', 'screwed-in', 'nut'];

/**
 * Coupons put together by how they were made in one respect.
 *
 * Exact values; bores by what counts as one hole. Numbers from the least up, ways of setting from the usual one, names as
 * they first come. What was not written down is a group of its own, the last; a batch without a name is the first.
 *
 * @param tests - any tests
 * @param respect - in which they are looked at
 * @returns groups, none of them empty
 * @source own-model grouping of tests
 */
export function madeAlike(tests: readonly BenchTest[], respect: Respect): readonly MadeAlike[] {
  if (respect === 'bore') return boresAlike(tests);
  const groups = new Map<string, BenchTest[]>();
  for (const test of tests) {
    const key = JSON.stringify(madeOf(test, respect));
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [test]);
    else group.push(test);
  }
  return [...groups.values()]
    .flatMap((group) => (group[0] ? [{ made: madeOf(group[0], respect), tests: group }] : []))
    .toSorted((one, other) => placeOf(one.made) - placeOf(other.made));
}

function boresAlike(tests: readonly BenchTest[]): readonly MadeAlike[] {
  const measured = tests.flatMap((test) => (test.bore === undefined ? [] : [{ test, bore: test.bore }]));
  const unmeasured = tests.filter(({ bore }) => bore === undefined);
  const alike = likeReadings(measured, ({ bore }) => bore, SAME_BORE).map(
    ({ least, greatest, items }): MadeAlike => ({
      made: { of: 'bore', bore: { least, greatest } },
      tests: items.map(({ test }) => test),
    }),
  );
  return unmeasured.length === 0 ? alike : [...alike, { made: { of: 'bore' }, tests: unmeasured }];
}

function madeOf(test: BenchTest, respect: Exclude<Respect, 'bore'>): Made {
  const { batch, ironTemperature, settingTime, printer, wallLines, infill } = test;
  switch (respect) {
    case 'batch':
      return { of: respect, ...(batch === undefined ? {} : { name: batch }) };
    case 'setting':
      return { of: respect, setting: test.setting };
    case 'iron-temperature':
      return { of: respect, ...(ironTemperature === undefined ? {} : { temperature: ironTemperature }) };
    case 'setting-time':
      // Nothing is set in no time: somebody left the field at nought.
      return {
        of: respect,
        ...(settingTime === undefined || settingTime === 0 ? {} : { time: settingTime }),
      };
    case 'printer':
      return { of: respect, ...(printer === undefined ? {} : { printer }) };
    case 'axis':
      return { of: respect, axis: test.axis };
    case 'wall-lines':
      return { of: respect, ...(wallLines === undefined ? {} : { count: wallLines }) };
    case 'infill':
      return { of: respect, ...(infill === undefined ? {} : { share: infill }) };
  }
}

/** Place of a group among the others; names share one, and keep the order in which they came. */
function placeOf(made: Made): number {
  switch (made.of) {
    case 'setting':
      return SETTINGS.indexOf(made.setting);
    case 'iron-temperature':
      return made.temperature ?? Number.POSITIVE_INFINITY;
    case 'setting-time':
      return made.time ?? Number.POSITIVE_INFINITY;
    case 'wall-lines':
      return made.count ?? Number.POSITIVE_INFINITY;
    case 'infill':
      return made.share ?? Number.POSITIVE_INFINITY;
    case 'batch':
      return made.name === undefined ? 0 : 1;
    case 'bore':
    case 'printer':
    case 'axis':
      return 0;
  }
}

/** A respect in which two groups of coupons are not made alike, or not alike within themselves. */
export interface Difference {
  readonly of: Respect;
  readonly first: readonly Made[];
  readonly second: readonly Made[];
}

/**
 * What else differs between two groups of coupons: whatever it does to the strength goes into their ratio too.
 *
 * @param first - one group
 * @param second - the other
 * @param leaveOut - respects that are meant to differ, or that the groups cannot share
 * @returns a difference for each respect in which not all coupons of both are alike
 * @source own-model grouping of tests
 */
export function differencesOf(
  first: readonly BenchTest[],
  second: readonly BenchTest[],
  leaveOut: readonly Respect[],
): readonly Difference[] {
  const all = [...first, ...second];
  const sides = { first: new Set(first), second: new Set(second) };
  return RESPECTS.filter((respect) => !leaveOut.includes(respect)).flatMap((of): readonly Difference[] => {
    const groups = madeAlike(all, of);
    if (groups.length < 2) return [];
    const within = (side: ReadonlySet<BenchTest>) =>
      groups.filter(({ tests }) => tests.some((test) => side.has(test))).map(({ made }) => made);
    return [{ of, first: within(sides.first), second: within(sides.second) }];
  });
}
