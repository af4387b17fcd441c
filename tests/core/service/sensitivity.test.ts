import { describe, expect, test } from 'vitest';
import { holdOf } from '../../../src/core/service/hold.ts';
import type { LeverId } from '../../../src/core/service/lever.ts';
import { sensitivities } from '../../../src/core/service/sensitivity.ts';
import type { InsertRecord } from '../../../src/storage/document.ts';
import { answerableJoint, type Changes, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';
import { theRow } from '../../support/the-row.ts';
import { askedOf } from './subject-of.ts';

/** A joint that nearly every input moves: the plastic round the insert bears all of the clamp force, warm and long. */
const MOVED_BY_MUCH: Changes = {
  gap_mm: 0.4,
  host: { wall: { kind: 'lines', count: 2, lineWidth_mm: 0.43, convention: 'rounded-beads' } },
  tool: { kind: 'hand' },
  loads: { pull_N: 37, shear_N: 0, serviceTemperature_degC: 38, duration_h: 2900 },
};
const merged = (changes: Changes): Changes => ({
  ...MOVED_BY_MUCH,
  ...changes,
  host: { ...MOVED_BY_MUCH.host, ...changes.host },
  tool: { ...MOVED_BY_MUCH.tool, ...changes.tool },
  loads: { ...MOVED_BY_MUCH.loads, ...changes.loads },
});

const { joint, insert, torque } = askedOf(MOVED_BY_MUCH);
const given = holdOf(joint, insert, torque).worst.margin;
const found = sensitivities(joint, insert, torque);
const of = (id: LeverId) => theRow(found, ({ lever }) => lever === id);
/** The same joint with one change made in its document, at the same torque. */
const marginAfter = (changes: Changes, record: Partial<InsertRecord> = {}) =>
  holdOf(answerableJoint(merged(changes)), theInsert(record), torque).worst.margin;

describe('sensitivities', () => {
  test('are sorted by what they gain, and none is left in that moves nothing', () => {
    const gains = found.map(({ gain }) => gain);
    expect(gains).toEqual([...gains].sort((one, other) => other - one));
    expect(gains.every((gain) => gain !== 0)).toBe(true);
    for (const { margin, gain } of found) expectRelative(margin - given, gain, 1e-9);
  });
  test.each<[LeverId, number, Changes, Partial<InsertRecord>]>([
    ['close-gap', 1, { gap_mm: 0 }, {}],
    ['infill', 10, { host: { infill: { pattern: 'grid', density_percent: 47 } } }, {}],
    ['knurl-diameter', 0.2, {}, { knurlDiameter_mm: [5.13], pilotDiameter_mm: [4.41] }],
    ['insert-length', 0.5, {}, { length_mm: [5.8] }],
    ['temperature', -5, { loads: { serviceTemperature_degC: 33 } }, {}],
    ['pull', -10, { loads: { pull_N: 33.3 } }, {}],
    ['torque-driver', 1, { tool: { kind: 'torque-driver' } }, {}],
  ])('gives what the document gives with %s moved by %d', (id, step, changes, record) => {
    const sensitivity = of(id);
    expectRelative(sensitivity.step, step);
    expectRelative(sensitivity.margin, marginAfter(changes, record), 1e-9);
    expect(sensitivity.gain).toBeGreaterThan(0);
  });
  test.each<[LeverId, Changes, Partial<InsertRecord>]>([
    ['infill', { host: { infill: { pattern: 'grid', density_percent: 27 } } }, {}],
    ['knurl-diameter', {}, { knurlDiameter_mm: [4.73], pilotDiameter_mm: [4.01] }],
    ['temperature', { loads: { serviceTemperature_degC: 43 } }, {}],
    ['pull', { loads: { pull_N: 40.7 } }, {}],
  ])('of the two directions of %s takes the one that helps', (id, opposite, record) => {
    expect(of(id).margin).toBeGreaterThan(marginAfter(opposite, record));
  });
  test('each opens as the margin that the plain number says', () => {
    expect(found.length).toBeGreaterThan(5);
    for (const { margin, derivedMargin } of found) {
      expect(derivedMargin()).toMatchObject({ symbol: 'ψ', unit: '-' });
      expectRelative(derivedMargin().value, margin);
    }
  });
  test('where neither helps gives the one that hurts', () => {
    for (const { margin, gain } of found.filter((one) => one.gain < 0))
      expectRelative(margin, given + gain, 1e-9);
    expect(found.some(({ gain }) => gain < 0)).toBe(true);
  });
  test('a time is halved or doubled', () => {
    const plain = askedOf({ clamped: { material: 'petg' }, loads: { shear_N: 190, duration_h: 2900 } });
    const { step, margin, unit } = theRow(
      sensitivities(plain.joint, plain.insert, plain.torque),
      ({ lever }) => lever === 'duration',
    );
    expect([step, unit]).toEqual([0.5, 'times']);
    const half = answerableJoint({
      clamped: { material: 'petg' },
      loads: { shear_N: 190, duration_h: 1450 },
    });
    expectRelative(margin, holdOf(half, theInsert(), plain.torque).worst.margin, 1e-9);
  });
  test('infill that is nearly solid is made solid, by what is left to it', () => {
    const at = (density_percent: number): Changes => ({
      gap_mm: 0.4,
      host: {
        wall: { kind: 'lines', count: 1, lineWidth_mm: 0.43, convention: 'rounded-beads' },
        infill: { pattern: 'grid', density_percent },
      },
      loads: { pull_N: 90, shear_N: 1, duration_h: 400, serviceTemperature_degC: 25 },
    });
    const nearly = askedOf(at(94.5));
    const { step, margin, gain, unit } = theRow(
      sensitivities(nearly.joint, nearly.insert, nearly.torque),
      ({ lever }) => lever === 'infill',
    );
    expect([step, unit]).toEqual([5.5, '%']);
    const solid = answerableJoint(at(100));
    expectRelative(margin, holdOf(solid, theInsert(), nearly.torque).worst.margin, 1e-9);
    expect(gain).toBeGreaterThan(0);
  });
  test('an absent load is not moved, nor a joint into what is not answered', () => {
    const bare = askedOf({ loads: { pull_N: 0, shear_N: 0, serviceTemperature_degC: 68 }, gap_mm: 0.4 });
    const ids = sensitivities(bare.joint, bare.insert, bare.torque).map(({ lever }) => lever);
    expect(ids).not.toContain('pull');
    expect(ids).not.toContain('shear');
    // 73 °C is nearer to the softening of PETG than 10 K: only the cooler side is there.
    const warm = sensitivities(bare.joint, bare.insert, bare.torque).filter(
      ({ lever }) => lever === 'temperature',
    );
    expect(warm.map(({ step }) => step)).toEqual([-5]);
  });
});
