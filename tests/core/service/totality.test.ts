import { describe, expect, test } from 'vitest';
import { assess } from '../../../src/core/joint/assess.ts';
import { noRoomAtAll } from '../../../src/core/joint/room-for-insert.ts';
import { admit } from '../../../src/core/joint/stop.ts';
import { preloadCurves, strengthCurve } from '../../../src/core/service/curves.ts';
import { askedTorque, type Hold, holdOf } from '../../../src/core/service/hold.ts';
import { remediesFor } from '../../../src/core/service/remedies.ts';
import { sensitivities } from '../../../src/core/service/sensitivity.ts';
import { CATALOGUE } from '../../../src/data/catalogue.ts';
import type { JointDocument } from '../../../src/storage/document.ts';
import { openDocument } from '../../../src/storage/open-document.ts';
import { resolveDocument } from '../../../src/storage/resolve.ts';
import { anyDocument } from '../../support/any-document.ts';
import fc from '../../support/fast-check.ts';
import { notFinite } from '../../support/not-finite.ts';
import type { Asked } from './subject-of.ts';

const PATIENCE = 60_000;

/** Every joint with an insert and a torque that a document comes to: those that the page asks whether they hold. */
function askedIn(document: JointDocument): readonly Asked[] {
  const opened = openDocument(document);
  if (opened.kind === 'refused') return [];
  const found = resolveDocument(opened.document, CATALOGUE);
  if (found.kind === 'refused') return [];
  const admission = admit(found.value.joint);
  if (admission.kind === 'stopped') return [];
  const { joint } = admission;
  return found.value.drawer.flatMap((insert) => {
    if (insert.thread.id !== joint.screw.thread.id || noRoomAtAll(joint, insert)) return [];
    const torque = askedTorque(assess(joint, insert).torque);
    return torque === undefined ? [] : [{ joint, insert, torque }];
  });
}

const anyAsked = anyDocument.map(askedIn).filter((asked) => asked.length > 0);

function expectSound({ states, worst, verdict }: Hold): void {
  expect(states.map(({ id }) => id)).toEqual(['assembly', 'in-service', 'after']);
  for (const { margin, preloadLeft, limits } of states) {
    expect(margin).toBeGreaterThanOrEqual(worst.margin);
    expect(preloadLeft.value).toBeGreaterThan(0);
    expect(preloadLeft.value).toBeLessThanOrEqual(1);
    expect(limits.filter(({ governs }) => governs)).toHaveLength(1);
  }
  expect(verdict === 'holds' ? worst.margin > 0.999_999 : worst.margin < 1).toBe(true);
}

describe('the life of every joint that the door takes', () => {
  test(
    'comes to finite numbers: states, sensitivities, remedies, curves, all the way down their derivations',
    () => {
      fc.assert(
        fc.property(anyAsked, (asked) => {
          // One insert of the drawer: the others are drawn alike.
          for (const { joint, insert, torque } of asked.slice(0, 1)) {
            const hold = holdOf(joint, insert, torque);
            const remedies = remediesFor(joint, insert);
            expect(notFinite(hold)).toEqual([]);
            expect(notFinite(sensitivities(joint, insert, torque))).toEqual([]);
            expect(notFinite(remedies)).toEqual([]);
            expect(notFinite(preloadCurves(joint, insert))).toEqual([]);
            expect(notFinite(strengthCurve(joint.host.material))).toEqual([]);
            expectSound(hold);
            for (const { margin } of remedies) expect(margin).toBeGreaterThan(0.999_999);
          }
        }),
        { numRuns: 200 },
      );
    },
    PATIENCE,
  );
});
