import { describe, expect, test } from 'vitest';
import { convert, fromCore, toCore } from '../../../src/core/units/convert.ts';
import { CORE_UNIT, UNITS, type UnitSymbol } from '../../../src/core/units/units.ts';
import fc from '../../support/fast-check.ts';
import { expectPublished, expectRelative } from '../../support/published.ts';

/** Products and quotients of exact factors: a few units in the last place of a double. */
const IDENTITY = 1e-15;

const symbols = Object.keys(UNITS) as UnitSymbol[];

describe('toCore, by definition', () => {
  test.each<[number, UnitSymbol, number]>([
    [1, 'in', 25.4],
    [1, 'thou', 0.0254],
    [3, 'cm', 30],
    [0.7, 'm', 700],
    [300, 'µm', 0.3],
    [1, 'kgf', 9.80665],
    [700, 'gf', 6.864655],
    [1, 'lbf', 4.4482216152605],
    [2, 'kN', 2000],
    [0.6, 'N·m', 600],
    [12, 'cN·m', 120],
    [1, 'kgf·cm', 98.0665],
    [1, 'kgf·m', 9806.65],
    [1, 'lbf·in', 112.98482902761667],
    [1, 'lbf·ft', 1355.8179483314004],
    [16, 'ozf·in', 112.98482902761667],
    [16, 'ozf', 4.4482216152605],
    [113, '°F', 45],
    [-40, '°F', -40],
    [0, 'K', -273.15],
    [3, 'GPa', 3000],
    [250, 'kPa', 0.25],
    [50, 'bar', 5],
    [90, 's', 0.025],
    [45, 'min', 0.75],
    [5, 'day', 120],
    [2, 'week', 336],
    [1, 'year', 8760],
    [6, 'month', 4380],
    [20, '%', 0.2],
    [180, '°', Math.PI],
  ])('%f %s is %f in the core unit', (value, unit, core) => {
    expectRelative(toCore(value, unit), core, IDENTITY);
  });
});

describe('toCore, printed values (NIST SP 811, appendix B)', () => {
  test.each<[number, UnitSymbol, number, string]>([
    [1, 'lbf', 1, '4.448222e0'],
    [1, 'kgf', 1, '9.80665e0'],
    [1, 'ozf', 1, '2.780139e-1'],
    [1, 'lbf·in', 1e-3, '1.129848e-1'],
    [1, 'lbf·ft', 1e-3, '1.355818e0'],
    [1, 'ozf·in', 1e-3, '7.061552e-3'],
    [1, 'kgf·m', 1e-3, '9.80665e0'],
    [1, 'psi', 1e6, '6.894757e3'],
    [1, 'ksi', 1e6, '6.894757e6'],
    [1, 'year', 3600, '3.1536e7'],
  ])('%f %s times %f is %s in the base units of the SI', (value, unit, toBase, printed) => {
    expectPublished(toCore(value, unit) * toBase, printed);
  });
});

describe('fromCore', () => {
  test.each(symbols)('undoes toCore for %s', (unit) => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        const room = 1e-12 * (Math.abs(value) + Math.abs(UNITS[unit].zero) + Number.EPSILON);
        expect(Math.abs(fromCore(toCore(value, unit), unit) - value)).toBeLessThanOrEqual(room);
      }),
      { numRuns: 50, seed: 254 },
    );
  });

  test('gives the freezing and boiling points of water in °F', () => {
    expect(fromCore(0, '°F')).toBe(32);
    expect(fromCore(100, '°F')).toBe(212);
  });
});

describe('convert', () => {
  test('takes 8 lbf·in to 0.9038786322 N·m', () => {
    expectPublished(convert(8, { from: 'lbf·in', to: 'N·m' }), '0.9038786322');
  });

  test('is not the same the other way round', () => {
    expectRelative(convert(3, { from: 'in', to: 'mm' }), 76.2, IDENTITY);
    expectRelative(convert(76.2, { from: 'mm', to: 'in' }), 3, IDENTITY);
  });

  test('leaves a value in its own unit untouched to the last digit', () => {
    expect(convert(0.1 + 0.2, { from: '°F', to: '°F' })).toBe(0.1 + 0.2);
  });

  test('throws for two kinds, a mistake of the program', () => {
    expect(() => convert(3, { from: 'N', to: 'N·m' })).toThrow('no conversion from N to N·m');
  });
});

describe('UNITS', () => {
  test('has the core unit of each kind with factor 1 and no offset', () => {
    for (const [kind, symbol] of Object.entries(CORE_UNIT)) {
      expect(UNITS[symbol]).toEqual({ kind, times: 1, over: 1, zero: 0 });
    }
  });

  test('writes every torque as a force, a dot and an arm', () => {
    const torques = symbols.filter((symbol) => UNITS[symbol].kind === 'torque');
    expect(torques).toHaveLength(8);
    for (const symbol of torques) expect(symbol).toMatch(/^(c?N|kgf|lbf|ozf)·(mm|cm|m|in|ft)$/);
  });

  test('never names a force as a mass', () => {
    for (const symbol of ['kg', 'lb', 'oz', 'g']) expect(symbols).not.toContain(symbol);
  });
});
