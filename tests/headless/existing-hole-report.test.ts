import { describe, expect, test } from 'vitest';
import { recommend } from '../../src/core/recommend/recommend.ts';
import { existingHoleReportOf } from '../../src/headless/existing-hole-report.ts';
import { type Changes, insertRecord, jointDocument, resolved } from '../support/joints.ts';

const drawer = [
  insertRecord(),
  insertRecord({ id: 'wider', knurlDiameter_mm: [5.43], pilotDiameter_mm: [4.71] }),
];

function reportFor(id: string, changes: Changes = {}) {
  const { joint, drawer: inserts } = resolved(jointDocument({ drawer, ...changes }));
  const recommendation = recommend(joint, inserts);
  if (recommendation.kind === 'stopped') throw new Error('the joint is stopped');
  const all = [...recommendation.ranked, ...recommendation.rejected];
  const assessment = all.flatMap((one) => one.assessment ?? []).find(({ insertId }) => insertId === id);
  if (!assessment) throw new Error('the insert cannot be computed');
  return existingHoleReportOf({ joint, assessment, drawer: inserts, recommendation });
}

const measured = (diameter_mm: number): Changes => ({
  holes: { existing: { diameter_mm, known: 'as-measured', depth_mm: 7.2 } },
});

describe('existingHoleReportOf', () => {
  test('is nothing where the hole is designed', () => {
    expect(reportFor('usual')).toBeNull();
  });
  test('gives verdict, bore and depth with their units, and ways out with what they hold', () => {
    const report = reportFor('usual', measured(4.78));
    expect(report).toMatchObject({
      verdict: 'loose',
      known: 'as-measured',
      bore_mm: 4.78,
      depth_mm: 7.2,
      well_mm: 1.9,
      goesThrough: false,
      standing: 'measured',
    });
    expect(report?.rescues.map(({ code, possible }) => [code, possible])).toEqual([
      ['another-insert', true],
      ['nut-behind', true],
      ['reprint', true],
      ['self-tapping-insert', true],
      ['open-up', false],
    ]);
    expect(report?.rescues[0]).toMatchObject({ insert: 'wider', isEnough: true });
    expect(report?.rescues[4]).toMatchObject({ why: 'not-too-small' });
  });
  test('has nothing to rescue where the hole serves', () => {
    expect(reportFor('wider', measured(4.78))).toMatchObject({ verdict: 'fits', rescues: [] });
  });
});
