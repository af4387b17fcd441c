import { describe, expect, test } from 'vitest';
import { printerReportOf } from '../../src/headless/printer-report.ts';
import type { HoleReadingRecord, PrinterRecord } from '../../src/storage/document.ts';
import { withEvidence } from '../../src/storage/with-evidence.ts';
import { jointDocument, resolved } from '../support/joints.ts';
import { printerRecord } from '../support/printers.ts';

function reportWith(holes: readonly HoleReadingRecord[], printer: Partial<PrinterRecord> = {}) {
  const document = {
    ...jointDocument({ printer: 'attic' }),
    printers: [printerRecord({ holes: [...holes], ...printer })],
  };
  return printerReportOf(withEvidence(document, resolved(document)).joint);
}
const pin = (drawn_mm: number, measured: number): HoleReadingRecord => ({
  drawn_mm,
  measured_mm: [measured],
  instrument: 'pin-gauge',
  axis: 'vertical',
});
const SOUND = [pin(3.5, 3.33), pin(4.1, 3.98), pin(4.7, 4.61), pin(5.3, 5.24)];

describe('printerReportOf', () => {
  test('is nothing without a printer, or without a reading along the hole', () => {
    expect(printerReportOf(resolved(jointDocument()).joint)).toBeNull();
    expect(reportWith(SOUND.map((one) => ({ ...one, axis: 'horizontal' as const })))).toBeNull();
  });
  test('gives the curve and each hole with its error, units in the keys', () => {
    expect(reportWith(SOUND)).toMatchObject({
      name: 'Attic printer',
      readingsApply: true,
      compensation: { code: 'drawn-in-cad' },
      holesRead: 4,
      leastDrawn_mm: 3.5,
      greatestDrawn_mm: 5.3,
      holes: [
        { bore_mm: 3.34, error_mm: -0.16, outlier: false },
        { bore_mm: 3.99, error_mm: -0.11 },
        { error_mm: -0.08 },
        { error_mm: -0.05 },
      ],
    });
  });
  test('names the hole that lies far from the others, and says where the readings do not apply', () => {
    const far = reportWith([...SOUND, pin(4.4, 3.86), pin(5, 4.93)], { gaugeCompensation: 'slicer' });
    expect(far?.holes.map(({ outlier }) => outlier)).toEqual([false, false, false, false, true, false]);
    expect(far).toMatchObject({ readingsApply: false, compensation: { code: 'gauge-was-compensated' } });
  });
});
