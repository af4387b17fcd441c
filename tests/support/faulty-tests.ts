import type { TestFault } from '../../src/core/bench/test-fault.ts';
import type { TestRecord } from '../../src/storage/document.ts';
import type { Changes } from './joints.ts';

interface FaultyTest {
  readonly record: Partial<TestRecord>;
  /** What its row says of it. */
  readonly says: RegExp;
  readonly joint?: Changes;
}

const TURN = {
  kind: 'torque-out',
  unit: 'N·m',
  result: 'insert-turned',
} as const satisfies Partial<TestRecord>;

/** A test of each fault, beside a sound one that is called test-1. */
export const FAULTY_TESTS: Readonly<Record<TestFault['code'], FaultyTest>> = {
  'no-reading': { record: { value: 0 }, says: /It has no reading yet/ },
  'reading-below-zero': { record: { value: -41.5 }, says: /below zero/ },
  'no-such-lever': {
    record: { leverRatio: 0 },
    says: /A lever ratio of 0 is none that a lever has: 0\.05 to 100/,
  },
  'not-in-drawer': { record: { insert: 'gone' }, says: /Its insert, “gone”, is not in the drawer/ },
  'unknown-material': {
    record: { material: 'bakelite' },
    says: /Its material, “bakelite”, is none of the tables/,
  },
  'printer-gone': { record: { printer: 'cellar' }, says: /Its printer, “cellar”, is not among yours/ },
  'unit-of-other-kind': { record: { unit: 'N·m', value: 1.3 }, says: /A force was to be measured/ },
  'above-instrument': {
    record: { value: 62, greatest: 50 },
    says: /above the greatest that the instrument shows/,
  },
  'below-step': { record: { value: 0.4, resolution: 0.5 }, says: /smaller than one step of the instrument/ },
  'screw-of-other-thread': {
    record: { ...TURN, kind: 'jack-out-torque', value: 0.9 },
    says: /An insert M3 was jacked out, and this joint’s screw is M4/,
    joint: { screw: { thread: 'M4' }, clamped: { clearanceHole_mm: 4.5 } },
  },
  'above-screw': { record: { ...TURN, value: 2.6 }, says: /The screw itself, M3, breaks long before/ },
  'result-of-other-kind': { record: { result: 'insert-turned' }, says: /cannot end like this/ },
  'does-not-melt': { record: { material: 'resin' }, says: /does not melt/ },
  'bore-leaves-no-bite': { record: { bore_mm: 5.2 }, says: /leaves the knurl of .* nothing to bite into/ },
  'far-from-model': { record: { value: 590 }, says: /many times what such an insert can bear/ },
  duplicate: { record: {}, says: /the same as test 1 in everything/ },
};
