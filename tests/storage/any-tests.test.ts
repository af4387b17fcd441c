import { describe, expect, test } from 'vitest';
import { evidenceOf } from '../../src/core/bench/evidence.ts';
import { chanceModel } from '../../src/core/chance/chance-model.ts';
import { assess } from '../../src/core/joint/assess.ts';
import { noRoomAtAll } from '../../src/core/joint/room-for-insert.ts';
import { admit } from '../../src/core/joint/stop.ts';
import { recommend } from '../../src/core/recommend/recommend.ts';
import { askedTorque, holdOf } from '../../src/core/service/hold.ts';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import type { JointDocument } from '../../src/storage/document.ts';
import { openDocument } from '../../src/storage/open-document.ts';
import { resolveDocument } from '../../src/storage/resolve.ts';
import { withEvidence } from '../../src/storage/with-evidence.ts';
import { sentenceOfTestFault } from '../../src/wording/bench-tests.ts';
import { plainText } from '../../src/wording/sentence.ts';
import { anyTestedDocument } from '../support/any-document.ts';
import fc from '../support/fast-check.ts';
import { notFinite } from '../support/not-finite.ts';

const PATIENCE = 60_000;

function answered(document: JointDocument) {
  const opened = openDocument(document);
  if (opened.kind === 'refused') throw new Error(`refused: ${JSON.stringify(opened.refusals)}`);
  const found = resolveDocument(opened.document, CATALOGUE);
  if (found.kind === 'refused') return undefined;
  const joined = withEvidence(opened.document, found.value);
  const admission = admit(joined.joint);
  if (admission.kind === 'stopped') return undefined;
  const { joint } = admission;
  const insert = found.value.drawer.find(
    (one) => one.thread.id === joint.screw.thread.id && !noRoomAtAll(joint, one),
  );
  return { ...joined, joint, insert, drawer: found.value.drawer, bench: found.value.bench };
}

const anyAnswered = anyTestedDocument
  .map((document) => ({ document, found: answered(document) }))
  .filter(({ found }) => found !== undefined);

/** Those whose tests move an insert that can be worked out. */
const anySpoken = anyAnswered.filter(
  ({ found }) => found?.insert !== undefined && found.joint.tested !== undefined,
);

describe('tests that the door takes', () => {
  test(
    'leave every answer finite, and its capacities in order (law)',
    () => {
      fc.assert(
        fc.property(anySpoken, ({ found }) => {
          if (found?.insert === undefined || found.joint.tested === undefined) throw new Error('filtered');
          const { joint, insert, evidence, drawer } = found;
          expect(notFinite(evidence)).toEqual([]);
          const predictions = [found.joint.tested.unpulled, ...found.joint.tested.bySize.values()];
          for (const prediction of predictions) {
            expect(notFinite(prediction)).toEqual([]);
            expect(prediction.scale).toBeGreaterThan(0);
            expect(prediction.freedom).toBeGreaterThanOrEqual(4);
          }
          const assessment = assess(joint, insert);
          expect(notFinite(assessment)).toEqual([]);
          for (const { capacity } of assessment.limits) {
            expect(capacity.characteristic.value).toBeGreaterThanOrEqual(0);
            expect(capacity.characteristic.value).toBeLessThanOrEqual(capacity.median.value);
          }
          expect(notFinite(recommend(joint, drawer))).toEqual([]);
          const torque = askedTorque(assessment.torque);
          if (torque === undefined) return;
          expect(notFinite(holdOf(joint, insert, torque))).toEqual([]);
          expect(notFinite(chanceModel(joint, insert, torque.value))).toEqual([]);
        }),
        { numRuns: 60 },
      );
    },
    PATIENCE,
  );
  test(
    'are each said to speak or why not, in their order, and the left-out ones change nothing (law)',
    () => {
      fc.assert(
        fc.property(anyAnswered, ({ document, found }) => {
          if (!found?.evidence) return;
          const { findings } = found.evidence;
          expect(findings.map((finding) => finding.test.id)).toEqual(document.tests.map(({ id }) => id));
          for (const { says, fault, bond } of findings) {
            expect(says === 'left-out').toBe(fault !== undefined);
            expect(says === 'broke' || says === 'held').toBe(bond !== undefined);
            expect(fault ? plainText(sentenceOfTestFault(fault)) : '').not.toMatch(/undefined|NaN|Infinity/);
          }
          const sound = found.bench.filter((_, index) => findings[index]?.says !== 'left-out');
          const again = evidenceOf(sound, found.joint, document.joint.printer);
          expect(again.setups).toEqual(found.evidence.setups);
        }),
        { numRuns: 200 },
      );
    },
    PATIENCE,
  );
});
