import { describe, expect, test } from 'vitest';
import type {
  Notice,
  NoticeCode,
  Opening,
  SeatFinding,
  SeatReason,
  Stop,
} from '../../src/core/joint/assessment.ts';
import type { Use } from '../../src/core/joint/joint.ts';
import type { FailureMode, SeatKind } from '../../src/core/pull-out/limit.ts';
import type { Rejection } from '../../src/core/recommend/recommendation.ts';
import type { CoreUnit, Derived, Standing } from '../../src/core/sources/derived.ts';
import { SOURCES, type SourceId } from '../../src/core/sources/sources.ts';
import {
  MODE_AGENTS,
  MODE_EVENTS,
  nameOfMode,
  nameOfSeat,
  sentenceOfOpening,
} from '../../src/wording/names.ts';
import { sentenceOfNotice } from '../../src/wording/notices.ts';
import { sentenceOfRejection } from '../../src/wording/rejections.ts';
import { seatSentence } from '../../src/wording/seat.ts';
import { plainText } from '../../src/wording/sentence.ts';
import { STANDINGS, sourceWords } from '../../src/wording/standing.ts';
import { sentencesOfStop } from '../../src/wording/stops.ts';
import { expectSentence } from './expect-sentence.ts';
import { openedBy } from './opened-by.ts';

const computed = (symbol: string, value: number, unit: CoreUnit): Derived => ({
  symbol,
  value,
  unit,
  formula: symbol,
  entries: [],
  source: 'own-model',
  standing: 'estimate',
});

const NOTICES = {
  'hole-outside-fit-range': [
    { drawn: computed('D_CAD', 2.6, 'mm'), least: 3, greatest: 10 },
    ['2.6', '3.0', '10.0'],
  ],
  'hole-rarely-fits': [{ chance: computed('p', 0.624, '-') }, ['62 in 100']],
  'above-service-temperature': [{ temperature: 58, greatest: 50, material: 'PLA' }, ['58', 'PLA', '50']],
  'countersunk-wedges-printed-part': [{ material: 'PETG' }, ['PETG']],
  'printed-part-on-insert-ring': [{ material: 'PETG' }, ['PETG', 'ring']],
  'seat-overruled': [{ chosen: 'over-gap', geometry: 'on-insert' }, ['over a gap', 'on the insert']],
  'infill-below-practice': [{ percent: 20, practice: 70 }, ['20', '70']],
  'wall-below-practice': [{ wall: computed('t', 2.08, 'mm'), practice: 2.4 }, ['2.08', '2.4']],
  'boss-below-practice': [{ given: 7.5, least: computed('D_b', 8.1, 'mm') }, ['7.5', '8.1']],
  'floor-below-practice': [{ floor: computed('f', 1.2, 'mm'), practice: 2 }, ['1.2', '2.0']],
  'cold-setting-may-split': [{ setting: 'hammered' }, ['hammered in']],
  'short-insert': [
    { length: computed('L', 3, 'mm'), least: computed('L_min', 3.3, 'mm'), thread: 'M3' },
    ['3.0', 'M3', '3.3'],
  ],
  'elastomer-host': [{ material: 'TPU' }, ['TPU']],
  'tightened-by-hand': [{ percent: 35 }, ['35']],
  'gauge-was-compensated': [{ printer: 'Attic' }, ['Attic']],
  'printer-of-other-material': [
    { printer: 'Attic', read: 'petg', material: 'PLA' },
    ['Attic', 'petg', 'PLA'],
  ],
  'printer-of-other-layers': [{ printer: 'Attic', read: 0.2, layerHeight: 0.12 }, ['0.2', '0.12']],
  'few-holes-read': [{ count: 2, enough: 3 }, ['Two holes', 'three']],
  'bond-untested': [{ setting: 'heat-set' }, ['set with a hot iron']],
  'bond-tested': [
    {
      coupons: 3,
      broke: 3,
      own: 'pulled',
      before: computed('F_ks', 1302, 'N'),
      after: computed('F_ks', 1184, 'N'),
      characteristic: computed('R_k', 958, 'N'),
    },
    ['Three tests moved', '1,300', '1,180', '958'],
  ],
  'readings-scatter': [{ spread: computed('Δ_x', 0.14, 'mm'), permissibleError: 0.03 }, ['0.14', '0.03']],
  'knurled-length-estimated': [{ knurledLength: computed('L_k', 4.41, 'mm') }, ['4.41']],
  'threadlocker-cracks-host': [{ material: 'ABS' }, ['ABS']],
  'dial-above-breaking-torque': [{ dial: computed('T', 1600, 'N·mm'), breaking: 1500 }, ['1.60', '1.50']],
  'strengths-low-confidence': [{ material: 'PA-CF' }, ['PA-CF']],
  'no-load-given': [{ pull: 0 }, ['No load']],
  'insert-across-layers': [{ material: 'PETG' }, ['across the build']],
  'window-hangs-on-little-known': [{ material: 'PETG' }, ['PETG', 'careful end', 'one would']],
  'most-torque-by-time': [
    { atOnce: computed('T_most', 320, 'N·mm'), most: computed('T_most', 210, 'N·mm'), hours: 8760 },
    ['0.32', '0.21', '1\u00a0year'],
  ],
  'creep-little-known': [
    {
      material: 'PETG',
      least: computed('R_F', 0.412, '-'),
      most: computed('R_F', 0.627, '-'),
      hours: 8760,
    },
    ['PETG', '41 to 63\u00a0%', '1\u00a0year', 'careful end'],
  ],
  'warmth-little-known': [
    {
      material: 'PA12',
      temperature: 60,
      least: computed('θ', 0.481, '-'),
      most: computed('θ', 0.619, '-'),
    },
    ['PA12', '60\u00a0°C', '48 to 62\u00a0%', 'careful end'],
  ],
  'creep-extrapolated': [{ hours: 8760, known: 1000 }, ['1,000', 'year']],
  vibration: [{ locking: 'none' }, ['mechanically']],
  'breaking-torque-unknown': [{ propertyClass: '5.8' }, ['5.8']],
  'setting-above-breaking-torque': [{ setting: 1800, breaking: 1500, screw: 'M3' }, ['1.80', '1.50', 'M3']],
} as const satisfies Record<NoticeCode, readonly [Notice['facts'], readonly string[]]>;

describe('sentenceOfNotice', () => {
  test.each(Object.entries(NOTICES))('says %s with its numbers', (code, [facts, parts]) => {
    const sentence = plainText(sentenceOfNotice({ code: code as NoticeCode, facts }));
    expectSentence(sentence);
    for (const part of parts) expect(sentence).toContain(part);
  });
  test.each(Object.entries(NOTICES))('lets every computed number of %s open', (code, [facts]) => {
    const opened = openedBy(sentenceOfNotice({ code: code as NoticeCode, facts }));
    const computedFacts = Object.values<Notice['facts'][string]>(facts).filter(
      (fact) => typeof fact === 'object',
    );
    expect(opened).toEqual(expect.arrayContaining(computedFacts));
    expect(opened).toHaveLength(computedFacts.length);
  });
  test('says of tests in which no bond gave way what they show, and that there may be more', () => {
    const held = {
      coupons: 1,
      broke: 0,
      own: 'other-sizes',
      before: computed('F_ks', 1302, 'N'),
      characteristic: computed('R_k', 958, 'N'),
    };
    const of = (after: number) =>
      plainText(
        sentenceOfNotice({ code: 'bond-tested', facts: { ...held, after: computed('F_ks', after, 'N') } }),
      );
    expectSentence(of(1490));
    expect(of(1490)).toContain('One test of another size moved');
    expect(of(1490)).toContain('shown at least');
    expect(of(1302)).toContain('left knurl shear at');
    for (const after of [1302, 1490]) expect(of(after)).toContain('it may hold more');
  });
});

const REJECTIONS = {
  'other-thread': { code: 'other-thread', insertThread: 'M4', screwThread: 'M3' },
  'part-too-thin': { code: 'part-too-thin', depth: 9.2, thickness: 10, floor: 1 },
  'boss-too-small': { code: 'boss-too-small', bossDiameter: 6.5, leastDiameter: 6.9 },
  'hole-without-bite': { code: 'hole-without-bite', bore: 4.95, knurl: 4.93 },
  'hole-too-small': { code: 'hole-too-small', bore: 3.97, pilot: 4.21 },
  'hole-too-shallow': { code: 'hole-too-shallow', depth: 4.7, depthNeeded: 5.94 },
  'holds-too-little': { code: 'holds-too-little', holds: 264, asked: 270 },
  'no-screw-length': { code: 'no-screw-length', least: 6.2, greatest: 7.1 },
  'no-torque': { code: 'no-torque', least: 310, most: 250 },
} as const satisfies {
  readonly [Code in Rejection['code']]: Omit<Extract<Rejection, { code: Code }>, 'insertId'>;
};

describe('sentenceOfRejection', () => {
  test('opens its computed numbers where there is a way to them, and none elsewhere', () => {
    const rejection = { insertId: 'a', ...REJECTIONS['no-torque'] };
    const wayTo = (fact: string) => computed(fact, 1, 'N·mm');
    expect(openedBy(sentenceOfRejection(rejection, wayTo)).map(({ symbol }) => symbol)).toEqual([
      'least',
      'most',
    ]);
    expect(openedBy(sentenceOfRejection(rejection))).toEqual([]);
  });
  test.each(Object.values(REJECTIONS))('gives the reason of $code in full', (rejection) => {
    const sentence = plainText(sentenceOfRejection({ insertId: 'a', ...rejection }));
    expectSentence(sentence);
    for (const [key, value] of Object.entries(rejection)) {
      if (key === 'code') continue;
      const shown = rejection.code === 'no-torque' ? (Number(value) / 1000).toFixed(2) : String(value);
      expect(sentence).toContain(shown);
    }
  });
});

const USES = [
  'overhead',
  'lifting',
  'vehicle',
  'climbing',
  'pressure',
  'mains',
] as const satisfies readonly Use[];
const PERHAPS_TOO_WARM = {
  code: 'too-near-softening',
  material: 'PA12',
  serviceTemperature: 93,
  softening: 95,
  greatest: 85,
  atBest: { softening: 120, greatest: 110 },
} as const satisfies Stop;

const STOPS: readonly Stop[] = [
  ...USES.map((use): Stop => ({ code: 'use-endangers-people', use })),
  { code: 'host-does-not-melt', material: 'Standard resin' },
  { code: 'too-near-softening', material: 'PLA', serviceTemperature: 55, softening: 60, greatest: 50 },
  PERHAPS_TOO_WARM,
];

describe('sentencesOfStop', () => {
  test.each(STOPS)('says what stops, why, and what to do instead: $code $use', (stop) => {
    const { title, because, instead } = sentencesOfStop(stop);
    for (const sentence of [title, because, instead]) expectSentence(sentence);
    if (stop.code !== 'use-endangers-people') return;
    expect(because).toContain('cannot be switched off');
    expect(instead).toMatch(/local code.*licensed engineer/);
  });
  test('names no two uses alike', () => {
    expect(new Set(STOPS.map((stop) => sentencesOfStop(stop).title)).size).toBe(STOPS.length);
  });
  test('says how warm the joint may get', () => {
    const stop = STOPS.find(({ code }) => code === 'too-near-softening');
    expect(stop && sentencesOfStop(stop).because).toContain('50\u00a0°C');
  });
  test('says of a little known softening between what it lies, and whether the other end would say no too', () => {
    const { because } = sentencesOfStop(PERHAPS_TOO_WARM);
    for (const part of ['95\u00a0°C', '120\u00a0°C', '85\u00a0°C', 'would be answered'])
      expect(because).toContain(part);
    const hot = { ...PERHAPS_TOO_WARM, serviceTemperature: 113 };
    expect(sentencesOfStop(hot).because).toContain('would say no too');
  });
});

const REASONS = {
  'clearance-smaller-than-knurl': ['3.4', '5.0'],
  'clearance-reaches-knurl': ['3.4', '5.0'],
  'gap-open': ['1.2'],
  'insert-sunk': ['0.3'],
  'insert-from-far-side': ['behind'],
  overruled: ['over a gap', 'on the insert'],
} as const satisfies Record<SeatReason, readonly string[]>;

describe('seatSentence', () => {
  test.each(Object.entries(REASONS))('explains %s', (reason, parts) => {
    const seat: SeatFinding = {
      kind: 'over-gap',
      reason: reason as SeatReason,
      fromGeometry: 'on-insert',
      clearanceHole: 3.4,
      knurlDiameter: 5,
      gap: 1.2,
      sunk: 0.3,
    };
    expectSentence(seatSentence(seat));
    for (const part of parts) expect(seatSentence(seat)).toContain(part);
  });
});

const MODES = {
  'knurl-shear': 'Knurl shear',
  'wall-plug': 'Wall plug pulls out',
  'boss-tear': 'Boss tears at the hole’s bottom',
  'boss-split': 'Boss splits',
  'shoulder-yield': 'Shoulder yields',
  'shoulder-punch': 'Shoulder punched through',
  'insert-thread': 'Insert thread strips',
  'screw-thread': 'Screw thread strips',
  'screw-yield': 'Screw yields',
  'head-bearing': 'Part yields under the head',
  'seat-bearing': 'Part yields on the insert’s ring',
  'torque-out': 'Insert turns in the plastic',
} as const satisfies Record<FailureMode, string>;

describe('names', () => {
  test.each(Object.entries(MODES))('%s is called %s', (mode, name) => {
    expect(nameOfMode(mode as FailureMode)).toBe(name);
    expect(MODE_AGENTS[mode as FailureMode]).toMatch(/^the /);
    expect(MODE_EVENTS[mode as FailureMode].length).toBeLessThan(28);
  });
  test('every opening is an instruction', () => {
    const openings = {
      'seat-on-insert': 1,
      'oiled-thread': 1,
      'finer-settings': 1,
      'torque-driver': 1,
      'stronger-screw': 1,
      'more-walls': 1,
      'solid-infill': 1,
      washer: 1,
      'less-pull': 1,
    } satisfies Record<Opening, 1>;
    for (const opening of Object.keys(openings)) expectSentence(sentenceOfOpening(opening as Opening));
  });
  test('every seat follows "The part bears"', () => {
    const seats: readonly SeatKind[] = ['on-insert', 'on-plastic', 'over-gap', 'far-side'];
    for (const seat of seats) expect(nameOfSeat(seat)).toMatch(/^(on|over) /);
  });
  test('every standing has its own sign and words', () => {
    const standings: readonly Standing[] = ['published', 'common-practice', 'estimate', 'measured'];
    expect(standings.map((standing) => `${STANDINGS[standing].sign} ${STANDINGS[standing].words}`)).toEqual([
      '§ published',
      '¶ common practice',
      '≈ estimate',
      '± measured by you',
    ]);
  });
  test.each(Object.keys(SOURCES))('source %s says its title and how it is known', (id) => {
    const { title } = sourceWords(id as SourceId);
    expect(title).toContain(SOURCES[id as SourceId].title);
    expect(title).toMatch(/: (read|read in a reprint|from memory, to be confirmed|worked out here)\.$/);
  });
});
