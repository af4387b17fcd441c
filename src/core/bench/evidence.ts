import {
  type BondPosterior,
  type BondPrediction,
  bondPosterior,
  type CouponRatio,
} from '../evidence/bond-evidence.ts';
import type { BondOrigin, OriginCoupon } from '../evidence/coupon-ratio.ts';
import type { SettingMethod } from '../inserts/insert.ts';
import { insertDimensions } from '../inserts/insert-dimensions.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { bondFactor, type TestedSetup } from '../pull-out/bond.ts';
import { type Derived, entryFrom, entryLater } from '../sources/derived.ts';
import { type BenchTest, hasGivenWay, loadAtInsert, loadOf } from './bench-test.ts';
import { faultOfTest, type TestFault } from './test-fault.ts';
import { measuredBond, testModel } from './test-model.ts';

/** Shares of an interval of equal chance that one standard deviation is, 1/√12, [-]: the step of an instrument. */
const STEP_DEVIATION = 1 / Math.sqrt(12);

/** What one test says of the bond. */
export interface TestFinding {
  readonly test: BenchTest;
  /**
   * broke: the bond gave way at this load; held: it bore at least this, whatever else gave way; other: nothing of the
   * bond was tested; left-out: the test itself is faulty.
   */
  readonly says: 'broke' | 'held' | 'other' | 'left-out';
  readonly fault?: TestFault;
  /** Load at the insert with bond factor 1, N or N·mm; absent where nothing is said of the bond. */
  readonly model?: Derived;
  /** Share of it that was shown. */
  readonly bond?: Derived;
  readonly ownDeviation?: number;
}

/** Everything that the tests of one set-up say. */
export interface SetupEvidence {
  readonly printer?: string;
  readonly material: string;
  readonly setting: SettingMethod;
  readonly findings: readonly TestFinding[];
  readonly priorMedian: number;
  readonly posterior: BondPosterior;
  /** What the answers take from it. */
  readonly tested: TestedSetup;
}

export interface Evidence {
  /** Every test in its order. */
  readonly findings: readonly TestFinding[];
  /** One for each set-up in which a bond was tested. */
  readonly setups: readonly SetupEvidence[];
  /** That of the joint's own set-up; absent: none of its coupons was tested. */
  readonly ofJoint?: SetupEvidence;
}

/**
 * What one test says of the bond factor.
 *
 * An insert that came out or turned gives the bond factor itself. Where the scale ended, or screw, thread, boss or
 * layers gave way, the bond bore at least the load: never the strength of the insert. Screwed-in inserts and nuts have
 * no bond.
 *
 * @param test - the test
 * @param before - tests entered before it
 * @param joint - fit, screw and clamped part of the coupons
 * @returns the finding
 * @source own-model reading of a result
 */
export function findingOf(
  test: BenchTest,
  before: readonly BenchTest[],
  joint: AnswerableJoint,
): TestFinding {
  const fault = faultOfTest(test, before, joint);
  if (fault) return { test, says: 'left-out', fault };
  const { insert, material, setting } = test;
  if (insert === undefined || material === undefined || setting === 'screwed-in' || setting === 'nut') {
    return { test, says: 'other' };
  }
  if (!material.melts) {
    return { test, says: 'left-out', fault: { code: 'does-not-melt', material: material.name } };
  }
  const model = testModel(test, { insert, material }, joint);
  if (model.load.value <= 0) {
    const knurl = insertDimensions(insert).knurlDiameter.estimate;
    return {
      test,
      says: 'left-out',
      fault: { code: 'bore-leaves-no-bite', bore: test.bore ?? knurl.value, knurl },
    };
  }
  const bond = measuredBond(loadAtInsert(test), model.load);
  if (bond.value < LEAST_SHARE || bond.value > GREATEST_SHARE) {
    const facts = { load: loadOf(test), model: model.load.value };
    return { test, says: 'left-out', fault: { code: 'far-from-model', ...facts } };
  }
  const step = ((test.shown.resolution ?? 0) * STEP_DEVIATION) / test.shown.value;
  return {
    test,
    says: hasGivenWay(test) ? 'broke' : 'held',
    model: model.load,
    bond,
    ownDeviation: Math.hypot(model.ownDeviation, step < NEGLIGIBLE ? 0 : step),
  };
}

/** A coupon that shows less or more of the ideal shear cylinder is a slip of the pen or of the unit, [-] (estimate). */
const LEAST_SHARE = 0.01;
const GREATEST_SHARE = 3;

/** A step of the instrument below this share of the reading blurs nothing beside the scatter of coupons, [-]. */
const NEGLIGIBLE = 0.01;

function ratioOf({ test, says, bond, ownDeviation = 0 }: TestFinding): readonly CouponRatio[] {
  if (bond === undefined || (says !== 'broke' && says !== 'held')) return [];
  return [{ size: test.insertId, logRatio: Math.log(bond.value), outcome: says, ownDeviation }];
}

/** The coupon with the bond factor that it showed; its way is not copied with the joint. */
const originOf = ({ test, says, bond }: TestFinding): readonly OriginCoupon[] =>
  bond === undefined || (says !== 'broke' && says !== 'held')
    ? []
    : [{ size: test.insertId, bond: entryLater('η_i', bond.value, '-', () => bond) }];

/** Whether a test was made in the set-up of a joint: printer, material and setting. */
const setupKey = (printer: string | undefined, material: string, setting: string): string =>
  JSON.stringify([printer ?? '', material, setting]);

/**
 * All that the tests say: each by itself, each set-up, and the joint's own.
 *
 * @param tests - in the order they were entered
 * @param joint - a joint that may be answered; its printer is handed in beside it
 * @param printer - the joint's printer; undefined where it names none
 * @returns findings and posteriors
 * @source own-model bond factor of a set-up
 */
export function evidenceOf(
  tests: readonly BenchTest[],
  joint: AnswerableJoint,
  printer: string | undefined,
): Evidence {
  const earlier = new Map<string, BenchTest[]>();
  const findings = tests.map((test) => {
    // Only tests of the same day and insert can say the same again.
    const key = JSON.stringify([test.date, test.insertId]);
    const before = earlier.get(key) ?? [];
    const finding = findingOf(test, before, joint);
    earlier.set(key, before);
    before.push(test);
    return finding;
  });
  const groups = new Map<string, TestFinding[]>();
  for (const finding of findings) {
    const { test, says } = finding;
    if (says !== 'broke' && says !== 'held') continue;
    const key = setupKey(test.printer, test.materialId, test.setting);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [finding]);
    else group.push(finding);
  }
  const setups = new Map([...groups].map(([key, group]) => [key, setupOf(group)]));
  const ofJoint = setups.get(setupKey(printer, joint.host.material.id, joint.setting));
  return { findings, setups: [...setups.values()], ...(ofJoint ? { ofJoint } : {}) };
}

function setupOf(findings: readonly TestFinding[]): SetupEvidence {
  const [first] = findings;
  if (first === undefined || first.test.setting === 'screwed-in' || first.test.setting === 'nut') {
    throw new Error('a set-up is made of tests of a bond');
  }
  const { printer, materialId: material, setting } = first.test;
  const prior = bondFactor(setting);
  const priorMedian = prior.value;
  const ratios = findings.flatMap(ratioOf);
  const posterior = rememberedPosterior(priorMedian, ratios);
  const origin: BondOrigin = {
    priorMedian: entryFrom(prior),
    coupons: findings.flatMap(originOf),
    method: posterior.method,
  };
  const proved = Math.max(Math.log(priorMedian), ...ratios.map(({ logRatio }) => logRatio));
  return {
    ...(printer === undefined ? {} : { printer }),
    material,
    setting,
    findings,
    priorMedian,
    posterior,
    tested: {
      unpulled: { ...notBeyond(proved, posterior.unpulled), origin },
      bySize: new Map(
        [...posterior.bySize].map(([size, one]) => [
          size,
          { ...notBeyond(proved, one), origin: { ...origin, size } },
        ]),
      ),
    },
  };
}

/** The posteriors of the latest set-ups: an edit elsewhere in the joint leaves them as they are. */
const REMEMBERED = new Map<string, BondPosterior>();
const MOST_REMEMBERED = 24;

function rememberedPosterior(priorMedian: number, ratios: readonly CouponRatio[]): BondPosterior {
  const key = JSON.stringify([priorMedian, ratios]);
  const known = REMEMBERED.get(key);
  if (known) return known;
  const found = bondPosterior(priorMedian, ratios);
  if (REMEMBERED.size >= MOST_REMEMBERED) REMEMBERED.clear();
  REMEMBERED.set(key, found);
  return found;
}

/**
 * Coupons that only held put no end to how strong the bond may be. Where none broke, the median is not taken above the
 * most that was shown, nor above the estimate without tests.
 */
const notBeyond = (proved: number, prediction: BondPrediction): BondPrediction =>
  prediction.broke > 0 ? prediction : { ...prediction, centre: Math.min(prediction.centre, proved) };
