import { describe, expect, test } from 'vitest';
import { DEMO_NAMES, FIRST_JOINT, loadDemo } from '../../../src/app/demos/demo-list.ts';
import { DEMOS } from '../../../src/app/demos/demos.ts';
import { NEW_JOINT } from '../../../src/app/demos/new-joint.ts';
import { admit } from '../../../src/app/state/admit.ts';
import { CATALOGUE } from '../../../src/data/catalogue.ts';
import { openDocument } from '../../../src/storage/open-document.ts';

describe.each([...DEMOS, NEW_JOINT].map((document) => [document.name, document] as const))(
  '%s',
  (_, document) => {
    test('opens as written, nothing added and nothing lost', () => {
      expect(openDocument(structuredClone(document))).toEqual({ kind: 'opened', document });
    });
    test('passes the door with all its rows', () => {
      expect(admit(document)).toMatchObject({ kind: 'admitted' });
    });
    test('has the clearance hole of the medium series', () => {
      const thread = CATALOGUE.threads.find(({ id }) => id === document.joint.screw.thread);
      expect(document.joint.clamped.clearanceHole_mm).toBe(thread?.clearanceHoles.medium);
    });
  },
);

describe('the demonstration joints', () => {
  test.each(DEMOS.map((document) => [document.name, document] as const))(
    'include %s by its name',
    async (name, document) => {
      expect(await loadDemo(name)).toBe(document);
    },
  );
  test('are listed in their order', () => {
    expect(DEMO_NAMES).toEqual(DEMOS.map(({ name }) => name));
    expect(DEMOS[0]).toBe(FIRST_JOINT);
  });
  test('have names of their own', () => {
    const names = DEMOS.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });
  test.each(DEMOS.map((document) => [document.name, document] as const))(
    '%s has a mixed drawer',
    (_, document) => {
      const { drawer, joint } = document;
      expect(drawer.length).toBeGreaterThanOrEqual(4);
      expect(drawer.length).toBeLessThanOrEqual(8);
      expect(drawer.some(({ thread }) => thread === joint.screw.thread)).toBe(true);
      expect(drawer.some(({ thread }) => thread !== joint.screw.thread)).toBe(true);
      expect(drawer.some(({ thread, length_mm }) => thread === 'M3' && length_mm[0] === 3)).toBe(true);
    },
  );
  test('two of them have several screws with moments, one a spacer', () => {
    const grouped = DEMOS.filter(({ joint }) => joint.pattern.kind !== 'single');
    expect(grouped).toHaveLength(2);
    expect(
      grouped.every(({ joint }) => Object.values(joint.loads.moment_Nm).some((moment) => moment !== 0)),
    ).toBe(true);
    expect(DEMOS.filter(({ joint }) => joint.clamped.sleeve !== undefined)).toHaveLength(1);
  });
  test('among them are all four seats of the clamped part but the overruled ones', () => {
    expect(DEMOS.some(({ joint }) => joint.gap_mm > 0)).toBe(true);
    expect(DEMOS.some(({ joint }) => joint.insertSide === 'far-side')).toBe(true);
    expect(DEMOS.some(({ joint }) => joint.clamped.material === 'petg')).toBe(true);
  });
  test('one has a printer with read holes, one has coupons of two ways of setting, pulled, turned and held', () => {
    expect(DEMOS.filter(({ printers }) => printers.some(({ holes }) => holes.length > 4))).toHaveLength(1);
    const tested = DEMOS.filter(({ tests }) => tests.length > 0);
    expect(tested).toHaveLength(1);
    const [tests = []] = tested.map(({ tests: rows }) => rows);
    expect(new Set(tests.map(({ setting }) => setting))).toEqual(new Set(['heat-set', 'hammered']));
    expect(new Set(tests.map(({ kind }) => kind))).toEqual(new Set(['pull-out', 'proof-pull', 'torque-out']));
    expect(tests.some(({ result }) => result === 'held')).toBe(true);
  });
});
