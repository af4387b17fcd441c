import { describe, expect, test } from 'vitest';
import type { Notice, NoticeCode } from '../../../src/core/joint/assessment.ts';
import { noticesOf } from '../../../src/core/joint/notices.ts';
import { admit, stopOf } from '../../../src/core/joint/stop.ts';
import type { InsertRecord } from '../../../src/storage/document.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import {
  answerableJoint,
  assessed,
  type Changes,
  givenJoint,
  noticed,
  theInsert,
} from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const codesOf = (changes: Changes, record: Partial<InsertRecord> = {}) =>
  noticed(changes, record).map(({ code }) => code);
const LONG = { length_mm: [5.3], knurledLength_mm: [3.9] };

describe('assess', () => {
  test('prints what it draws: bore, error and hole belong together', () => {
    const { hole } = assessed();
    expect(hole.drawn.value).toBe(4.5);
    // −0.28 + 0.23 · ln 1.125
    expectRelative(hole.window.expected.value, 4.5 - 0.28 + 0.23 * Math.log(4.5 / 4));
    expectRelative(hole.window.expected.value, hole.drawn.value + hole.printError.value);
  });
  test('lets the slicer compensate alone: no error in CAD', () => {
    const { hole } = assessed({ holes: { compensation: 'in-slicer' } });
    expect(hole.printError.value).toBe(0);
    expect(hole.window.expected.value).toBe(hole.drawn.value);
    expect(hole.drawn.value).toBe(4.25);
  });
  test('leaves a floor of what the hole does not take', () => {
    const { hole } = assessed();
    expectRelative(hole.floor.value + hole.depth.value, 11.3);
  });
  test('dials the largest step in the window and limits it by the mode that allows least', () => {
    const { torque, limits } = assessed();
    const allowed = limits.flatMap(({ allows, mode }) => (allows ? [{ torque: allows.value, mode }] : []));
    const least = allowed.reduce((one, other) => (other.torque < one.torque ? other : one));
    expect(torque).toMatchObject({ kind: 'window', limitedBy: least.mode });
    expect(torque.most.value).toBe(least.torque);
    if (torque.kind === 'window') expectRelative(torque.dial.value, 50 * Math.floor(torque.most.value / 50));
  });
  test('holds what its weakest holding mode holds', () => {
    const { holds, holdsMode, limits } = assessed();
    const holding = limits.filter(({ path }) => path === 'pull');
    expect(holds.characteristic.value).toBe(
      Math.min(...holding.map(({ capacity }) => capacity.characteristic.value)),
    );
    expect(holding.map(({ mode }) => mode)).toContain(holdsMode);
  });
  test('from the far side bears on a shoulder instead of the knurl', () => {
    const { limits, seat } = assessed({ insertSide: 'far-side' });
    expect(seat.kind).toBe('far-side');
    expect(limits.map(({ mode }) => mode)).toEqual([
      'shoulder-yield',
      'shoulder-punch',
      'insert-thread',
      'screw-thread',
      'screw-yield',
      'head-bearing',
      'torque-out',
    ]);
  });
  test('shows the limits of a screw that fills the insert where no length fits', () => {
    const { screw, limits } = assessed({ screw: { length_mm: 4.1 } });
    expect(screw.kind).toBe('refused');
    const strips = limits.find(({ mode }) => mode === 'screw-thread')?.capacity.characteristic;
    const area = strips?.entries.find(({ symbol }) => symbol === 'A_Ss')?.from;
    const engaged = area?.entries.find(({ symbol }) => symbol === 'L_E');
    expectRelative(engaged?.value ?? 0, 5.3);
  });
  test('says which single change opens a closed window', () => {
    const { torque } = assessed({ gap_mm: 0.4, loads: { pull_N: 173 }, tool: { kind: 'hand' } });
    expect(torque).toMatchObject({ kind: 'refused', code: 'no-window' });
    expect(torque.kind === 'refused' ? torque.openedBy : []).toContain('seat-on-insert');
  });
});

describe('notices', () => {
  test.each<[NoticeCode, Changes, Partial<InsertRecord>?]>([
    ['seat-overruled', { seat: 'over-gap' }],
    ['printed-part-on-insert-ring', { clamped: { material: 'petg' } }],
    ['countersunk-wedges-printed-part', { clamped: { material: 'petg' }, screw: { head: 'ISO 10642' } }],
    ['above-service-temperature', { loads: { serviceTemperature_degC: 61 } }],
    ['cold-setting-may-split', { setting: 'hammered' }],
    ['short-insert', {}, { length_mm: [3.2], knurledLength_mm: [2.1] }],
    ['elastomer-host', { host: { material: 'tpu-95a' } }],
    ['insert-across-layers', { host: { axis: 'across-build' } }],
    ['boss-below-practice', { host: { bossDiameter_mm: 8.5 } }],
    ['wall-below-practice', {}],
    ['infill-below-practice', {}],
    ['floor-below-practice', { host: { thickness_mm: 8.1 } }],
    [
      'hole-outside-fit-range',
      { screw: { thread: 'M2', head: 'ISO 4762' }, clamped: { clearanceHole_mm: 2.4 } },
      { thread: 'M2', knurlDiameter_mm: [2.87], pilotDiameter_mm: [2.41], length_mm: [3.1] },
    ],
    ['hole-rarely-fits', {}, { knurlDiameter_mm: [4.4] }],
    ['readings-scatter', {}, { length_mm: [5.3, 5.41] }],
    ['knurled-length-estimated', {}],
    ['tightened-by-hand', { tool: { kind: 'hand' } }],
    ['no-load-given', { loads: { pull_N: 0, shear_N: 0 } }],
    ['threadlocker-cracks-host', { host: { material: 'abs' } }],
    ['strengths-low-confidence', { host: { material: 'pla-plus' } }],
    [
      'dial-above-breaking-torque',
      {
        screw: { friction: 'dry', washer: 'plain' },
        factors: { limits: 1 },
        loads: { pull_N: 0, shear_N: 0 },
      },
    ],
    ['creep-little-known', { gap_mm: 0.4 }],
    ['warmth-little-known', { host: { material: 'pa12' }, loads: { serviceTemperature_degC: 60 } }],
    ['window-hangs-on-little-known', { gap_mm: 0.4, loads: { pull_N: 31, shear_N: 3 } }],
    ['most-torque-by-time', { gap_mm: 0.4, loads: { pull_N: 12, shear_N: 1 } }],
    ['bond-untested', {}],
  ])('%s', (code, changes, record) => {
    expect(codesOf(changes, record)).toContain(code);
  });
  test('says nothing but what is always untested of a joint as practice asks for it', () => {
    const quiet: Changes = {
      host: {
        wall: { kind: 'lines', count: 7, lineWidth_mm: 0.43, convention: 'rounded-beads' },
        infill: { pattern: 'grid', density_percent: 73 },
      },
    };
    expect(codesOf(quiet, LONG)).toEqual(['bond-untested']);
  });
  test('carry the way to the numbers that were computed', () => {
    const factsOf = (code: NoticeCode, changes: Changes = {}, record: Partial<InsertRecord> = {}) => {
      const found = assessed(changes, record);
      const notices = noticesOf(answerableJoint(changes), theInsert(record), found);
      return { facts: notices.find((notice) => notice.code === code)?.facts ?? {}, found };
    };
    const valueIn = (fact: Notice['facts'][string] | undefined) =>
      typeof fact === 'object' ? fact.value : Number.NaN;

    const short = factsOf('short-insert', {}, { length_mm: [3.2], knurledLength_mm: [2.1] }).facts;
    expectRelative(valueIn(short['least']), 1.1 * 3);
    expectRelative(valueIn(short['length']), 3.2);
    const scatter = factsOf('readings-scatter', {}, { length_mm: [5.3, 5.41] }).facts;
    expectRelative(valueIn(scatter['spread']), 0.11);
    for (const fact of [short['least'], scatter['spread']])
      if (typeof fact === 'object') expectRelative(evaluated(fact) ?? 0, fact.value);

    const warm = { host: { material: 'pa12' }, loads: { serviceTemperature_degC: 60 } };
    const warmth = factsOf('warmth-little-known', warm).facts;
    expect(warmth['least']).toMatchObject({ range: { high: valueIn(warmth['most']) } });
    const creep = factsOf('creep-little-known', { gap_mm: 0.4 });
    expect(creep.facts['least']).toBe(creep.found.preloadLeft);
    expectRelative(valueIn(creep.facts['most']), creep.found.preloadLeft.range?.high ?? 0);

    const lasting: Changes = { gap_mm: 0.4, loads: { pull_N: 12, shear_N: 1 } };
    const brief = assessed({ ...lasting, loads: { ...lasting.loads, duration_h: 0 } });
    const most = factsOf('most-torque-by-time', lasting).facts;
    expectRelative(valueIn(most['atOnce']), brief.torque.most.value);
  });
  test('say nothing of time and warmth where the polymer is known, or where no plastic is in the loop', () => {
    const little: readonly NoticeCode[] = [
      'creep-little-known',
      'warmth-little-known',
      'most-torque-by-time',
    ];
    for (const changes of [{ host: { material: 'pc' }, gap_mm: 0.4, loads: { duration_h: 0 } }, {}]) {
      expect(codesOf(changes).filter((code) => little.includes(code))).toEqual([]);
    }
    expect(codesOf({ host: { material: 'pc' }, gap_mm: 0.4 })).not.toContain('creep-little-known');
  });
  test('name the polymer that is little known, not the one that is known', () => {
    const notices = noticed({ clamped: { material: 'pla' }, host: { material: 'pc' }, gap_mm: 0.4 });
    const creep = notices.find(({ code }) => code === 'creep-little-known');
    expect(creep?.facts).toMatchObject({ material: 'PLA', hours: 8760 });
    const both = noticed({ clamped: { material: 'pla' }, gap_mm: 0.4 });
    expect(both.find(({ code }) => code === 'creep-little-known')?.facts['material']).toBe('PETG and PLA');
  });
  test('come each at most once', () => {
    const codes = codesOf({ setting: 'hammered', tool: { kind: 'hand' }, seat: 'over-gap' });
    expect(new Set(codes).size).toBe(codes.length);
  });
});

describe('stopOf', () => {
  test('is nothing for a general use of a cool joint that melts, and admits it', () => {
    expect(stopOf(givenJoint())).toBeUndefined();
    expect(admit(givenJoint()).kind).toBe('admitted');
  });
  test('comes for the use before it comes for the material', () => {
    expect(stopOf(givenJoint({ use: 'lifting', host: { material: 'resin' } }))).toEqual({
      code: 'use-endangers-people',
      use: 'lifting',
    });
  });
  test('decides by the low end of a little known softening, and says what the other end would', () => {
    const warm = (serviceTemperature_degC: number) =>
      givenJoint({ host: { material: 'pa12' }, loads: { serviceTemperature_degC } });
    expect(stopOf(warm(85))).toBeUndefined();
    expect(stopOf(warm(85.1))).toEqual({
      code: 'too-near-softening',
      material: 'PA12',
      serviceTemperature: 85.1,
      softening: 95,
      greatest: 85,
      atBest: { softening: 120, greatest: 110 },
    });
  });
});
