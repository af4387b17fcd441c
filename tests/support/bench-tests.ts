import type { BenchTest } from '../../src/core/bench/bench-test.ts';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import type { JointDocument, TestRecord } from '../../src/storage/document.ts';
import { type ResolvedDocument, resolveDocument } from '../../src/storage/resolve.ts';
import { type WithEvidence, withEvidence } from '../../src/storage/with-evidence.ts';
import { type Changes, jointDocument } from './joints.ts';
import { printerRecord } from './printers.ts';

/** A pull of the usual insert in the usual set-up, with what a test wants different. */
export const testRecord = (changes: Partial<TestRecord> = {}): TestRecord => ({
  id: 'test-1',
  date: '2026-03-14',
  insert: 'usual',
  material: 'petg',
  axis: 'along-build',
  setting: 'heat-set',
  kind: 'pull-out',
  value: 107,
  unit: 'kgf',
  leverRatio: 1,
  result: 'insert-out-with-plastic',
  note: '',
  ...changes,
});

/** A joint with tests, and a printer that is called attic. */
export const documentWithTests = (
  tests: readonly TestRecord[],
  changes: Changes = {},
  evidence: JointDocument['evidence'] = 'used',
): JointDocument => ({
  ...jointDocument(changes),
  printers: [printerRecord()],
  tests: [...tests],
  evidence,
});

export function resolvedWithTests(document: JointDocument): ResolvedDocument {
  const found = resolveDocument(document, CATALOGUE);
  if (found.kind === 'refused') throw new Error(`not resolved: ${JSON.stringify(found.refusals)}`);
  return found.value;
}

/** A joint with what its tests say in it. */
export const joinedWithTests = (document: JointDocument): WithEvidence =>
  withEvidence(document, resolvedWithTests(document));

/** One test as the core takes it. */
export function benchTest(changes: Partial<TestRecord> = {}): BenchTest {
  const [test] = resolvedWithTests(documentWithTests([testRecord(changes)])).bench;
  if (test === undefined) throw new Error('the test was not resolved');
  return test;
}
