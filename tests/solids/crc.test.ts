import { crc32 as independent } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { crc32 } from '../../src/solids/crc.ts';
import fc from '../support/fast-check.ts';

describe('crc32', () => {
  test('of the digits 1 to 9 is cbf43926 (check value of this CRC, from memory)', () => {
    expect(crc32(new TextEncoder().encode('123456789')).toString(16)).toBe('cbf43926');
  });
  test('is that of zlib for whatever bytes, in whatever pieces', () => {
    fc.assert(
      fc.property(fc.array(fc.uint8Array({ maxLength: 33 }), { maxLength: 5 }), (pieces) => {
        const found = pieces.reduce((before, piece) => crc32(piece, before), 0);
        expect(found).toBe(independent(Buffer.concat(pieces)));
      }),
    );
  });
  test('of nothing is 0', () => {
    expect(crc32(new Uint8Array())).toBe(0);
  });
});
