import { describe, expect, test } from 'vitest';
import { differencesOf, madeAlike } from '../../../src/core/bench/made-alike.ts';
import type { TestRecord } from '../../../src/storage/document.ts';
import { benchTest } from '../../support/bench-tests.ts';

let count = 0;
const one = (changes: Partial<TestRecord> = {}) => benchTest({ id: `test-${++count}`, ...changes });

describe('madeAlike', () => {
  test('puts bores within 0.05 mm into one hole, and those not measured last', () => {
    const tests = [one(), ...[4.46, 4.41, 4.52, 4.43].map((bore_mm) => one({ bore_mm }))];
    expect(madeAlike(tests, 'bore').map(({ made, tests: alike }) => [made, alike.length])).toEqual([
      [{ of: 'bore', bore: { least: 4.41, greatest: 4.46 } }, 3],
      [{ of: 'bore', bore: { least: 4.52, greatest: 4.52 } }, 1],
      [{ of: 'bore' }, 1],
    ]);
  });
  test('takes temperatures and times as they are written, from the least up', () => {
    const tests = [260, 235, 260, 236].map((ironTemperature_degC) => one({ ironTemperature_degC }));
    expect(madeAlike(tests, 'iron-temperature').map(({ made }) => made)).toEqual([
      { of: 'iron-temperature', temperature: 235 },
      { of: 'iron-temperature', temperature: 236 },
      { of: 'iron-temperature', temperature: 260 },
    ]);
    const timed = [7, 3].map((settingTime_s) => one({ settingTime_s }));
    expect(madeAlike(timed, 'setting-time').map(({ made }) => made)).toMatchObject([
      { time: 3 / 3600 },
      { time: 7 / 3600 },
    ]);
  });
  test('takes a time of nought as not written down: nothing is set in no time', () => {
    expect(madeAlike([one({ settingTime_s: 0 })], 'setting-time')[0]?.made).toEqual({ of: 'setting-time' });
  });
  test('begins with the usual way of setting, and with the batch that has no name', () => {
    const settings = [one({ setting: 'hammered' }), one(), one({ setting: 'cold-pressed' })];
    expect(madeAlike(settings, 'setting').map(({ made }) => 'setting' in made && made.setting)).toEqual([
      'heat-set',
      'cold-pressed',
      'hammered',
    ]);
    const batches = [one({ batch: 'wet filament' }), one(), one({ batch: 'annealed' })];
    expect(madeAlike(batches, 'batch').map(({ made }) => made)).toEqual([
      { of: 'batch' },
      { of: 'batch', name: 'wet filament' },
      { of: 'batch', name: 'annealed' },
    ]);
  });
});

describe('differencesOf', () => {
  test('finds none between coupons made alike: bores of one hole are alike', () => {
    expect(differencesOf([one({ bore_mm: 4.41 })], [one({ bore_mm: 4.44 })], [])).toEqual([]);
  });
  test('names each respect in which the groups are not alike, with both sides', () => {
    const first = [one({ bore_mm: 4.41, wallLines: 3, infill_percent: 40 })];
    const second = [one({ bore_mm: 4.6, wallLines: 5, infill_percent: 40, axis: 'across-build' })];
    expect(differencesOf(first, second, [])).toEqual([
      {
        of: 'axis',
        first: [{ of: 'axis', axis: 'along-build' }],
        second: [{ of: 'axis', axis: 'across-build' }],
      },
      { of: 'wall-lines', first: [{ of: 'wall-lines', count: 3 }], second: [{ of: 'wall-lines', count: 5 }] },
      {
        of: 'bore',
        first: [{ of: 'bore', bore: { least: 4.41, greatest: 4.41 } }],
        second: [{ of: 'bore', bore: { least: 4.6, greatest: 4.6 } }],
      },
    ]);
  });
  test('tells what is mixed in one group, and what one group does not say', () => {
    const first = [one({ infill_percent: 20 }), one({ infill_percent: 60 })];
    const [infill] = differencesOf(first, [one()], []);
    expect(infill).toEqual({
      of: 'infill',
      first: [
        { of: 'infill', share: 0.2 },
        { of: 'infill', share: 0.6 },
      ],
      second: [{ of: 'infill' }],
    });
  });
  test('leaves out what is meant to differ', () => {
    const first = [one({ batch: 'wet', ironTemperature_degC: 240 })];
    const names = differencesOf(first, [one()], ['batch']).map(({ of }) => of);
    expect(names).toEqual(['iron-temperature']);
  });
});
