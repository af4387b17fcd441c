import { describe, expect, test } from 'vitest';
import { DEMOS } from '../../src/app/demos/demos.ts';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import type { InsertRecord } from '../../src/storage/document.ts';
import type { Refusal } from '../../src/storage/refusal.ts';
import { resolveDocument } from '../../src/storage/resolve.ts';
import { type Changes, givenJoint, insertRecord, jointDocument, resolved } from '../support/joints.ts';

function refusalsOf(document: ReturnType<typeof jointDocument>): readonly Refusal[] {
  const found = resolveDocument(document, CATALOGUE);
  if (found.kind === 'resolved') throw new Error('resolved');
  return found.refusals;
}
const expectRefused = (changes: Changes, ...refusals: readonly Partial<Refusal>[]) =>
  expect(refusalsOf(jointDocument(changes))).toMatchObject(refusals);
const expectInsertRefused = (record: Parameters<typeof insertRecord>[0], refusal: Partial<Refusal>) =>
  expectRefused({ drawer: [insertRecord(record)] }, refusal);

describe('resolveDocument', () => {
  test('resolves every demonstration joint', () => {
    for (const demo of DEMOS) expect(resolveDocument(demo, CATALOGUE).kind).toBe('resolved');
  });
  test('turns percent into a share, N·m into N·mm, and sorts the settings', () => {
    const joint = givenJoint({
      host: { infill: { pattern: 'gyroid', density_percent: 23 } },
      tool: { settings_Nm: [0.9, 0.25, 0.6], step_Nm: 0.07 },
    });
    expect(joint.host.infill).toEqual({ pattern: 'gyroid', family: 'cellular', density: 0.23 });
    expect(joint.tool.settings.map(Math.round)).toEqual([250, 600, 900]);
    expect(Math.round(joint.tool.step)).toBe(70);
  });
  test('gives the tool its deviation: 6 % for a driver (iso-6789), 35 % by hand (machinery-handbook)', () => {
    expect(givenJoint().tool.deviation).toBe(0.06);
    expect(givenJoint({ tool: { kind: 'hand' } }).tool.deviation).toBe(0.35);
  });
  test('takes the rows that the ids name, and proposes an oiled thread, 12.9 and a washer', () => {
    const { screw } = givenJoint({ screw: { washer: 'plain', length_mm: 9.3 } });
    expect(screw).toMatchObject({
      thread: { id: 'M3' },
      head: { standard: 'ISO 4762', thread: 'M3' },
      propertyClass: { id: '8.8' },
      washer: { thread: 'M3', outsideDiameter: 7 },
      fixedLength: 9.3,
      breakingTorque: { torque: 1500 },
      alternatives: { friction: { id: 'oiled' }, propertyClass: { id: '12.9' }, washer: { thread: 'M3' } },
    });
  });
  test('gives the insert of before for a record of before, unless the caliper or the record is another', () => {
    const document = jointDocument();
    const firstOf = (changes: Partial<typeof document>) => {
      const found = resolveDocument({ ...document, ...changes }, CATALOGUE);
      return found.kind === 'resolved' ? found.value.drawer[0] : undefined;
    };
    const insert = firstOf({});
    expect(insert).toBeDefined();
    expect(firstOf({ name: 'the same inserts' })).toBe(insert);
    expect(firstOf({ caliper: { permissibleError_mm: 0.013 } })?.length.permissibleError).toBe(0.013);
    const [record] = document.drawer;
    if (record === undefined) throw new Error('the drawer is empty');
    expect(firstOf({ drawer: [{ ...record, length_mm: [5.78] }] })?.length.values).toEqual([5.78]);
  });

  test('leaves the seat to the geometry unless it is overruled, and keeps the chosen insert', () => {
    expect(givenJoint().seatOverride).toBeUndefined();
    expect(givenJoint({ seat: 'over-gap' }).seatOverride).toBe('over-gap');
    expect(resolved({ ...jointDocument(), chosenInsert: 'usual' }).chosenInsert).toBe('usual');
  });
  test.each([
    [{ screw: { thread: 'M7' } }, 'joint.screw.thread', 'M7'],
    [{ screw: { head: 'ISO 1' } }, 'joint.screw.head', 'ISO 1'],
    [{ screw: { propertyClass: '9.9' } }, 'joint.screw.propertyClass', '9.9'],
    [{ screw: { friction: 'wet' } }, 'joint.screw.friction', 'wet'],
    [{ host: { material: 'wood' } }, 'joint.host.material', 'wood'],
    [
      { host: { infill: { pattern: 'lightning', density_percent: 20 } } },
      'joint.host.infill.pattern',
      'lightning',
    ],
    [{ clamped: { material: 'wood' } }, 'joint.clamped.material', 'wood'],
    [{ drawer: [insertRecord({ thread: 'M7' })] }, 'drawer.0.thread', 'M7'],
  ] as const)('finds no row for %j', (changes, path, value) => {
    expectRefused(changes, { path, code: 'unknown-row', facts: { value } });
  });
  test('M2 has no button head', () => {
    expectRefused(
      {
        screw: { thread: 'M2', head: 'ISO 7380-1' },
        clamped: { clearanceHole_mm: 2.4 },
        drawer: [insertRecord()],
      },
      { path: 'joint.screw.head', code: 'no-such-head', facts: { head: 'ISO 7380-1', thread: 'M2' } },
    );
  });
  test('an inch thread has no washer, and none lies under a countersunk head', () => {
    expectRefused(
      { screw: { thread: 'UNC-4-40', head: 'ASME B18.3 cap', washer: 'plain' } },
      { path: 'joint.screw.washer', code: 'no-such-washer', facts: { thread: '4-40' } },
    );
    expectRefused(
      { screw: { head: 'ISO 10642', washer: 'plain' }, clamped: { clearanceHole_mm: 6.9 } },
      { path: 'joint.screw.washer', code: 'no-such-washer', facts: { thread: 'M3 under ISO 10642' } },
    );
  });
  test('the screw must pass the hole, and its head must not', () => {
    expectRefused(
      { clamped: { clearanceHole_mm: 3 } },
      {
        path: 'joint.clamped.clearanceHole_mm',
        code: 'clearance-below-screw',
        facts: { value: 3, screw: 3, medium: 3.4 },
      },
    );
    expectRefused(
      { clamped: { clearanceHole_mm: 5.07 } },
      {
        path: 'joint.clamped.clearanceHole_mm',
        code: 'clearance-above-head',
        facts: { value: 5.07, bearing: 5.07 },
      },
    );
    expect(
      givenJoint({ clamped: { clearanceHole_mm: 5.07 }, screw: { washer: 'plain' } }).clamped.clearanceHole,
    ).toBe(5.07);
  });
  test('a layer is not higher than its line is wide', () => {
    expectRefused(
      { host: { layerHeight_mm: 0.44 } },
      {
        path: 'joint.host.layerHeight_mm',
        code: 'layer-above-line',
        facts: { layerHeight: 0.44, lineWidth: 0.43 },
      },
    );
  });
  test('a load is none or one that can be told', () => {
    expectRefused(
      { loads: { pull_N: 1e-9, shear_N: 5e-324 } },
      { path: 'joint.loads.pull_N', code: 'below-limit', facts: { value: 1e-9, least: 0.001 } },
      { path: 'joint.loads.shear_N', code: 'below-limit', facts: { value: 5e-324, least: 0.001 } },
    );
    expect(givenJoint({ loads: { pull_N: 0.001, shear_N: 0 } }).loads).toMatchObject({
      pull: 0.001,
      shear: 0,
    });
  });
  test('ids of the drawer differ, and the chosen one is among them', () => {
    expectRefused(
      { drawer: [insertRecord(), insertRecord({ length_mm: [6.1] })] },
      { path: 'drawer.1.id', code: 'duplicate-id', facts: { value: 'usual' } },
    );
    expect(refusalsOf({ ...jointDocument(), chosenInsert: 'gone' })).toEqual([
      { path: 'chosenInsert', code: 'no-such-insert', facts: { value: 'gone' } },
    ]);
  });
  test.each<[Refusal['code'], string, Partial<InsertRecord>]>([
    ['looks-like-inches', 'length_mm', { length_mm: [0.209] }],
    ['pilot-not-below-knurl', 'pilotDiameter_mm', { pilotDiameter_mm: [5.1] }],
    [
      'length-and-knurl-swapped',
      'knurlDiameter_mm',
      { knurlDiameter_mm: [3.3], pilotDiameter_mm: [3.2], length_mm: [4.6] },
    ],
    [
      'no-brass-left',
      'knurlDiameter_mm',
      { knurlDiameter_mm: [3.3], pilotDiameter_mm: [3.2], length_mm: [2.9] },
    ],
    ['knurl-too-wide', 'knurlDiameter_mm', { knurlDiameter_mm: [11.3] }],
    ['pilot-below-thread', 'pilotDiameter_mm', { pilotDiameter_mm: [2.8] }],
    ['no-bite', 'pilotDiameter_mm', { pilotDiameter_mm: [4.91] }],
    ['too-long', 'length_mm', { length_mm: [16.3] }],
    ['too-short', 'length_mm', { length_mm: [1.7] }],
    ['knurled-longer-than-insert', 'knurledLength_mm', { knurledLength_mm: [5.9] }],
  ])('an insert that cannot be: %s, at %s', (code, key, record) => {
    expectInsertRefused(record, { path: `drawer.0.${key}`, code });
  });
  test('judges the mean of the readings', () => {
    expect(
      resolved(jointDocument({ drawer: [insertRecord({ pilotDiameter_mm: [4.95, 3.71] })] })).drawer,
    ).toHaveLength(1);
    expectInsertRefused({ pilotDiameter_mm: [4.95, 4.97] }, { code: 'pilot-not-below-knurl' });
  });
  test('names the faults of every part at once', () => {
    const paths = refusalsOf(
      jointDocument({
        screw: { friction: 'wet' },
        host: { material: 'wood' },
        drawer: [insertRecord({ length_mm: [16.3] })],
      }),
    ).map(({ path }) => path);
    expect(paths).toEqual(['joint.screw.friction', 'joint.host.material', 'drawer.0.length_mm']);
  });
});
