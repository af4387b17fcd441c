import { describe, expect, test } from 'vitest';
import type { JointAssessment } from '../../../src/core/joint/assessment.ts';
import { assessed, type Changes, noticed } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const NO_LOAD = { pull_N: 0, shear_N: 0 };
const holds = (assessment: JointAssessment) => assessment.holds.median.value;
const medianOf = (assessment: JointAssessment, wanted: string) => {
  const found = assessment.limits.find(({ mode }) => mode === wanted);
  if (found === undefined) throw new Error(`no mode ${wanted}`);
  return found.capacity.median.value;
};
/** A deep solid part: nothing but the knurl gives way. */
const SOLID: Changes = {
  host: { infill: { pattern: 'grid', density_percent: 100 }, thickness_mm: 31 },
  loads: NO_LOAD,
};

describe('common practice', () => {
  test('a plain pilot of 4.25 mm gets a hole drawn at 4.55 mm on a printer without calibration', () => {
    expect(assessed({}, { pilotDiameter_mm: [4.25], knurlDiameter_mm: [5.01] }).hole.drawn.value).toBe(4.55);
  });

  test.each(['steel', 'aluminium', 'stainless'])(
    'an M3 8.8 as delivered, on the insert, under %s, is not tightened above about 1.0 to 1.2 N·m',
    (material) => {
      const { torque, seat } = assessed({ clamped: { material }, loads: NO_LOAD });
      expect(seat.kind).toBe('on-insert');
      expect(torque.most.value).toBeGreaterThanOrEqual(1000);
      expect(torque.most.value).toBeLessThanOrEqual(1200);
    },
  );

  test.each(['hammered', 'cold-pressed'] as const)(
    'a %s insert holds about a third of a heat-set one',
    (setting) => {
      const cold = assessed({ ...SOLID, setting });
      const hot = assessed(SOLID);
      expectRelative(medianOf(cold, 'knurl-shear') / medianOf(hot, 'knurl-shear'), 1 / 3);
      expect(holds(cold) / holds(hot)).toBeGreaterThan(0.25);
      expect(holds(cold) / holds(hot)).toBeLessThan(0.4);
    },
  );

  test('of the same thread a wider insert holds more and turns later', () => {
    const narrow = assessed(SOLID, { knurlDiameter_mm: [4.61], pilotDiameter_mm: [3.97] });
    const wide = assessed(SOLID, {
      knurlDiameter_mm: [5.57],
      pilotDiameter_mm: [4.93],
      knurledLength_mm: [4.0],
    });
    expect(holds(wide)).toBeGreaterThan(holds(narrow));
    expect(medianOf(wide, 'torque-out')).toBeGreaterThan(medianOf(narrow, 'torque-out'));
  });

  test('of the same thread a longer insert holds more and turns later', () => {
    const short = assessed(SOLID, { length_mm: [4.1] });
    const long = assessed(SOLID, { length_mm: [5.9] });
    expect(holds(long)).toBeGreaterThan(holds(short));
    expect(medianOf(long, 'torque-out')).toBeGreaterThan(medianOf(short, 'torque-out'));
  });

  test('a diameter grows the torque-out more than the force, a length both alike', () => {
    const base = assessed(SOLID, {
      knurlDiameter_mm: [4.6],
      pilotDiameter_mm: [4.02],
      knurledLength_mm: [3.3],
    });
    const wide = assessed(SOLID, {
      knurlDiameter_mm: [5.52],
      pilotDiameter_mm: [4.92],
      knurledLength_mm: [3.3],
    });
    const long = assessed(SOLID, {
      knurlDiameter_mm: [4.6],
      pilotDiameter_mm: [4.02],
      knurledLength_mm: [3.96],
    });
    const gain = (other: JointAssessment, mode: string) => medianOf(other, mode) / medianOf(base, mode);
    expect(gain(wide, 'torque-out')).toBeGreaterThan(1.15 * gain(wide, 'knurl-shear'));
    expectRelative(gain(long, 'torque-out'), gain(long, 'knurl-shear'), 1e-9);
  });

  test('a 3 mm M3 insert holds less than its share of a 5.7 mm one, and says so', () => {
    const record = { knurlDiameter_mm: [4.61], pilotDiameter_mm: [4.02] };
    const short = assessed(SOLID, { ...record, length_mm: [3] });
    const long = assessed(SOLID, { ...record, length_mm: [5.7] });
    expect(holds(short) / holds(long)).toBeLessThan(3 / 5.7);
    const codes = (length: number) =>
      noticed(SOLID, { ...record, length_mm: [length] }).map(({ code }) => code);
    expect(codes(3)).toContain('short-insert');
    expect(codes(5.7)).not.toContain('short-insert');
  });

  test('over a gap the largest torque is a fraction of that on the insert', () => {
    const onInsert = assessed({ loads: NO_LOAD });
    const overGap = assessed({ gap_mm: 0.4, loads: NO_LOAD });
    expect(overGap.seat.kind).toBe('over-gap');
    expect(overGap.torque.most.value).toBeLessThan(0.5 * onInsert.torque.most.value);
    expect(overGap.torque.most.value).toBeGreaterThan(0);
  });

  test('jack-out comes before the insert turns (derived: by more than D/(2·K·d))', () => {
    const { limits } = assessed({ gap_mm: 0.4, loads: NO_LOAD });
    const allowed = (wanted: string) => limits.find(({ mode }) => mode === wanted)?.allows?.value ?? 0;
    expect(allowed('torque-out')).toBeGreaterThan(2 * allowed('knurl-shear'));
  });

  test('a clearance hole as wide as the knurl turns the seat to the plastic', () => {
    const wide = { screw: { washer: 'plain' }, loads: NO_LOAD } as const;
    const reaches = assessed({ ...wide, clamped: { clearanceHole_mm: 4.93 } });
    const short = assessed({ ...wide, clamped: { clearanceHole_mm: 4.92 } });
    expect(reaches.seat).toMatchObject({ kind: 'on-plastic', reason: 'clearance-reaches-knurl' });
    expect(short.seat).toMatchObject({ kind: 'on-insert', reason: 'clearance-smaller-than-knurl' });
    expect(reaches.torque.most.value).toBeLessThan(short.torque.most.value);
  });

  test('a warm joint holds less: PETG at 58 °C below 0.7 of what it holds at 23 °C', () => {
    const at = (serviceTemperature_degC: number) =>
      assessed({ loads: { ...NO_LOAD, serviceTemperature_degC } });
    expect(holds(at(58))).toBeLessThan(0.7 * holds(at(23)));
  });
});
