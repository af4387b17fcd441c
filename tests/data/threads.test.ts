import { describe, expect, test } from 'vitest';
import type { Thread } from '../../src/core/screws/thread.ts';
import { THREADS } from '../../src/data/threads.ts';
import { expectPublished } from '../support/published.ts';
import { theRow } from '../support/the-row.ts';

const threadOf = (id: string): Thread => theRow(THREADS, (thread) => thread.id === id);
const metric = THREADS.filter((thread) => thread.system === 'metric');
const unified = THREADS.filter((thread) => thread.system === 'unified');

function expectWithin(value: number, expected: number, room: number): void {
  expect(Math.abs(value - expected), `${value} against ${expected}`).toBeLessThanOrEqual(room);
}

describe('THREADS, coarse metric', () => {
  test.each([
    ['M2', '0.4', '1.740', '1.509', '1.567', '2.073', '1.789'],
    ['M2.5', '0.45', '2.208', '1.948', '2.013', '3.391', '2.980'],
    ['M3', '0.5', '2.675', '2.387', '2.459', '5.031', '4.473'],
    ['M4', '0.7', '3.545', '3.141', '3.242', '8.779', '7.750'],
    ['M5', '0.8', '4.480', '4.019', '4.134', '14.183', '12.683'],
    ['M6', '1.0', '5.350', '4.773', '4.917', '20.123', '17.894'],
    ['M8', '1.25', '7.188', '6.466', '6.647', '36.609', '32.841'],
  ])('%s has pitch %s and gives the printed d2, d3, D1, As and A3 (iso-724)', (id, ...printed) => {
    const { nominalDiameter: d, pitch: P } = threadOf(id);
    const d2 = d - 0.649519 * P;
    const d3 = d - 1.226869 * P;
    const computed = [
      P,
      d2,
      d3,
      d - 1.082532 * P,
      (Math.PI / 4) * ((d2 + d3) / 2) ** 2,
      (Math.PI / 4) * d3 ** 2,
    ];
    for (const [index, value] of computed.entries()) expectPublished(value, printed[index] ?? '');
  });

  test.each([
    ['M2', '1.886', '1.654', '1.408', '1.830', '1.679'],
    ['M2.5', '2.380', '2.117', '1.840', '2.303', '2.138'],
    ['M3', '2.874', '2.580', '2.272', '2.775', '2.599'],
    ['M4', '3.838', '3.433', '3.002', '3.663', '3.422'],
    ['M5', '4.826', '4.361', '3.868', '4.605', '4.334'],
    ['M6', '5.794', '5.212', '4.596', '5.500', '5.153'],
    ['M8', '7.760', '7.042', '6.272', '7.348', '6.912'],
  ])(
    '%s has the printed limits 6g and 6H (iso-965)',
    (id, major, pitch, minor, internalPitch, internalMinor) => {
      const { limits } = threadOf(id);
      expectPublished(limits.externalMajorMin, major);
      expectPublished(limits.externalPitchMin, pitch);
      expectPublished(limits.externalMinorMin, minor);
      expectPublished(limits.internalPitchMax, internalPitch);
      expectPublished(limits.internalMinorMax, internalMinor);
    },
  );

  test.each([
    ['M2', '0.090'],
    ['M2.5', '0.095'],
    ['M3', '0.100'],
    ['M4', '0.118'],
    ['M5', '0.125'],
    ['M6', '0.150'],
    ['M8', '0.160'],
  ])('%s leaves TD2 = %s mm between D2 max and the basic d2 (iso-965)', (id, printed) => {
    const { nominalDiameter: d, pitch: P, limits } = threadOf(id);
    expectPublished(limits.internalPitchMax - (d - 0.649519 * P), printed);
  });

  test.each(metric)('$id has d3 min = d2 min − 0.616025·P to the last printed digit', ({ pitch, limits }) => {
    expectWithin(limits.externalMinorMin, limits.externalPitchMin - 0.616025 * pitch, 0.0005);
  });

  // ISO 965-1, remembered; a tolerance is rounded to a preferred number, one of which is 6 % above the next.
  test.each(metric)('$id agrees with the remembered formulae of es, Td, Td2 and TD1 (iso-965)', (thread) => {
    const { nominalDiameter: d, pitch: P, limits } = thread;
    const es = (15 + 11 * P) / 1000;
    const rangeMean =
      d <= 2.8 ? Math.sqrt(1.4 * 2.8) : d <= 5.6 ? Math.sqrt(2.8 * 5.6) : Math.sqrt(5.6 * 11.2);
    const majorTolerance = (180 * P ** (2 / 3) - 3.15 / Math.sqrt(P)) / 1000;
    const pitchTolerance = (90 * P ** 0.4 * rangeMean ** 0.1) / 1000;
    const internalMinorTolerance = (P < 1 ? 433 * P - 190 * P ** 1.22 : 230 * P ** 0.7) / 1000;
    expectWithin(d - limits.externalMajorMin, es + majorTolerance, 0.001 + 0.05 * majorTolerance);
    expectWithin(
      d - 0.649519 * P - limits.externalPitchMin,
      es + pitchTolerance,
      0.001 + 0.05 * pitchTolerance,
    );
    expectWithin(
      limits.internalMinorMax - (d - 1.082532 * P),
      internalMinorTolerance,
      0.001 + 0.05 * internalMinorTolerance,
    );
  });

  test.each([
    ['M2', '2.2', '2.4', '2.6'],
    ['M2.5', '2.7', '2.9', '3.1'],
    ['M3', '3.2', '3.4', '3.6'],
    ['M4', '4.3', '4.5', '4.8'],
    ['M5', '5.3', '5.5', '5.8'],
    ['M6', '6.4', '6.6', '7.0'],
    ['M8', '8.4', '9.0', '10.0'],
  ])('%s has clearance holes %s, %s and %s mm (iso-273)', (id, fine, medium, coarse) => {
    const { clearanceHoles } = threadOf(id);
    expectPublished(clearanceHoles.fine, fine);
    expectPublished(clearanceHoles.medium, medium);
    expectPublished(clearanceHoles.coarse, coarse);
  });
});

describe('THREADS, unified coarse', () => {
  test.each([
    ['UNC-4-40', 40, '0.112', '0.0958', '0.0822', '0.0849'],
    ['UNC-6-32', 32, '0.138', '0.1177', '0.1008', '0.1042'],
    ['UNC-8-32', 32, '0.164', '0.1437', '0.1268', '0.1302'],
    ['UNC-10-24', 24, '0.190', '0.1629', '0.1404', '0.1449'],
    ['UNC-1/4-20', 20, '0.250', '0.2175', '0.1905', '0.1959'],
  ])(
    '%s has %i threads per inch and gives the printed D, d2 and minor diameters in inches (asme-b1.1)',
    (id, n, ...printed) => {
      const { nominalDiameter, pitch } = threadOf(id);
      const D = nominalDiameter / 25.4;
      expectWithin(25.4 / pitch, n, 1e-12 * n);
      const computed = [D, D - 0.649519 / n, D - 1.19078 / n, D - 1.082532 / n];
      for (const [index, value] of computed.entries()) expectPublished(value, printed[index] ?? '');
    },
  );

  // 4-40 is printed 0.00604, one unit above its own formula.
  test.each([
    ['UNC-4-40', '0.00603'],
    ['UNC-6-32', '0.00909'],
    ['UNC-8-32', '0.0140'],
    ['UNC-10-24', '0.0175'],
    ['UNC-1/4-20', '0.0318'],
  ])('%s gives At = %s in² by 0.7854·(D − 0.9743/n)² (asme-b1.1)', (id, printed) => {
    const { nominalDiameter, pitch } = threadOf(id);
    expectPublished(0.7854 * ((nominalDiameter - 0.9743 * pitch) / 25.4) ** 2, printed);
  });

  // Formulae of ASME B1.1, inches, remembered; limits are rounded there to 0.0001 in, D1 max from 10-24 on to 0.001.
  test.each(unified)('$id agrees with the remembered formulae of 2A and 2B (asme-b1.1-limits)', (thread) => {
    const D = thread.nominalDiameter / 25.4;
    const P = thread.pitch / 25.4;
    const d2 = D - 0.649519 * P;
    const Td2 = 0.0015 * Math.cbrt(D) + 0.0015 * Math.sqrt(D) + 0.015 * P ** (2 / 3);
    const allowance = 0.3 * Td2;
    const TD1 = D < 0.25 ? 0.05 * P ** (2 / 3) + (0.03 * P) / D - 0.002 : 0.25 * P - 0.4 * P ** 2;
    const { limits } = thread;
    expectWithin(limits.externalMajorMin / 25.4, D - allowance - 0.06 * P ** (2 / 3), 0.0001);
    expectWithin(limits.externalPitchMin / 25.4, d2 - allowance - Td2, 0.0001);
    expectWithin(limits.internalPitchMax / 25.4, d2 + 1.3 * Td2, 0.0001);
    expectWithin(limits.internalMinorMax / 25.4, D - 1.082532 * P + TD1, D < 0.19 ? 0.0002 : 0.0006);
  });

  test.each(unified)(
    '$id has its smallest external minor diameter 3/4·H below d2 min',
    ({ pitch, limits }) => {
      const computed = limits.externalPitchMin - 0.649519 * pitch;
      expectWithin(limits.externalMinorMin / 25.4, computed / 25.4, 0.00005);
    },
  );

  test.each([
    ['UNC-4-40', '3.0', '3.3', '3.7'],
    ['UNC-6-32', '3.9', '4.3', '4.7'],
    ['UNC-8-32', '4.6', '5.0', '5.4'],
    ['UNC-10-24', '5.2', '5.6', '6.0'],
    ['UNC-1/4-20', '6.8', '7.1', '7.5'],
  ])('%s has clearance holes %s, %s and %s mm (asme-b18.2.8)', (id, close, normal, loose) => {
    const { clearanceHoles } = threadOf(id);
    expectPublished(clearanceHoles.fine, close);
    expectPublished(clearanceHoles.medium, normal);
    expectPublished(clearanceHoles.coarse, loose);
  });
});

describe('THREADS, every row', () => {
  test('ascend in diameter within each system', () => {
    for (const rows of [metric, unified]) {
      const diameters = rows.map((thread) => thread.nominalDiameter);
      expect(diameters).toEqual([...new Set(diameters)].sort((a, b) => a - b));
    }
  });
  test.each(THREADS)('$id has limits in their order, inside the basic sizes', (thread) => {
    const { nominalDiameter: d, pitch: P, limits } = thread;
    expect(limits.externalMajorMin).toBeLessThan(d);
    expect(limits.externalPitchMin).toBeLessThan(d - 0.649519 * P);
    expect(limits.externalMinorMin).toBeLessThan(d - 1.19078 * P);
    expect(limits.internalPitchMax).toBeGreaterThan(d - 0.649519 * P);
    expect(limits.internalMinorMax).toBeGreaterThan(d - 1.082532 * P);
    // At the worst limits the flanks still overlap, on the screw and in the insert: both stripping heights are positive.
    expect(P / 2 + (limits.externalPitchMin - limits.internalMinorMax) / Math.sqrt(3)).toBeGreaterThan(
      0.2 * P,
    );
    expect(P / 2 + (limits.externalMajorMin - limits.internalPitchMax) / Math.sqrt(3)).toBeGreaterThan(
      0.5 * P,
    );
  });
  test.each(THREADS)('$id has clearance holes above its diameter, finer below coarser', (thread) => {
    const { fine, medium, coarse } = thread.clearanceHoles;
    expect(fine).toBeGreaterThan(thread.nominalDiameter);
    expect(medium).toBeGreaterThan(fine);
    expect(coarse).toBeGreaterThan(medium);
  });
});
