import { describe, expect, test } from 'vitest';
import type { Insert } from '../../../src/core/inserts/insert.ts';
import { assess } from '../../../src/core/joint/assess.ts';
import { existingFinding } from '../../../src/core/joint/existing-finding.ts';
import { admit } from '../../../src/core/joint/stop.ts';
import { recommend } from '../../../src/core/recommend/recommend.ts';
import type { Rescue, RescueCode } from '../../../src/core/recommend/rescue.ts';
import { drillFor, wallLeftBy } from '../../../src/core/recommend/rescue-by-drill.ts';
import { rescuesFor } from '../../../src/core/recommend/rescues.ts';
import { CATALOGUE } from '../../../src/data/catalogue.ts';
import { NUTS } from '../../../src/data/nuts.ts';
import { openDocument } from '../../../src/storage/open-document.ts';
import { type ResolvedDocument, resolveDocument } from '../../../src/storage/resolve.ts';
import { evaluated } from '../../app/derivation/evaluate-formula.ts';
import { anyDocument } from '../../support/any-document.ts';
import fc from '../../support/fast-check.ts';
import { type Changes, given, insertRecord, jointDocument, resolved } from '../../support/joints.ts';
import { notFinite } from '../../support/not-finite.ts';
import { expectRelative } from '../../support/published.ts';

/** What helps each computable insert of a document, by the insert's id. */
function rescuesIn({ joint, drawer }: ResolvedDocument): ReadonlyMap<string, readonly Rescue[]> {
  const admission = admit(joint);
  const recommendation = recommend(joint, drawer);
  if (admission.kind === 'stopped' || recommendation.kind === 'stopped') return new Map();
  const computed = [...recommendation.ranked, ...recommendation.rejected].flatMap(
    ({ assessment }) => assessment?.insertId ?? [],
  );
  const inNeed = (insert: Insert): readonly Rescue[] => {
    const finding = existingFinding(admission.joint, assess(admission.joint, insert));
    if (!finding) return [];
    return rescuesFor({ joint: admission.joint, insert, finding, drawer, recommendation, nuts: NUTS });
  };
  return new Map(drawer.filter(({ id }) => computed.includes(id)).map((one) => [one.id, inNeed(one)]));
}

/** Pilot 4.21, knurl 4.93, length 5.3 mm, and one that is wider by 0.5 mm. */
const drawer = [
  insertRecord(),
  insertRecord({ id: 'wider', knurlDiameter_mm: [5.43], pilotDiameter_mm: [4.71] }),
];
const inBore = (diameter_mm: number, changes: Changes = {}, depth_mm?: number): readonly Rescue[] => {
  const existing = {
    diameter_mm,
    known: 'as-measured' as const,
    ...(depth_mm === undefined ? {} : { depth_mm }),
  };
  const document = jointDocument({ drawer, ...changes, holes: { existing } });
  return rescuesIn(resolved(document)).get('usual') ?? [];
};

function rescue<Code extends RescueCode>(rescues: readonly Rescue[], code: Code) {
  const found = rescues.find((one) => one.code === code);
  if (!found) throw new Error(`no rescue ${code}`);
  return found as Extract<Rescue, { code: Code }>;
}

describe('drillFor', () => {
  const limits = (pilot: number, largest: number) => ({
    limits: {
      smallest: given('D_min', pilot - 0.1, 'mm'),
      pilot: given('D_p', pilot, 'mm'),
      largest: given('D_max', largest, 'mm'),
      knurl: given('D_k', largest + 0.5, 'mm'),
    },
  });
  test.each([
    [4.21, 4.26, 4.46, 4.3],
    [4.25, 4.3, 4.51, 4.3],
    [4.31, 4.36, 4.58, 4.4],
    [3.94, 3.99, 4.19, 4],
  ])(
    'pilot %f, wanted %f, largest %f mm take a drill of %f mm (hand calculation)',
    (pilot, wanted, largest, drill) => {
      expect(drillFor(limits(pilot, largest), given('D_f', wanted, 'mm'))?.value).toBe(drill);
    },
  );
  test('finds none where no tenth lies between', () => {
    expect(drillFor(limits(4.31, 4.39), given('D_f', 4.36, 'mm'))).toBeUndefined();
  });
});

describe('wallLeftBy', () => {
  test('2.0 mm of wall round 4.0 mm drilled to 4.3 mm leave 1.85 mm (hand calculation)', () => {
    const left = wallLeftBy(given('t', 2, 'mm'), given('D_dr', 4.3, 'mm'), given('D_t', 4, 'mm'));
    expectRelative(left.value, 1.85);
  });
});

describe('rescuesFor a hole too wide', () => {
  const rescues = inBore(4.78);
  test('takes the insert of the drawer that it fits', () => {
    expect(rescue(rescues, 'another-insert')).toMatchObject({
      kind: 'possible',
      insertId: 'wider',
      verdict: 'fits',
      isEnough: true,
    });
  });
  test('does not open it up', () => {
    expect(rescue(rescues, 'open-up')).toMatchObject({
      kind: 'impossible',
      code: 'open-up',
      why: 'not-too-small',
      bore: { value: 4.78 },
    });
  });
  test('gives what a nut on a washer bears for years: π/4·(7² − 4.78²) mm² (hand calculation)', () => {
    const nut = rescue(rescues, 'nut-behind');
    if (nut.kind === 'impossible') throw new Error(nut.why);
    expectRelative(nut.area.value, 20.539_5, 1e-5);
    const { compressive, creep } = { compressive: nut.holds.value / nut.area.value, creep: 0.6 };
    expect(compressive).toBeGreaterThan(creep);
    // Lid 2.7, part 11.3, washer 0.5, nut 2.4 and a pitch of 0.5 mm: 17.4 mm.
    expect(nut.screwLength.value).toBe(20);
    const [least] = nut.screwLength.entries;
    expectRelative(least?.value ?? 0, 17.4);
    expectRelative((least?.from && evaluated(least.from)) ?? 0, 17.4);
  });
  test('prints anew what the insert wants', () => {
    expect(rescue(rescues, 'reprint')).toMatchObject({
      kind: 'possible',
      drawn: { value: 4.5 },
      depth: { value: 6.4 },
    });
  });
  test('ranks what is enough first, what is impossible last', () => {
    const enough = rescues.map((one) =>
      one.kind === 'impossible' ? 3 : one.code === 'self-tapping-insert' ? 2 : one.isEnough ? 0 : 1,
    );
    expect(enough).toEqual([...enough].sort((one, other) => one - other));
    expect(rescues.map(({ code }) => code)).toEqual([
      'another-insert',
      'nut-behind',
      'reprint',
      'self-tapping-insert',
      'open-up',
    ]);
  });
  test('has no other insert where the drawer has none that fits', () => {
    expect(rescue(inBore(4.78, { drawer: [insertRecord()] }), 'another-insert')).toMatchObject({
      kind: 'impossible',
      why: 'none-in-drawer',
    });
  });
});

describe('rescuesFor a hole too small', () => {
  test('opens it up to a usual drill, with the wall that is left', () => {
    const opened = rescue(inBore(3.9), 'open-up');
    if (opened.kind === 'impossible') throw new Error(opened.why);
    expect(opened.drill.value).toBe(4.3);
    // 5 lines of 0.43 mm in layers of 0.2 mm: 0.43 + 4 · (0.43 − 0.2 · (1 − π/4)) = 1.9783 mm, less 0.2 mm.
    expectRelative(opened.wallLeft.value, 1.778_32, 1e-5);
    expect(opened.verdict).toBe('fits');
  });
  test('holds a little less than printed anew: the bite is that of 4.3, not 4.26 mm', () => {
    const [opened, anew] = [rescue(inBore(3.9), 'open-up'), rescue(inBore(3.9), 'reprint')];
    if (opened.kind === 'impossible' || anew.kind === 'impossible') throw new Error('both are possible');
    expect(opened.holds.value).toBeLessThan(anew.holds.value);
    expect(opened.holds.value).toBeGreaterThan(0.9 * anew.holds.value);
  });
  test('does not drill the walls away', () => {
    const thin = { host: { wall: { kind: 'measured' as const, thickness_mm: 0.51, lineWidth_mm: 0.43 } } };
    expect(rescue(inBore(3.9, thin), 'open-up')).toMatchObject({
      kind: 'impossible',
      why: 'wall-drilled-away',
      // 0.51 mm less half of 4.3 − 3.9 mm.
      wallLeft: { value: expect.closeTo(0.31, 9) as number },
      least: 0.43,
    });
  });
});

describe('rescuesFor a hole too shallow', () => {
  test('drills it deeper by whole tenths, where a floor stays', () => {
    const deeper = rescue(inBore(4.3, {}, 5.1), 'drill-deeper');
    if (deeper.kind === 'impossible') throw new Error(deeper.why);
    expect(deeper.depth.value).toBe(6);
    expect(deeper.verdict).toBe('fits');
  });
  test('does not drill through the floor', () => {
    expect(rescue(inBore(4.3, { host: { thickness_mm: 6.7 } }, 5.1), 'drill-deeper')).toMatchObject({
      kind: 'impossible',
      why: 'no-floor-left',
      depth: { value: 6 },
      thickness: 6.7,
    });
  });
  test('has nothing to do with a hole that is deep enough', () => {
    expect(inBore(4.78).map(({ code }) => code)).not.toContain('drill-deeper');
  });
});

describe('a nut behind', () => {
  test.each([
    ['its washer falls through', inBore(7.1), { why: 'falls-through', outside: 7, hole: { value: 7.1 } }],
    [
      'no standard screw is long enough',
      inBore(4.78, { host: { thickness_mm: 27 } }),
      { why: 'no-screw-length', longest: 30 },
    ],
  ] as const)('is none where %s', (_, rescues, why) => {
    expect(rescue(rescues, 'nut-behind')).toMatchObject({ kind: 'impossible', ...why });
  });
  test('lies on the widest of bore, clearance hole and hole of the washer', () => {
    const none = rescue(inBore(7.1), 'nut-behind');
    if (none.kind !== 'impossible' || none.why !== 'falls-through') throw new Error('it falls through');
    expect(none.hole.entries.map(({ symbol }) => symbol)).toEqual(['D_t', 'd_h', 'd_o']);
    expect(evaluated(none.hole)).toBe(7.1);
  });
  test('is none where no nut is known for an inch thread', () => {
    const inch = insertRecord({ thread: 'UNC-6-32', knurlDiameter_mm: [5.6], pilotDiameter_mm: [4.7] });
    const changes: Changes = {
      drawer: [inch],
      clamped: { clearanceHole_mm: 3.9 },
      screw: { thread: 'UNC-6-32', head: 'ASME B18.3 cap' },
    };
    expect(rescue(inBore(5.3, changes), 'nut-behind')).toMatchObject({ why: 'no-nut-known', thread: '6-32' });
  });
});

describe('rescuesFor, over every joint that the door takes', () => {
  test('gives finite numbers, forces of none below zero, each rescue once', () => {
    const admitted = (document: typeof anyDocument extends fc.Arbitrary<infer D> ? D : never) => {
      const opened = openDocument(document);
      if (opened.kind === 'refused') return undefined;
      const found = resolveDocument(opened.document, CATALOGUE);
      return found.kind === 'resolved' && found.value.joint.holes.existing ? found.value : undefined;
    };
    fc.assert(
      fc.property(
        anyDocument.filter((one) => admitted(one) !== undefined),
        (document) => {
          const found = admitted(document);
          if (!found) return;
          for (const rescues of rescuesIn(found).values()) {
            expect(notFinite(rescues)).toEqual([]);
            expect(new Set(rescues.map(({ code }) => code)).size).toBe(rescues.length);
            const forces = rescues.flatMap((one) => ('holds' in one ? one.holds.value : []));
            for (const force of forces) expect(force).toBeGreaterThanOrEqual(0);
          }
        },
      ),
      { numRuns: 120 },
    );
  }, 60_000);
});
