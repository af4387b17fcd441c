import type { Sample } from '../evidence/sample.ts';
import type { Derived } from '../sources/derived.ts';
import { type BenchTest, loadAtInsert, loadOf } from './bench-test.ts';
import type { SetupEvidence, TestFinding } from './evidence.ts';

/** Loads at which the bond of like coupons gave way. */
export interface TestSample {
  readonly insertId: string;
  readonly kind: BenchTest['kind'];
  readonly sample: Sample;
  /** In the order of the values. */
  readonly testIds: readonly string[];
  readonly loads: readonly Derived[];
  /** Coupons that only held: they have no place among the values, and leave them too low where there are any. */
  readonly held: number;
}

/**
 * The tests of a set-up as plain samples: one size and one kind of test each.
 *
 * No model is in it: loads at the insert as measured, lever included. A sample of one kind and one size only, since
 * pulls and turns, and two sizes, have no common mean.
 *
 * @param setup - what the tests of one set-up say
 * @returns samples in N or N·mm, in the order in which they first come
 * @source own-model grouping of tests
 */
export function testSamples({ findings }: SetupEvidence): readonly TestSample[] {
  const groups = new Map<string, TestFinding[]>();
  for (const finding of findings) {
    const key = JSON.stringify([finding.test.insertId, finding.test.kind]);
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return [...groups.values()].flatMap((group): readonly TestSample[] => {
    const broke = group.filter(({ says }) => says === 'broke').map(({ test }) => test);
    const [first] = broke;
    if (first === undefined) return [];
    return [
      {
        insertId: first.insertId,
        kind: first.kind,
        sample: sampleOfTests(broke),
        testIds: broke.map(({ id }) => id),
        loads: broke.map(loadAtInsert),
        held: group.length - broke.length,
      },
    ];
  });
}

/** Without a lever the load is what was read. */
const isReadStraight = ({ leverRatio }: BenchTest): boolean => leverRatio === 1;

/** Loads at the insert of tests that were read in one quantity, with the lever's part in them. */
export const sampleOfTests = (tests: readonly BenchTest[]): Sample => ({
  values: tests.map(loadOf),
  unit: tests[0]?.shown.quantity === 'torque' ? 'N·mm' : 'N',
  ...(tests.every(isReadStraight)
    ? {}
    : { from: tests.map((test) => (isReadStraight(test) ? undefined : loadAtInsert(test))) }),
});
