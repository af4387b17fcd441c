import { describe, expect, test } from 'vitest';
import { titleOfSource } from '../fixtures/published/sources.ts';
import { readPrinted } from '../support/printed.ts';
import { type Check, deviationOf, isWithin, printedValue, toleranceOf } from './check.ts';
import { ALL_CHECKS, SUBJECTS } from './subjects.ts';

const published = (check: Check) => check.how !== 'recomputed';
const titled = (checks: readonly Check[]) =>
  checks.map(
    (check) => [check.id, titleOfSource(check.source), `${check.printed} ${check.unit}`, check] as const,
  );

describe.each(SUBJECTS.map(({ title, checks }) => [title, checks] as const))('%s', (_title, checks) => {
  test.each(titled(checks))('%s (%s) is %s', (_id, _source, _printed, check) => {
    const ours = check.computed();
    expect(
      isWithin(check),
      `${ours} against printed ${check.printed} ± ${toleranceOf(check)} ${check.unit}`,
    ).toBe(true);
  });
});

describe('the checks', () => {
  test('have each an id of its own', () => {
    const ids = ALL_CHECKS.map(({ id, source }) => `${id} ${source}`);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });
  test('hold at least 200 published values that the core works out', () => {
    const computed = ALL_CHECKS.filter((check) => published(check) && check.kind === 'computed');
    expect(computed.length).toBeGreaterThanOrEqual(200);
  });
  test('take no tolerance of their own that half a printed digit would do for', () => {
    const own = ALL_CHECKS.flatMap((check) =>
      check.tolerance === undefined ? [] : [{ check, why: check.tolerance.why }],
    );
    const needed = own.filter(
      ({ check }) => Math.abs(deviationOf(check)) > readPrinted(check.printed).halfUnit,
    );
    expect(new Set(needed.map(({ why }) => why))).toEqual(new Set(own.map(({ why }) => why)));
  });
  test('take no tolerance of their own above 3 %', () => {
    const wide = ALL_CHECKS.filter((check) => check.tolerance !== undefined)
      .filter((check) => toleranceOf(check) > 0.03 * Math.abs(printedValue(check)))
      .map(({ id }) => id);
    expect(wide).toEqual([]);
  });
  test('fail when the computed value leaves the tolerance on either side', () => {
    for (const check of ALL_CHECKS) {
      const room = toleranceOf(check);
      for (const side of [-1, 1]) {
        const off = { ...check, computed: () => printedValue(check) + side * 1.01 * room };
        expect(isWithin(off), check.id).toBe(false);
      }
    }
  });
  test('fail for a value that is no number', () => {
    for (const check of ALL_CHECKS) expect(isWithin({ ...check, computed: () => Number.NaN })).toBe(false);
  });
});
