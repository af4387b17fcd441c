import type { Sample } from '../evidence/sample.ts';
import { type BenchTest, hasGivenWay } from './bench-test.ts';
import type { TestFinding } from './evidence.ts';
import { type Made, madeAlike } from './made-alike.ts';
import { sampleOfTests } from './test-samples.ts';

/** What coupons may be compared by. */
export const COMPARED_BY = ['batch', 'setting', 'bore', 'iron-temperature', 'setting-time'] as const;
export type ComparedBy = (typeof COMPARED_BY)[number];

/** Coupons of one way. */
export interface Way {
  readonly made: Made;
  /** Loads of those that gave way. */
  readonly sample: Sample;
  /** In the order of the values. */
  readonly tests: readonly BenchTest[];
}

/** Coupons of one insert, one kind of test and one set-up, by what is compared. */
export interface WaysOfSetup {
  readonly insertId: string;
  readonly kind: BenchTest['kind'];
  readonly materialId: string;
  readonly printer?: string;
  readonly axis: BenchTest['axis'];
  /** Absent where ways of setting are compared. */
  readonly setting?: BenchTest['setting'];
  /** At least two. */
  readonly ways: readonly Way[];
  /** Coupons that held, or broke elsewhere: they have no value to put in, and leave their way too low. */
  readonly held: number;
  /** Coupons that gave way and do not say which way they were made. */
  readonly unnamed: number;
}

/**
 * Coupons put into groups that can be compared: all else of the set-up the same.
 *
 * One insert, one kind of test, one material, one printer, one direction of layers, and one way of setting where that is
 * not what is compared. What else may differ between two ways is for differencesOf to say. Loads as they were measured,
 * without a model: screwed-in inserts and nuts have a place beside heat-set ones.
 *
 * @param findings - all tests with what they say
 * @param by - what is compared
 * @returns set-ups with at least two ways, in the order in which they first come
 * @source own-model grouping of tests
 */
export function waysOfSetups(findings: readonly TestFinding[], by: ComparedBy): readonly WaysOfSetup[] {
  const setups = new Map<string, TestFinding[]>();
  for (const finding of findings) {
    if (finding.says === 'left-out') continue;
    const { insertId, kind, materialId, printer, axis, setting } = finding.test;
    const key = JSON.stringify([
      insertId,
      kind,
      materialId,
      printer ?? '',
      axis,
      by === 'setting' ? '' : setting,
    ]);
    const setup = setups.get(key);
    if (setup === undefined) setups.set(key, [finding]);
    else setup.push(finding);
  }
  return [...setups.values()].flatMap((setup): readonly WaysOfSetup[] => {
    const broke = setup.map(({ test }) => test).filter(hasGivenWay);
    const [first] = broke;
    if (first === undefined) return [];
    const alike = madeAlike(broke, by);
    const named = alike.filter(({ made }) => isNamed(made));
    if (named.length < 2) return [];
    const { insertId, kind, materialId, printer, axis, setting } = first;
    return [
      {
        insertId,
        kind,
        materialId,
        ...(printer === undefined ? {} : { printer }),
        axis,
        ...(by === 'setting' ? {} : { setting }),
        ways: named.map(({ made, tests }) => ({ made, tests, sample: sampleOfTests(tests) })),
        held: setup.length - broke.length,
        unnamed: broke.length - named.reduce((sum, { tests }) => sum + tests.length, 0),
      },
    ];
  });
}

/** Without a name a batch was made as usual; a hole, an iron or a time that nobody wrote down may be any. */
function isNamed(made: Made): boolean {
  switch (made.of) {
    case 'bore':
      return made.bore !== undefined;
    case 'iron-temperature':
      return made.temperature !== undefined;
    case 'setting-time':
      return made.time !== undefined;
    default:
      return true;
  }
}
