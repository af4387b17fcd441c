import { describe, expect, test } from 'vitest';
import type { Recommendation, RejectedCandidate } from '../../../src/core/recommend/recommendation.ts';
import type { InsertRecord } from '../../../src/storage/document.ts';
import fc from '../../support/fast-check.ts';
import { type Changes, insertRecord, recommended } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const insert = (id: string, knurl: number, pilot: number, length: number): InsertRecord =>
  insertRecord({ id, knurlDiameter_mm: [knurl], pilotDiameter_mm: [pilot], length_mm: [length] });
const DRAWER = [
  insert('slim', 4.17, 3.71, 4.03),
  insert('low', 4.61, 4.02, 3.04),
  insert('usual', 4.93, 4.21, 5.3),
  insert('long', 4.63, 4.01, 5.72),
  insert('wide', 5.57, 4.91, 6.1),
];
/** Loads that the plastic decides: the order is not one of metal limits that are all alike. */
const ON_PLASTIC: Changes = { gap_mm: 0.4, loads: { pull_N: 12, shear_N: 1 } };

function answered(changes: Changes): Extract<Recommendation, { kind: 'answered' }> {
  const found = recommended(changes);
  if (found.kind === 'stopped') throw new Error(found.stop.code);
  return found;
}
const order = (changes: Changes, drawer: readonly InsertRecord[] = DRAWER) =>
  answered({ ...changes, drawer }).ranked.map(({ insertId }) => insertId);
function theRejected(changes: Changes, record: Partial<InsertRecord> = {}): RejectedCandidate {
  const { rejected, ranked } = answered({ ...changes, drawer: [insertRecord(record)] });
  const [first] = rejected;
  if (first === undefined) throw new Error(`${ranked.length} ranked, none rejected`);
  return first;
}

/** A number that a rejection gives with its reason. */
function fact({ rejection }: RejectedCandidate, name: string): number {
  const value: unknown = Reflect.get(rejection, name);
  if (typeof value !== 'number') throw new Error(`${rejection.code} gives no ${name}`);
  return value;
}

describe('recommend: order', () => {
  test.each([ON_PLASTIC, {}, { loads: { pull_N: 0, shear_N: 0 } }])(
    'ranks from 1 on, each insert once',
    (changes) => {
      const { ranked, rejected } = answered({ ...changes, drawer: DRAWER });
      expect(ranked.map(({ rank }) => rank)).toEqual(ranked.map((_, index) => index + 1));
      expect(ranked.length).toBeGreaterThan(2);
      expect(
        [
          ...ranked.map(({ insertId }) => insertId),
          ...rejected.map(({ rejection }) => rejection.insertId),
        ].sort(),
      ).toEqual(DRAWER.map(({ id }) => id).sort());
      for (const { insertId, assessment } of ranked) expect(assessment.insertId).toBe(insertId);
    },
  );
  test('does not depend on the order in the drawer', () => {
    const expected = order(ON_PLASTIC);
    fc.assert(
      fc.property(fc.shuffledSubarray(DRAWER, { minLength: DRAWER.length }), (drawer) => {
        expect(order(ON_PLASTIC, drawer)).toEqual(expected);
      }),
      { numRuns: 20 },
    );
  });
  test('keeps the order of the others when an insert comes or goes', () => {
    const whole = order(ON_PLASTIC);
    for (const gone of DRAWER) {
      const rest = DRAWER.filter(({ id }) => id !== gone.id);
      expect(order(ON_PLASTIC, rest)).toEqual(whole.filter((id) => id !== gone.id));
    }
  });
  test('without loads goes by what the insert holds', () => {
    const { ranked } = answered({ loads: { pull_N: 0, shear_N: 0 }, drawer: DRAWER });
    const forces = ranked.map(({ assessment }) => assessment.holds.characteristic.value);
    // Within 1 % of each other two inserts count as equal, and the stronger comes first anyway.
    expect(forces).toEqual([...forces].sort((one, other) => other - one));
  });
  test('of equals that hold the same takes the shorter', () => {
    const knurled = { knurledLength_mm: [3.7] };
    const drawer = [
      insertRecord({ ...knurled, id: 'longer', length_mm: [6.3] }),
      insertRecord({ ...knurled, id: 'shorter', length_mm: [5.3] }),
    ];
    const solid = { infill: { pattern: 'grid', density_percent: 100 }, thickness_mm: 21 };
    expect(order({ host: solid, screw: { length_mm: 7.9 } }, drawer)).toEqual(['shorter', 'longer']);
  });
  test('of equals takes the stronger, then the shorter; here the screw limits both and one is longer', () => {
    const [first] = order({}, [insert('short', 4.93, 4.21, 5.3), insert('longer', 4.93, 4.21, 7.3)]);
    expect(first).toBe('longer');
  });
});

describe('recommend: loads', () => {
  test('half the loads double the reserve of every insert', () => {
    const reserves = (times: number) =>
      answered({
        ...ON_PLASTIC,
        loads: { pull_N: 13 * times, shear_N: 1 * times },
        drawer: DRAWER,
      }).ranked.map(({ assessment }) => [assessment.insertId, assessment.loadReserve?.value ?? 0] as const);
    const full = new Map(reserves(1));
    expect(full.size).toBeGreaterThan(1);
    for (const [id, reserve] of reserves(0.5)) {
      const before = full.get(id);
      if (before !== undefined) expectRelative(reserve, 2 * before, 1e-9);
    }
  });
  test('at the reserve itself the torque window closes: least meets most or a mode is used up (law)', () => {
    const at = (times: number) =>
      answered({
        ...ON_PLASTIC,
        loads: { pull_N: 13 * times, shear_N: 1 * times },
        tool: { step_Nm: 0.001 },
      });
    const reserve = at(1).ranked[0]?.assessment.loadReserve?.value ?? 0;
    expect(reserve).toBeGreaterThan(1);
    expect(at(0.98 * reserve).ranked).toHaveLength(1);
    expect(at(1.02 * reserve).ranked).toHaveLength(0);
  });
});

describe('recommend: rejections', () => {
  test('another thread, without an assessment', () => {
    const out = theRejected({}, { thread: 'M2.5', knurlDiameter_mm: [4.07], pilotDiameter_mm: [3.52] });
    expect(out.rejection).toEqual({
      insertId: 'usual',
      code: 'other-thread',
      insertThread: 'M2.5',
      screwThread: 'M3',
    });
    expect(out.assessment).toBeUndefined();
  });
  test('a part too thin for the hole', () => {
    const out = theRejected({ host: { thickness_mm: 7.1 } });
    expect(out.rejection).toMatchObject({ code: 'part-too-thin', thickness: 7.1, floor: 1 });
    expect(out.assessment?.hole.floor.value).toBeLessThan(1);
  });
  test('a part too thin for a far-side insert, without an assessment', () => {
    const out = theRejected({ insertSide: 'far-side', host: { thickness_mm: 6.2 } });
    // 5.3 mm in layers of 0.2 mm is 5.4 mm.
    expect(out).toEqual({
      rejection: { insertId: 'usual', code: 'part-too-thin', depth: 5.4, thickness: 6.2, floor: 1 },
    });
  });
  test('a boss in which no line of wall stands round the knurl; narrower than the knurl nothing is computed', () => {
    const out = theRejected({ host: { bossDiameter_mm: 5.7 } });
    expect(out.rejection).toMatchObject({ code: 'boss-too-small', bossDiameter: 5.7 });
    expectRelative(fact(out, 'leastDiameter'), 4.93 + 0.86);
    expect(out.assessment).toBeDefined();
    expect(theRejected({ host: { bossDiameter_mm: 4.9 } }).assessment).toBeUndefined();
  });
  test('no length of screw', () => {
    const out = theRejected({ screw: { length_mm: 4.1 } });
    expect(out.rejection).toMatchObject({ code: 'no-screw-length' });
    // Grip 2.7 mm and one diameter.
    expectRelative(fact(out, 'least'), 5.7);
  });
  test('it holds less than pull and safety ask', () => {
    const out = theRejected({ loads: { pull_N: 907 } });
    expect(out.rejection).toMatchObject({ code: 'holds-too-little' });
    expectRelative(fact(out, 'asked'), 1.15 * 907);
    expect(fact(out, 'holds')).toBe(out.assessment?.holds.characteristic.value);
  });
  test('no torque, with both ends', () => {
    const out = theRejected({ gap_mm: 0.4, loads: { pull_N: 173 } });
    expect(out.rejection).toMatchObject({ code: 'no-torque' });
    expect(fact(out, 'least')).toBeGreaterThan(fact(out, 'most'));
    expect(out.assessment?.torque).toMatchObject({ kind: 'refused', code: 'no-window' });
  });
  test('a tool without a setting in the window', () => {
    const out = theRejected({ tool: { settings_Nm: [0.02, 5.3] } });
    expect(out.rejection.code).toBe('no-torque');
    expect(out.assessment?.torque).toMatchObject({ code: 'no-setting', openedBy: ['finer-settings'] });
  });
});

describe('recommend: stops', () => {
  test.each(['overhead', 'lifting', 'vehicle', 'climbing', 'pressure', 'mains'] as const)('%s use', (use) => {
    expect(recommended({ use })).toEqual({ kind: 'stopped', stop: { code: 'use-endangers-people', use } });
  });
  test('a resin host', () => {
    expect(recommended({ host: { material: 'resin' } })).toMatchObject({
      kind: 'stopped',
      stop: { code: 'host-does-not-melt' },
    });
  });
  test('PLA at 51 °C, and not at 50 °C', () => {
    const at = (serviceTemperature_degC: number) =>
      recommended({ host: { material: 'pla' }, loads: { serviceTemperature_degC } });
    expect(at(51)).toEqual({
      kind: 'stopped',
      stop: {
        code: 'too-near-softening',
        material: 'PLA',
        serviceTemperature: 51,
        softening: 60,
        greatest: 50,
      },
    });
    expect(at(50).kind).toBe('answered');
  });
  test('a printed clamped part near softening, whatever the host', () => {
    const at = (serviceTemperature_degC: number) =>
      recommended({
        clamped: { material: 'pla' },
        host: { material: 'pc' },
        loads: { serviceTemperature_degC },
      });
    expect(at(51)).toMatchObject({ kind: 'stopped', stop: { material: 'PLA' } });
    expect(at(50).kind).toBe('answered');
  });
});
