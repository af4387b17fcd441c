import { describe, expect, test } from 'vitest';
import { BREAKING_TORQUES } from '../../src/data/breaking-torques.ts';
import { PROPERTY_CLASSES } from '../../src/data/property-classes.ts';
import { THREADS } from '../../src/data/threads.ts';
import { expectPublished } from '../support/published.ts';
import { theRow } from '../support/the-row.ts';

const SIZES = ['M2', 'M2.5', 'M3', 'M4', 'M5', 'M6', 'M8'];

function torqueOf(thread: string, propertyClass: string): number {
  return theRow(BREAKING_TORQUES, (row) => row.thread === thread && row.propertyClass === propertyClass)
    .torque;
}

/** Rm,min · (π/16)·d3,min³, N·m. */
function strengthTimesSection(thread: string, propertyClass: string): number {
  const d3 = theRow(THREADS, ({ id }) => id === thread).limits.externalMinorMin;
  const Rm = theRow(PROPERTY_CLASSES, ({ id }) => id === propertyClass).tensileStrengthMin;
  return (Rm * (Math.PI / 16) * d3 ** 3) / 1000;
}

describe('BREAKING_TORQUES', () => {
  test.each([
    ['8.8', ['0.37', '0.82', '1.5', '3.6', '7.6', '13', '33']],
    ['10.9', ['0.45', '1.0', '1.9', '4.4', '9.3', '16', '40']],
    ['12.9', ['0.50', '1.1', '2.1', '4.9', '10', '17', '44']],
    ['A2-50', ['0.3', '0.6', '1.1', '2.7', '5.5', '9.3', '23']],
    ['A2-70', ['0.4', '0.9', '1.6', '3.8', '7.8', '13', '32']],
    ['A2-80', ['0.48', '0.96', '1.8', '4.3', '8.8', '15', '37']],
  ])('holds the printed N·m of %s, M2 to M8 (iso-898-7, iso-3506-1)', (propertyClass, printed) => {
    for (const [index, thread] of SIZES.entries()) {
      // As the row was typed from two digits, it must be that number itself.
      expect(torqueOf(thread, propertyClass)).toBe(Math.round(Number(printed[index]) * 1000));
    }
  });

  test.each([
    ['8.8', 0.84, ['0.37', '0.82', '1.5', '3.6', '7.6', '13', '33']],
    ['10.9', 0.79, ['0.45', '1.0', '1.9', '4.4', '9.3', '16', '40']],
    ['12.9', 0.75, ['0.50', '1.1', '2.1', '4.9', '10', '17', '44']],
  ])(
    'of %s equals X·Rm·(π/16)·d3³ with X %f after rounding to two digits (iso-898-7)',
    (propertyClass, X, printed) => {
      for (const [index, thread] of SIZES.entries()) {
        expectPublished(X * strengthTimesSection(thread, propertyClass), printed[index] ?? '');
      }
    },
  );

  // Printed to one or two digits: 0.3 alone may be 17 % off.
  test.each(['A2-50', 'A2-70', 'A2-80'])(
    'of %s lie near Rm·(π/16)·d3³, M2.5 to M8 (iso-3506-1)',
    (propertyClass) => {
      for (const thread of SIZES.slice(1)) {
        const ratio = torqueOf(thread, propertyClass) / 1000 / strengthTimesSection(thread, propertyClass);
        expect(ratio).toBeGreaterThan(0.92);
        expect(ratio).toBeLessThan(1.06);
      }
    },
  );

  test('has no row for a class below 8.8 of carbon steel, which no standard covers', () => {
    const covered = new Set(BREAKING_TORQUES.map((row) => row.propertyClass));
    expect([...covered]).toEqual(['8.8', '10.9', '12.9', 'A2-50', 'A2-70', 'A2-80']);
  });

  test('ascends with the thread in every class, without gaps', () => {
    for (const propertyClass of new Set(BREAKING_TORQUES.map((row) => row.propertyClass))) {
      const rows = BREAKING_TORQUES.filter((row) => row.propertyClass === propertyClass);
      expect(rows.map((row) => row.thread)).toEqual(SIZES);
      const torques = rows.map((row) => row.torque);
      expect(torques).toEqual([...new Set(torques)].sort((a, b) => a - b));
    }
  });

  test('calls the table of ISO 898-7 remembered, that of ISO 3506-1 read', () => {
    for (const row of BREAKING_TORQUES) {
      expect(row.howKnown).toBe(row.source === 'iso-898-7' ? 'from-memory' : 'read');
    }
  });
});
