import { describe, expect, test } from 'vitest';
import { evaluateExpression } from '../../../src/app/quantity/expression-engine.ts';
import fc from '../../support/fast-check.ts';

/** For hundreds of texts on a busy computer, ms. */
const PATIENCE = 60_000;

describe('evaluateExpression', () => {
  test('works out numbers and quantities', () => {
    expect(evaluateExpression({ source: '(2 + 7) / 4', units: [] })).toEqual({ kind: 'number', value: 2.25 });
    const product = evaluateExpression({ source: '18 unit_0 * 3 unit_1', units: ['N', 'mm'] });
    expect(product).toEqual({ kind: 'measure', of: 'torque', value: 54 });
    const pressure = evaluateExpression({ source: '18 unit_0 / (3 unit_1)^2', units: ['N', 'mm'] });
    expect(pressure).toMatchObject({ kind: 'measure', of: 'pressure' });
  });

  test.each([
    'x = 3',
    'f(x) = x',
    'parse("1")',
    'unit("3 mm")',
    'create(1)',
    'add(1, 2)',
    'sqrt(1, 2)',
    'sqrt',
    'sqrt = 3',
    '[1, 2]',
    '{a: 1}',
    '"text"',
    '1:3',
    '1; 2',
    'unit_0.value',
    'unit_0["constructor"]',
    '3!',
    '3 % 2',
    '3 == 3',
    '3 > 2 ? 1 : 2',
    'true',
    'mm',
    '3 mm',
    'pi',
    'i',
    'Infinity',
    '3 to unit_0 + 2',
    'not 3',
    "[1, 2]'",
    'constructor',
    '__proto__',
  ])('refuses %s, whatever the reader before it let through', (source) => {
    const found = evaluateExpression({ source, units: ['mm'] });
    expect(found.kind).toBe('refused');
    expect('code' in found ? found.code : undefined).toMatch(/^not-(allowed|understood)$/);
  });

  test('admits a tree of 60 nodes and refuses a larger one', () => {
    const sum = (terms: number) => Array.from({ length: terms }, () => '1').join('+');
    expect(evaluateExpression({ source: sum(30), units: [] })).toEqual({ kind: 'number', value: 30 });
    expect(evaluateExpression({ source: sum(31), units: [] })).toMatchObject({ code: 'not-allowed' });
  });

  test(
    'takes no function but sqrt, and no name but those of the units',
    () => {
      const names = fc.stringMatching(/^[a-z]{1,12}$/).filter((name) => name !== 'sqrt');
      fc.assert(
        fc.property(names, (name) => {
          for (const source of [`${name}(2)`, `${name} + 1`, `${name} = 1`]) {
            expect(evaluateExpression({ source, units: [] }).kind).toBe('refused');
          }
        }),
        { seed: 47 },
      );
    },
    PATIENCE,
  );

  test(
    'never throws on random text',
    () => {
      fc.assert(
        fc.property(fc.string({ maxLength: 40 }), (source) => {
          expect(['number', 'measure', 'refused']).toContain(
            evaluateExpression({ source, units: ['mm'] }).kind,
          );
        }),
        { numRuns: 500, seed: 48 },
      );
    },
    PATIENCE,
  );
});
