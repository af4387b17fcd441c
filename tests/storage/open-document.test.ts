import { describe, expect, test } from 'vitest';
import { DEMOS } from '../../src/app/demos/demos.ts';
import { LIMITS } from '../../src/storage/limits.ts';
import {
  GREATEST_DOCUMENT_CHARACTERS,
  openDocument,
  openDocumentText,
} from '../../src/storage/open-document.ts';
import type { Refusal } from '../../src/storage/refusal.ts';
import { anyDocument } from '../support/any-document.ts';
import fc from '../support/fast-check.ts';
import { insertRecord, jointDocument } from '../support/joints.ts';

type Path = readonly (string | number)[];

/** The usual document with one value replaced, whatever it is; undefined takes the key out. */
function changed(path: Path, value: unknown): unknown {
  const copy: unknown = structuredClone(jointDocument());
  const keys = [...path];
  const last = keys.pop() ?? '';
  let holder: unknown = copy;
  for (const key of keys)
    holder = typeof holder === 'object' && holder ? Reflect.get(holder, key) : undefined;
  if (typeof holder !== 'object' || holder === null) throw new Error(`nothing at ${keys.join('.')}`);
  if (value === undefined) Reflect.deleteProperty(holder, last);
  else Reflect.set(holder, last, value);
  return copy;
}
function refusalsOf(input: unknown): readonly Refusal[] {
  const opened = openDocument(input);
  if (opened.kind === 'opened') throw new Error('opened');
  return opened.refusals;
}
function expectRefused(path: Path, value: unknown, refusal: Partial<Refusal>): void {
  expect(refusalsOf(changed(path, value))).toMatchObject([{ path: path.join('.'), ...refusal }]);
}

describe('openDocument', () => {
  test('takes every demonstration joint as it is', () => {
    for (const demo of DEMOS) expect(openDocument(demo)).toEqual({ kind: 'opened', document: demo });
  });
  test('takes what it once wrote: text and back again', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        expect(openDocumentText(JSON.stringify(document))).toEqual({ kind: 'opened', document });
      }),
      { numRuns: 60 },
    );
  });
  test.each([
    ['pull_N', -0.1, 'below-limit', { value: '-0.1', least: 0 }],
    ['pull_N', 1e9, 'above-limit', { value: '1000000000', greatest: 20_000 }],
    ['shear_N', -1e9, 'below-limit', { least: 0 }],
    ['duration_h', 438_001, 'above-limit', { greatest: 438_000 }],
    ['serviceTemperature_degC', -40.1, 'below-limit', { least: -40 }],
  ] as const)('refuses the load %s of %f as %s', (key, value, code, facts) => {
    expectRefused(['joint', 'loads', key], value, { code, facts });
  });
  test.each([
    ['number as text', ['joint', 'gap_mm'], '0.5', { value: '0.5', wanted: 'number' }],
    ['nothing', ['joint', 'gap_mm'], null, { value: 'null', wanted: 'number' }],
    ['list for a number', ['joint', 'gap_mm'], [1], { value: 'a list', wanted: 'number' }],
    ['number for a list', ['drawer', 0, 'length_mm'], 5.3, { value: '5.3', wanted: 'array' }],
    ['text for an object', ['joint', 'loads'], 'none', { value: 'none', wanted: 'object' }],
    ['yes for a text', ['name'], true, { value: 'true', wanted: 'string' }],
    ['object for a text', ['scenario'], {}, { value: 'an object', wanted: 'string' }],
  ] as const)('refuses a %s', (_, path, value, facts) => {
    expectRefused(path, value, { code: 'wrong-kind', facts });
  });
  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('lets no %f in', (value) => {
    expectRefused(['joint', 'sunk_mm'], value, { code: 'wrong-kind' });
    expectRefused(['drawer', 0, 'length_mm', 0], value, { code: 'wrong-kind' });
  });
  test('refuses a choice that is none and shows the choices, long text cut', () => {
    expectRefused(['joint', 'setting'], 'glued', {
      code: 'not-a-choice',
      facts: { value: 'glued', choices: 'heat-set, cold-pressed, hammered' },
    });
    expectRefused(['joint', 'setting'], 'x'.repeat(99), {
      code: 'not-a-choice',
      facts: { value: `${'x'.repeat(40)}…`, choices: 'heat-set, cold-pressed, hammered' },
    });
    expectRefused(['joint', 'host', 'wall', 'kind'], 'thick', { code: 'not-a-choice' });
  });
  test.each([
    [['joint', 'host', 'wall', 'kind'], 'lines, measured'],
    [['joint', 'pattern', 'kind'], 'single, rectangular, circular, free'],
    [['joint', 'loads', 'pivot', 'kind'], 'centroid, edge'],
  ] as const)('shows the choices of %j, refused or missing', (path, choices) => {
    expectRefused(path, 'round', { code: 'not-a-choice', facts: { value: 'round', choices } });
    expectRefused(path, undefined, { code: 'missing', facts: { choices } });
  });
  test('a place of a screw and a moment have their ranges', () => {
    const pattern = { kind: 'free', positions_mm: [{ x: 3, y: 2001 }] };
    expect(refusalsOf(changed(['joint', 'pattern'], pattern))).toMatchObject([
      { path: 'joint.pattern.positions_mm.0.y', code: 'above-limit', facts: { greatest: 2000 } },
    ]);
    expectRefused(
      ['joint', 'pattern'],
      { kind: 'circular', count: 0, diameter_mm: 30 },
      {
        path: 'joint.pattern.count',
        code: 'below-limit',
      },
    );
    expectRefused(['joint', 'loads', 'moment_Nm', 'y'], -1001, {
      code: 'below-limit',
      facts: { least: -1000 },
    });
    expectRefused(['joint', 'loads', 'retightenings'], 5, { code: 'above-limit', facts: { greatest: 4 } });
    expectRefused(['joint', 'loads', 'retightenings'], 1.5, { code: 'not-whole' });
  });
  test.each([
    [['joint', 'screw', 'head'], { wanted: 'string' }],
    [['joint', 'use'], { choices: 'general, overhead, lifting, vehicle, climbing, pressure, mains' }],
    [['joint', 'loads', 'pull_N'], { wanted: 'number' }],
    [['caliper'], { wanted: 'object' }],
  ] as const)('misses %j', (path, facts) => {
    expectRefused(path, undefined, { code: 'missing', facts });
  });
  test.each([
    [['joint', 'loads', 'pull_kN'], 3],
    [['torque'], 0.9],
    [['drawer', 0, 'knurl_mm'], [4.9]],
    [['joint', 'toString'], 1],
    [['joint', 'host', 'infill', 'constructor'], 'grid'],
  ] as const)('knows no key %j', (path, value) => {
    expectRefused(path, value, { code: 'unknown-key', facts: {} });
  });
  test('names every unknown key on its own', () => {
    const odd = { ...jointDocument(), alpha: 1, beta: 2 };
    expect(refusalsOf(odd).map(({ path }) => path)).toEqual(['alpha', 'beta']);
  });
  test('refuses empty lists and names, and lists that are too long', () => {
    expectRefused(['drawer'], [], { code: 'too-few', facts: { least: 1 } });
    expectRefused(['drawer', 0, 'pilotDiameter_mm'], [], { code: 'too-few', facts: { least: 1 } });
    expectRefused(['name'], '', { code: 'too-few', facts: { least: 1 } });
    expectRefused(['name'], 'n'.repeat(81), { code: 'too-many', facts: { greatest: 80 } });
    expectRefused(['scenario'], 's'.repeat(401), { code: 'too-many', facts: { greatest: 400 } });
    expectRefused(
      ['drawer', 0, 'length_mm'],
      Array.from({ length: 51 }, () => 5.3),
      {
        code: 'too-many',
        facts: { greatest: 50 },
      },
    );
    expectRefused(
      ['drawer'],
      Array.from({ length: LIMITS.drawer.greatest + 1 }, () => insertRecord()),
      {
        code: 'too-many',
        facts: { greatest: 5000 },
      },
    );
  });
  test('counts in whole numbers', () => {
    expectRefused(['joint', 'host', 'wall', 'count'], 4.5, { code: 'not-whole', facts: { value: '4.5' } });
    expectRefused(['drawer', 0, 'count'], 1e9, {
      code: 'above-limit',
      facts: { value: '1000000000', greatest: 100_000 },
    });
  });
  test('names every fault at once', () => {
    const twice = { ...jointDocument({ gap_mm: -1, sunk_mm: 99 }), name: '' };
    expect(refusalsOf(twice).map(({ path, code }) => `${path} ${code}`)).toEqual([
      'name too-few',
      'joint.gap_mm below-limit',
      'joint.sunk_mm above-limit',
    ]);
  });
  test.each([undefined, null, 7, 'knurlwright-joint', [], {}, { format: 'other' }, { version: 1 }])(
    '%j is not ours',
    (input) => {
      expect(refusalsOf(input)).toEqual([
        { path: 'format', code: 'not-ours', facts: { wanted: 'knurlwright-joint' } },
      ]);
    },
  );
  test('refuses a newer version before it looks at anything else', () => {
    expect(refusalsOf({ format: 'knurlwright-joint', version: 4, shape: 'unknown' })).toEqual([
      { path: 'version', code: 'newer-version', facts: { version: 4, known: 3 } },
    ]);
  });
  test('refuses an older version, a version that is text and none', () => {
    expectRefused(['version'], 0, { code: 'not-a-choice' });
    expectRefused(['version'], '1', { code: 'not-a-choice' });
    expectRefused(['version'], undefined, { code: 'missing' });
  });
  test.each(Object.entries(LIMITS).filter(([name]) => name.endsWith('_N') || name === 'gap_mm'))(
    'takes both ends of %s',
    (name, { least, greatest }) => {
      const path = name === 'gap_mm' ? ['joint', name] : ['joint', 'loads', name];
      for (const value of [least, greatest]) expect(openDocument(changed(path, value)).kind).toBe('opened');
      expect(openDocument(changed(path, greatest * (1 + 1e-12))).kind).toBe('refused');
    },
  );
});

describe('openDocumentText', () => {
  test.each(['', '{', '{"format":"knurlwright-joint",', 'NaN', "{'format':1}"])('cannot read %j', (text) => {
    const opened = openDocumentText(text);
    expect(opened).toMatchObject({ kind: 'refused', refusals: [{ path: '', code: 'not-json' }] });
  });
  test('refuses a text cut short anywhere', () => {
    const text = JSON.stringify(jointDocument());
    for (let length = 1; length < text.length; length += 37) {
      expect(openDocumentText(text.slice(0, length)).kind).toBe('refused');
    }
  });
  test('refuses a text that is too long unread', () => {
    const greatest = GREATEST_DOCUMENT_CHARACTERS;
    expect(openDocumentText(' '.repeat(greatest + 1))).toEqual({
      kind: 'refused',
      refusals: [{ path: '', code: 'too-large', facts: { characters: greatest + 1, greatest } }],
    });
  });
  test('takes the largest drawer that the schema takes', () => {
    const drawer = Array.from({ length: LIMITS.drawer.greatest }, (_, index) =>
      insertRecord({ id: `one-${index}` }),
    );
    const text = JSON.stringify(jointDocument({ drawer }), undefined, 2);
    expect(text.length).toBeLessThan(GREATEST_DOCUMENT_CHARACTERS);
    expect(openDocumentText(text).kind).toBe('opened');
  });
  test('lets no infinity in by a number too large to write down', () => {
    const text = JSON.stringify(jointDocument()).replace('"gap_mm":0', '"gap_mm":1e999');
    expect(openDocumentText(text)).toMatchObject({
      refusals: [{ path: 'joint.gap_mm', code: 'wrong-kind' }],
    });
  });
  test('takes no prototype from a text', () => {
    const text = JSON.stringify(jointDocument()).replace(
      '"gap_mm":0',
      '"gap_mm":0,"__proto__":{"sunk_mm":3}',
    );
    expect(openDocumentText(text)).toMatchObject({
      refusals: [{ path: 'joint.__proto__', code: 'unknown-key' }],
    });
  });
});
