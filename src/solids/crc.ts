/** The generator polynomial of CRC-32, its bits in reverse as it is used. */
const POLYNOMIAL = 0xedb88320;
const BYTE = 256;

/** What each value of each of four bytes adds to the remainder: the table of the last byte comes first. */
const REMAINDERS = remainders();

function remainders(): Int32Array {
  const table = new Int32Array(4 * BYTE);
  for (let byte = 0; byte < BYTE; byte += 1) {
    let rest = byte;
    for (let bit = 0; bit < 8; bit += 1) rest = (rest >>> 1) ^ (rest & 1 ? POLYNOMIAL : 0);
    table[byte] = rest;
  }
  // One byte farther from the end: eight zero bits more.
  for (let at = BYTE; at < table.length; at += 1) {
    const nearer = table[at - BYTE] ?? 0;
    table[at] = (nearer >>> 8) ^ (table[nearer & 0xff] ?? 0);
  }
  return table;
}

/**
 * The CRC-32 of bytes that come in pieces, four bytes at a time.
 *
 * @param bytes - the next piece
 * @param before - that of all pieces before it
 * @returns that of all pieces, 0 to 2³² − 1
 */
export function crc32(bytes: Uint8Array, before = 0): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const inFours = bytes.length - (bytes.length % 4);
  let rest = ~before;
  let at = 0;
  for (; at < inFours; at += 4) {
    rest ^= view.getInt32(at, true);
    rest =
      (REMAINDERS[3 * BYTE + (rest & 0xff)] ?? 0) ^
      (REMAINDERS[2 * BYTE + ((rest >>> 8) & 0xff)] ?? 0) ^
      (REMAINDERS[BYTE + ((rest >>> 16) & 0xff)] ?? 0) ^
      (REMAINDERS[rest >>> 24] ?? 0);
  }
  for (; at < bytes.length; at += 1)
    rest = (rest >>> 8) ^ (REMAINDERS[(rest ^ (bytes[at] ?? 0)) & 0xff] ?? 0);
  return ~rest >>> 0;
}
