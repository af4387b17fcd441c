import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const root = join(import.meta.dirname, '..', '..');
const runner = join(root, '.ci', 'run-typescript.mjs');
const entry = join(root, 'src', 'headless', 'assess.ts');
const example = join(root, 'docs', 'example-joint.json');

const assess = (args: readonly string[], input?: string) =>
  spawnSync(process.execPath, [runner, entry, ...args], { encoding: 'utf8', input, cwd: root });

/** What the test reads of a report. */
interface Report {
  readonly torque: { readonly least_Nm: number; readonly dial_Nm: number; readonly most_Nm: number };
  readonly limits: readonly { readonly governs: boolean }[];
  readonly ranking: readonly { readonly insert: string }[];
  readonly hold: {
    readonly torque_Nm: number;
    readonly worst: { readonly state: string; readonly by: string; readonly margin: number };
    readonly states: readonly {
      readonly state: string;
      readonly by: string;
      readonly margin: number;
      readonly margins: readonly { readonly margin: number | null; readonly governs: boolean }[];
    }[];
    readonly sensitivities: readonly { readonly gain: number }[];
    readonly remedies: readonly { readonly sentence: string; readonly margin: number }[];
  };
}
const reported = (text: string): Report => JSON.parse(text) as Report;

const changed = (change: (document: Record<string, unknown>) => void): string => {
  const document = JSON.parse(readFileSync(example, 'utf8')) as Record<string, unknown>;
  change(document);
  return JSON.stringify(document);
};

const loadsOf = (document: Record<string, unknown>): object =>
  (document['joint'] as { readonly loads: object }).loads;

describe('npm run assess', () => {
  test('prints the assessment of the example as JSON, units in the keys', () => {
    const run = assess([example]);
    expect(run.stderr).toBe('');
    expect(run.status).toBe(0);
    const report = reported(run.stdout);
    expect(report).toMatchObject({
      format: 'knurlwright-assessment',
      kind: 'answered',
      insert: 'wide',
      rejection: null,
      hole: { drawnDiameter_mm: 4.55 },
      seat: { kind: 'on-insert' },
      screw: { kind: 'chosen', length_mm: 8 },
      torque: { kind: 'window' },
    });
    expect(report.torque.least_Nm).toBeLessThanOrEqual(report.torque.dial_Nm);
    expect(report.torque.dial_Nm).toBeLessThanOrEqual(report.torque.most_Nm);
    expect(report.limits.filter((limit) => limit.governs)).toHaveLength(1);
    expect(report.ranking.map((row) => row.insert)).toContain('wide');
    expect(run.stdout).not.toMatch(/null_|NaN|Infinity|undefined/);
  });
  test('says whether it holds through its life, and what moves that', () => {
    const report = reported(assess([example]).stdout);
    const { hold } = report;
    expect(hold).toMatchObject({ verdict: 'holds', dialled: true, remedies: [] });
    expect(hold.torque_Nm).toBe(report.torque.dial_Nm);
    expect(hold.states.map(({ state }) => state)).toEqual(['assembly', 'in-service', 'after']);
    for (const { margin, margins } of hold.states) {
      expect(margin).toBe(Math.min(...margins.flatMap((one) => one.margin ?? [])));
      expect(margins.filter(({ governs }) => governs).map((one) => one.margin)).toEqual([margin]);
    }
    expect(hold.worst.margin).toBe(Math.min(...hold.states.map(({ margin }) => margin)));
    const gains = hold.sensitivities.map(({ gain }) => gain);
    expect(gains.length).toBeGreaterThan(1);
    expect(gains).toEqual(gains.toSorted((one, other) => other - one));
  });
  test('of a joint without a setting says so, and what lets it hold', () => {
    const run = assess(
      ['-'],
      changed((document) =>
        Object.assign(document['joint'] as object, {
          gap_mm: 1.4,
          loads: { ...loadsOf(document), pull_N: 110 },
        }),
      ),
    );
    const { hold } = reported(run.stdout);
    expect(hold).toMatchObject({ verdict: 'fails', dialled: false });
    expect(hold.remedies.length).toBeGreaterThan(0);
    for (const remedy of hold.remedies) {
      expect(remedy.margin).toBeGreaterThanOrEqual(1 - 1e-6);
      expect(remedy.sentence).toMatch(/: holds .*, dialled at .*\./);
    }
  });
  test('reads standard input for "-"', () => {
    const run = assess(
      ['-'],
      changed((document) => Object.assign(document, { name: 'From a pipe' })),
    );
    expect(JSON.parse(run.stdout)).toMatchObject({ name: 'From a pipe' });
  });
  test('stops with reason and exit code 0: a stop is an answer', () => {
    const run = assess(
      ['-'],
      changed((document) => Object.assign(document['joint'] as object, { use: 'lifting' })),
    );
    expect(run.status).toBe(0);
    expect(JSON.parse(run.stdout)).toMatchObject({ kind: 'stopped', stop: { code: 'use-endangers-people' } });
  });
});

describe('npm run assess refuses with exit code 1 and names the field', () => {
  test.each([
    ['a wrong kind', { gap_mm: '1 mm' }, 'joint.gap_mm: '],
    ['a value beyond its range', { sunk_mm: 1e9 }, 'joint.sunk_mm: '],
    ['an unknown key', { gap_inch: 0.1 }, 'joint.gap_inch: '],
    ['a choice that does not exist', { setting: 'glued' }, 'joint.setting: '],
  ])('%s', (_title, change, begin) => {
    const run = assess(
      ['-'],
      changed((document) => Object.assign(document['joint'] as object, change)),
    );
    expect(run.status).toBe(1);
    expect(run.stdout).toBe('');
    expect(run.stderr.startsWith(begin)).toBe(true);
  });
  test('swapped pilot and knurl, at the insert', () => {
    const run = assess(
      ['-'],
      changed((document) => {
        const [first] = document['drawer'] as Record<string, unknown>[];
        Object.assign(first ?? {}, { knurlDiameter_mm: [4.25], pilotDiameter_mm: [5.0] });
      }),
    );
    expect(run.status).toBe(1);
    expect(run.stderr).toContain('drawer.0.pilotDiameter_mm: ');
  });
  test('damaged JSON, a missing file, and no file at all', () => {
    expect(assess(['-'], '{"format":').status).toBe(1);
    expect(assess([join(root, 'no-such-file.json')]).stderr).toContain('cannot be read');
    expect(assess([]).stderr).toContain('Usage');
  });
});
