import { describe, expect, test } from 'vitest';
import type { ScrewHead } from '../../src/core/screws/screw.ts';
import { HEADS } from '../../src/data/heads.ts';
import { THREADS } from '../../src/data/threads.ts';
import { expectPublished, expectRelative } from '../support/published.ts';
import { theRow } from '../support/the-row.ts';

const headOf = (standard: string, thread: string): ScrewHead =>
  theRow(HEADS, (head) => head.standard === standard && head.thread === thread);
const threadOf = (head: ScrewHead) => theRow(THREADS, ({ id }) => id === head.thread);

const PRINTED: readonly (readonly [standard: string, thread: string, ...sizes: string[]])[] = [
  ['ISO 4762', 'M2', '3.8', '2', '3.48', '1.5', '1.0'],
  ['ISO 4762', 'M2.5', '4.5', '2.5', '4.18', '2', '1.1'],
  ['ISO 4762', 'M3', '5.5', '3', '5.07', '2.5', '1.3'],
  ['ISO 4762', 'M4', '7', '4', '6.53', '3', '2'],
  ['ISO 4762', 'M5', '8.5', '5', '8.03', '4', '2.5'],
  ['ISO 4762', 'M6', '10', '6', '9.38', '5', '3'],
  ['ISO 4762', 'M8', '13', '8', '12.33', '6', '4'],
  ['ISO 7380-1', 'M3', '5.7', '1.65', '5.4', '2', '1.04'],
  ['ISO 7380-1', 'M4', '7.6', '2.2', '7.24', '2.5', '1.3'],
  ['ISO 7380-1', 'M5', '9.5', '2.75', '9.14', '3', '1.56'],
  ['ISO 7380-1', 'M6', '10.5', '3.3', '10.07', '4', '2.08'],
  ['ISO 7380-1', 'M8', '14', '4.4', '13.57', '5', '2.6'],
  ['ISO 10642', 'M3', '6.72', '1.86', '5.54', '2', '1.1'],
  ['ISO 10642', 'M4', '8.96', '2.48', '7.53', '2.5', '1.5'],
  ['ISO 10642', 'M5', '11.20', '3.10', '9.43', '3', '1.9'],
  ['ISO 10642', 'M6', '13.44', '3.72', '11.34', '4', '2.2'],
  ['ISO 10642', 'M8', '17.92', '4.96', '15.24', '5', '3.0'],
];

/** Inches, remembered; across flats in fractions. */
const REMEMBERED = [
  ['ASME B18.3 cap', 'UNC-4-40', '0.183', '0.112', '0.178', 3 / 32, '0.051'],
  ['ASME B18.3 cap', 'UNC-6-32', '0.226', '0.138', '0.221', 7 / 64, '0.064'],
  ['ASME B18.3 cap', 'UNC-8-32', '0.270', '0.164', '0.265', 9 / 64, '0.077'],
  ['ASME B18.3 cap', 'UNC-10-24', '0.312', '0.190', '0.306', 5 / 32, '0.090'],
  ['ASME B18.3 cap', 'UNC-1/4-20', '0.375', '0.250', '0.367', 3 / 16, '0.120'],
  ['ASME B18.3 button', 'UNC-4-40', '0.213', '0.059', '0.203', 1 / 16, '0.035'],
  ['ASME B18.3 button', 'UNC-6-32', '0.262', '0.073', '0.250', 5 / 64, '0.044'],
  ['ASME B18.3 button', 'UNC-8-32', '0.312', '0.087', '0.298', 3 / 32, '0.052'],
  ['ASME B18.3 button', 'UNC-10-24', '0.361', '0.101', '0.347', 1 / 8, '0.070'],
  ['ASME B18.3 button', 'UNC-1/4-20', '0.437', '0.132', '0.419', 5 / 32, '0.087'],
  ['ASME B18.3 flat', 'UNC-4-40', '0.255', '0.083', '0.218', 1 / 16, '0.055'],
  ['ASME B18.3 flat', 'UNC-6-32', '0.307', '0.097', '0.263', 5 / 64, '0.066'],
  ['ASME B18.3 flat', 'UNC-8-32', '0.359', '0.112', '0.311', 3 / 32, '0.076'],
  ['ASME B18.3 flat', 'UNC-10-24', '0.411', '0.127', '0.359', 1 / 8, '0.087'],
  ['ASME B18.3 flat', 'UNC-1/4-20', '0.531', '0.161', '0.480', 5 / 32, '0.111'],
] as const;

describe('HEADS', () => {
  test.each(REMEMBERED)(
    '%s %s holds the remembered dk %s, k %s, bearing %s, s %f and t %s in (asme-b18.3)',
    (standard, thread, diameter, height, bearing, acrossFlats, depth) => {
      const head = headOf(standard, thread);
      expectRelative(head.diameter, Number(diameter) * 25.4);
      expectRelative(head.height, Number(height) * 25.4);
      expectRelative(head.bearingDiameter, Number(bearing) * 25.4);
      expectRelative(head.socketAcrossFlats, acrossFlats * 25.4);
      expectRelative(head.socketDepth, Number(depth) * 25.4);
    },
  );

  test.each(PRINTED)(
    '%s %s holds dk %s, k %s, bearing %s, s %s and t %s mm (iso-4762, iso-7380-1, iso-10642)',
    (standard, thread, ...printed) => {
      const head = headOf(standard, thread);
      // Typed from the print, so the same number and not only its rounding.
      const sizes = [
        head.diameter,
        head.height,
        head.bearingDiameter,
        head.socketAcrossFlats,
        head.socketDepth,
      ];
      expect(sizes).toEqual(printed.map(Number));
    },
  );

  test('has every metric row checked above, each marked as read', () => {
    const metric = HEADS.filter((head) => head.howKnown === 'read');
    expect(metric.map((head) => [head.standard, head.thread])).toEqual(
      PRINTED.map((row) => [row[0], row[1]]),
    );
  });

  test.each([
    ['M2', '5.0'],
    ['M2.5', '7.1'],
    ['M3', '11.1'],
    ['M4', '17.6'],
    ['M5', '26.9'],
    ['M6', '34.9'],
    ['M8', '55.8'],
  ])('ISO 4762 %s bears on %s mm² round the medium hole of ISO 273 (hand calculation)', (thread, printed) => {
    const head = headOf('ISO 4762', thread);
    const hole = threadOf(head).clearanceHoles.medium;
    expectPublished((Math.PI / 4) * (head.bearingDiameter ** 2 - hole ** 2), printed);
  });

  test.each(HEADS.filter((head) => head.shape === 'cylindrical'))(
    '$standard $thread is as high as its thread is thick',
    (head) => {
      expect(head.height).toBe(threadOf(head).nominalDiameter);
    },
  );

  // Metric to a hundredth of a millimetre, inch to a thousandth of an inch: half a unit, and one for cut-off digits.
  test.each(HEADS.filter((head) => head.shape === 'countersunk'))(
    '$standard $thread has the height of its cone, 90° metric and 82° inch',
    (head) => {
      const { system, nominalDiameter } = threadOf(head);
      const halfAngle = ((system === 'metric' ? 90 : 82) / 2) * (Math.PI / 180);
      const cone = (head.diameter - nominalDiameter) / 2 / Math.tan(halfAngle);
      expect(Math.abs(head.height - cone)).toBeLessThanOrEqual(system === 'metric' ? 0.005 : 0.001 * 25.4);
    },
  );

  test.each(HEADS)('$standard $thread covers its widest clearance hole', (head) => {
    expect(head.bearingDiameter).toBeGreaterThan(threadOf(head).clearanceHoles.coarse);
    expect(head.bearingDiameter).toBeLessThan(head.diameter);
  });

  test.each(HEADS)('$standard $thread has a socket inside its head', (head) => {
    expect(head.socketDepth).toBeLessThan(head.height);
    expect(head.socketAcrossFlats).toBeLessThan(threadOf(head).nominalDiameter);
  });

  test.each(HEADS.filter((head) => head.standard.startsWith('ASME')))(
    '$standard $thread takes a key in whole 64ths of an inch and is marked as remembered',
    (head) => {
      const sixtyFourths = (head.socketAcrossFlats / 25.4) * 64;
      expect(Math.abs(sixtyFourths - Math.round(sixtyFourths))).toBeLessThan(1e-12);
      expect(head.howKnown).toBe('from-memory');
    },
  );

  test('ascends in every size within each standard', () => {
    for (const standard of new Set(HEADS.map((head) => head.standard))) {
      const rows = HEADS.filter((head) => head.standard === standard);
      for (const size of [
        'diameter',
        'height',
        'bearingDiameter',
        'socketAcrossFlats',
        'socketDepth',
      ] as const) {
        const sizes = rows.map((head) => head[size]);
        expect(sizes, `${standard}: ${size}`).toEqual([...new Set(sizes)].sort((a, b) => a - b));
      }
    }
  });
});
