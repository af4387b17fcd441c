import { strToU8 } from 'fflate';
import { describe, expect, test } from 'vitest';
import { readNumber } from '../../src/solids/read-number.ts';
import fc from '../support/fast-check.ts';

const read = (text: string) => readNumber(strToU8(`<${text}>`), 1, 1 + strToU8(text).length);

describe('readNumber', () => {
  test('reads what the language reads, to the last bit', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.nat(12), (value, places) => {
        for (const text of [String(value), value.toExponential(places), (value % 1e6).toFixed(places)])
          expect(read(text)).toBe(Number(text));
      }),
    );
  });
  test.each(['7', '-7.25', '+0.5', '.5', '5.', '-0', '1e-7', '1E+05', '123456789012345678', ' 4.5 '])(
    'reads "%s"',
    (text) => {
      expect(read(text)).toBe(Number(text));
    },
  );
  test.each(['', '-', '.', '1.2.3', '1,5', 'nan', 'inf', '0x10', '1e', '--1', '1 2'])(
    'finds no number in "%s"',
    (text) => {
      expect(read(text)).toBeNaN();
    },
  );
});
