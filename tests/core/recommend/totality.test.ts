import { describe, expect, test } from 'vitest';
import type { JointAssessment, Limit, TorqueWindow } from '../../../src/core/joint/assessment.ts';
import { admit } from '../../../src/core/joint/stop.ts';
import { lengthCurve } from '../../../src/core/recommend/length-curve.ts';
import { recommend } from '../../../src/core/recommend/recommend.ts';
import { CATALOGUE } from '../../../src/data/catalogue.ts';
import type { JointDocument } from '../../../src/storage/document.ts';
import { openDocument } from '../../../src/storage/open-document.ts';
import { type ResolvedDocument, resolveDocument } from '../../../src/storage/resolve.ts';
import { anyDocument } from '../../support/any-document.ts';
import fc from '../../support/fast-check.ts';
import { notFinite } from '../../support/not-finite.ts';

/** A multiple of the step may stand above the largest torque by the dust of its rounding. */
const DIAL_DUST = 1 + 2e-9;
const PATIENCE = 60_000;

function throughTheDoors(document: JointDocument): ResolvedDocument | undefined {
  const opened = openDocument(document);
  if (opened.kind === 'refused') return undefined;
  const found = resolveDocument(opened.document, CATALOGUE);
  return found.kind === 'resolved' ? found.value : undefined;
}

const anyAdmitted = anyDocument.filter((document) => throughTheDoors(document) !== undefined);

function expectWindowInOrder(torque: TorqueWindow): void {
  expect(torque.least.value).toBeGreaterThanOrEqual(0);
  expect(torque.most.value).toBeGreaterThanOrEqual(0);
  if (torque.kind === 'refused') return;
  expect(torque.dial.value).toBeGreaterThan(0);
  expect(torque.dial.value).toBeGreaterThanOrEqual(torque.least.value);
  expect(torque.dial.value).toBeLessThanOrEqual(torque.most.value * DIAL_DUST);
  expect(torque.clampForceLow.value).toBeLessThanOrEqual(torque.clampForceHigh.value);
}

function expectSoundLimit({ capacity, factor, demand }: Limit): void {
  expect(capacity.characteristic.value).toBeGreaterThanOrEqual(0);
  expect(capacity.characteristic.value).toBeLessThanOrEqual(capacity.median.value);
  expect(demand.value).toBeGreaterThanOrEqual(0);
  expect(factor ?? 0).toBeGreaterThanOrEqual(0);
}

function expectSound({ limits, governing, torque, preloadLeft, hole }: JointAssessment): void {
  expect(limits.filter(({ governs }) => governs).map(({ mode }) => mode)).toEqual([governing]);
  limits.forEach(expectSoundLimit);
  expectWindowInOrder(torque);
  expect(preloadLeft.value).toBeGreaterThan(0);
  expect(preloadLeft.value).toBeLessThanOrEqual(1);
  expect(hole.window.smallest.value).toBeLessThan(hole.window.largest.value);
}

function expectFitToBeRanked({ torque, screw, loadReserve, limits }: JointAssessment): void {
  expect(torque.kind).toBe('window');
  expect(screw.kind).toBe('chosen');
  expect(loadReserve?.value ?? 1).toBeGreaterThanOrEqual(1 - 1e-9);
  for (const { factor } of limits) expect(factor ?? 1).toBeGreaterThan(0);
}

describe('recommend, over every joint that the door takes', () => {
  test(
    'gives finite numbers, capacities below their medians, one governing mode, torque windows in order',
    () => {
      fc.assert(
        fc.property(anyAdmitted, (document) => {
          const admitted = throughTheDoors(document);
          if (!admitted) return;
          const found = recommend(admitted.joint, admitted.drawer);
          expect(notFinite(found)).toEqual([]);
          if (found.kind === 'stopped') return;
          expect(found.ranked.length + found.rejected.length).toBe(document.drawer.length);
          for (const { assessment } of found.rejected) if (assessment) expectSound(assessment);
          for (const { assessment } of found.ranked) {
            expectSound(assessment);
            expectFitToBeRanked(assessment);
          }
        }),
        { numRuns: 400 },
      );
    },
    PATIENCE,
  );

  test(
    'is followed by a length curve of finite numbers',
    () => {
      fc.assert(
        fc.property(anyAdmitted, (document) => {
          const admitted = throughTheDoors(document);
          const [insert] = admitted?.drawer ?? [];
          if (!admitted || !insert) return;
          const admission = admit(admitted.joint);
          if (admission.kind === 'stopped') return;
          expect(notFinite(lengthCurve(admission.joint, insert, [2.3, 5.9, 17.3]))).toEqual([]);
        }),
        { numRuns: 100 },
      );
    },
    PATIENCE,
  );
});
